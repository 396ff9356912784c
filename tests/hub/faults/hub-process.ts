import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";

const ROOT = fileURLToPath(new URL("../../..", import.meta.url));

/** The hub as one file, since a hub from source takes a second to start. */
export interface HubProgram {
  readonly file: string;
  remove(): void;
}

/** Puts a whole hub into one file, under node_modules so that it finds what cannot go into it. */
export async function buildHubProgram(): Promise<HubProgram> {
  const cache = join(ROOT, "node_modules/.cache");
  mkdirSync(cache, { recursive: true });
  const folder = mkdtempSync(join(cache, "tetherline-hub-"));
  await build({
    configFile: false,
    logLevel: "error",
    root: ROOT,
    ssr: { noExternal: true, external: ["better-sqlite3"] },
    build: {
      ssr: fileURLToPath(new URL("hub-main.ts", import.meta.url)),
      outDir: folder,
      minify: false,
      target: "node20",
      rollupOptions: { output: { entryFileNames: "hub.mjs" } },
    },
  });
  return { file: join(folder, "hub.mjs"), remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A hub in a process of its own. */
export interface HubProcess {
  /** `http://127.0.0.1:…`. */
  readonly address: string;
  readonly ownerCode: string;
  /** Ends it with SIGKILL and waits until it is gone. */
  kill(): Promise<void>;
}

/** How a hub is to run. */
export interface HubWish {
  readonly program: HubProgram;
  readonly data: string;
  readonly port: number;
  readonly engine?: string;
}

/** A hub did not come to listen; what it wrote. */
export class NoHubError extends Error {
  override readonly name = "NoHubError";
}

/** Starts a hub without waiting for it. */
export function spawnHub({ program, data, port, engine = "" }: HubWish): ChildProcess {
  return spawn(process.execPath, [program.file, data, String(port), engine], {
    stdio: ["ignore", "pipe", "pipe"],
  });
}

/** Ends a process with SIGKILL and waits until it is gone. */
export async function killNow(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, "exit");
  child.kill("SIGKILL");
  await gone;
}

/** Starts a hub and waits until it listens. Rejects with {@link NoHubError} when it ends before. */
export async function startHubProcess(wish: HubWish): Promise<HubProcess> {
  const child = spawnHub(wish);
  let written = "";
  const address = await new Promise<string>((resolve, reject) => {
    const hear = (data: Buffer) => {
      written += data.toString();
      const [found] = /http:\/\/[^\s/]+:\d+/.exec(written) ?? [];
      if (found) resolve(found.replace("localhost", "127.0.0.1"));
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    child.once("exit", () => reject(new NoHubError(written)));
  });
  const ownerCode = /Owner's code: (\S+)/.exec(written)?.[1] ?? "";
  return { address, ownerCode, kill: () => killNow(child) };
}
