import { execFileSync, spawnSync } from "node:child_process";
import { chromium } from "@playwright/test";
import { isExecutable } from "./is-executable.ts";

/** What the search for a Chromium needs to know of the machine, and may do to it. */
export interface Machine {
  /** The path set by hand in TETHERLINE_CHROMIUM, or null. */
  readonly named: string | null;
  /** Where Playwright keeps its own Chromium, installed or not. */
  readonly playwrights: () => string;
  readonly isExecutable: (path: string) => boolean;
  /** Each returns whether the installation succeeded. */
  readonly installPlaywrights: () => boolean;
  readonly installDebians: () => boolean;
  readonly isRootOnDebian: () => boolean;
}

/** No Chromium is here and none could be had; the message says in one sentence what to do. */
export class NoChromiumError extends Error {
  override readonly name = "NoChromiumError";
}

const systemPaths = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/google-chrome",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
];

/**
 * A Chromium that is already on the machine: the one named by hand, else Playwright's own, else the system's;
 * null when there is none. Throws NoChromiumError when the one named by hand cannot be run.
 */
export function installedChromium(machine: Machine = thisMachine()): string | null {
  if (machine.named !== null) {
    if (machine.isExecutable(machine.named)) return machine.named;
    throw new NoChromiumError(
      `TETHERLINE_CHROMIUM names ${machine.named}, which is not a program that can be run.`,
    );
  }
  return [machine.playwrights(), ...systemPaths].find((path) => machine.isExecutable(path)) ?? null;
}

/**
 * A Chromium for the browser tests, installed if need be: by Playwright, else from Debian's packages as root.
 * Throws NoChromiumError when none can be had.
 */
export function obtainChromium(machine: Machine = thisMachine()): string {
  const present = installedChromium(machine);
  if (present !== null) return present;
  if (machine.installPlaywrights()) {
    const own = installedChromium(machine);
    if (own !== null) return own;
  }
  if (machine.isRootOnDebian() && machine.installDebians()) {
    const packaged = installedChromium(machine);
    if (packaged !== null) return packaged;
  }
  throw new NoChromiumError(
    "No Chromium was found and none could be installed: install Chromium, or set TETHERLINE_CHROMIUM to the path of one.",
  );
}

function succeeds(command: string, ...args: readonly string[]): boolean {
  console.log(`No Chromium yet: ${command} ${args.join(" ")}`);
  return spawnSync(command, args, { stdio: "inherit", timeout: 10 * 60 * 1000 }).status === 0;
}

/** The machine this program runs on. */
export function thisMachine(): Machine {
  return {
    named: process.env["TETHERLINE_CHROMIUM"] || null,
    playwrights: () => chromium.executablePath(),
    isExecutable,
    installPlaywrights: () => succeeds("npx", "playwright", "install", "chromium"),
    isRootOnDebian: () => process.getuid?.() === 0 && isExecutable("/usr/bin/apt-get"),
    installDebians: () =>
      succeeds("apt-get", "update") &&
      succeeds("apt-get", "install", "-y", "--no-install-recommends", "chromium"),
  };
}

/** The version a Chromium gives of itself, for the record of a test run. */
export function chromiumVersion(path: string): string {
  return execFileSync(path, ["--version"], { encoding: "utf8" }).trim();
}
