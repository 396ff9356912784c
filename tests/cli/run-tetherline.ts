import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runCommandLine } from "../../src/cli/command-line.ts";
import type { Instant } from "../../src/core/units/index.ts";

/** What a run of the command line came to. */
export interface Ran {
  readonly status: number;
  readonly out: string;
  readonly err: string;
}

/** The instant that commands take for now. */
export const NOW = Date.UTC(2031, 3, 2, 9) as Instant;

const hubStore = {
  backup: () => Promise.reject(new Error("No test in this process has a hub.")),
  restore: () => Promise.reject(new Error("No test in this process has a hub.")),
};
const serveHub = () => Promise.reject(new Error("No test in this process serves a hub."));

/** Runs the command line in this process. */
export async function tetherline(...args: readonly string[]): Promise<Ran> {
  let out = "";
  let err = "";
  const terminal = {
    out: (text: string) => {
      out += text;
    },
    err: (text: string) => {
      err += text;
    },
  };
  const status = await runCommandLine(args, { terminal, now: () => NOW, serveHub, hubStore });
  return { status, out, err };
}

/** A folder for the files of one test file. */
export class Scratch {
  readonly #folder = mkdtempSync(join(tmpdir(), "tetherline-cli-"));

  path(name: string): string {
    return join(this.#folder, name);
  }

  write(name: string, content: string | Uint8Array): string {
    writeFileSync(this.path(name), content);
    return this.path(name);
  }

  read(name: string): string {
    return readFileSync(this.path(name), "utf8");
  }

  remove(): void {
    rmSync(this.#folder, { recursive: true, force: true });
  }
}
