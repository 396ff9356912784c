import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { freePort } from "../machine/free-port.ts";

/** A hub in a process of its own, serving the built app. */
export interface StartedHub {
  /** Without a slash at the end. */
  readonly address: string;
  readonly ownerCode: string;
  /** Ends the process as a lost machine would. */
  kill(): Promise<void>;
  /** Starts it anew after a kill, on the same port and data. */
  start(): Promise<void>;
  stop(): Promise<void>;
}

/** Starts a hub at a free port with a data folder of its own. */
export async function startHubProcess(from: number, ...options: readonly string[]): Promise<StartedHub> {
  const data = mkdtempSync(join(tmpdir(), "tetherline-hub-"));
  const port = await freePort(from);
  const start = () => launched(["--port", String(port), "--data", data, ...options]);
  let running = await start();
  return {
    address: running.address,
    ownerCode: running.ownerCode,
    kill: () => ended(running.child, "SIGKILL"),
    start: async () => {
      running = await start();
    },
    stop: async () => {
      await ended(running.child, "SIGTERM");
      rmSync(data, { recursive: true, force: true });
    },
  };
}

interface Launched {
  readonly child: ChildProcess;
  readonly address: string;
  readonly ownerCode: string;
}

/** Resolves when the hub has printed the address to open, its last line. */
function launched(options: readonly string[]): Promise<Launched> {
  const child = spawn(process.execPath, ["src/tetherline.mjs", "hub", ...options], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  return new Promise((resolve, reject) => {
    let printed = "";
    const hear = (chunk: Buffer) => {
      printed += chunk.toString();
      const [, ownerCode] = /Owner's code: (\S+)/.exec(printed) ?? [];
      const [address] = /^https?:\/\/\S+?(?=\/?$)/m.exec(printed) ?? [];
      if (ownerCode !== undefined && address !== undefined) resolve({ child, address, ownerCode });
    };
    child.stdout.on("data", hear);
    child.stderr.on("data", hear);
    child.once("exit", (status) => reject(new Error(`The hub ended with ${status}:\n${printed}`)));
  });
}

function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once("exit", () => resolve());
    child.kill(signal);
  });
}
