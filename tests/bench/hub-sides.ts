import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { z } from "zod";
import { joinedSchema } from "../../src/core/link/index.ts";
import type { NatsServers } from "../machine/nats-server.ts";

/** One of what is measured beside one another, in a process of its own. */
export interface Side {
  readonly name: string;
  readonly origin: string;
  readonly port: number;
  /** Lets a device into a walk as lead; its token. */
  join(walk: string, device: string): Promise<string>;
  /** Lets a device into a walk with an invitation as watcher, which is made when it is first needed; its token. */
  watch(walk: string, device: string): Promise<string>;
  /** For whoever may write entries of any device. */
  readonly owner: string;
  /** Where the entries of a walk are. */
  path(walk: string): string;
  /** Resident memory, in megabytes. */
  memory(): Promise<number>;
  stop(): Promise<void>;
}

const invitationSchema = z.object({ code: z.string() });

/** The floor: Fastify and event streams alone. */
export async function startFloor(): Promise<Side> {
  const child = run(["--import", "tsx", fileURLToPath(import.meta.resolve("./hub-floor.ts"))]);
  const { origin } = await listening(child);
  return {
    name: "floor",
    origin,
    port: Number(new URL(origin).port),
    join: async () => "nobody",
    watch: async () => "nobody",
    owner: "nobody",
    path: () => "/entries",
    memory: () => memoryOf(origin),
    stop: () => ended(child),
  };
}

/** A hub as its owner starts it, with SQLite or on the NATS servers given. */
export async function startHubSide(name: string, nats: NatsServers | null): Promise<Side> {
  const data = mkdtempSync(join(tmpdir(), "tetherline-bench-"));
  const child = run([
    ...["src/tetherline.mjs", "hub", "--port", "0", "--host", "127.0.0.1", "--data", data],
    // One device here does what thousands would do.
    ...["--rate", "10000000", "--name", name],
    ...(nats ? ["--engine", nats.url] : []),
  ]);
  const { origin, written } = await listening(child);
  const [, owner = ""] = /Owner's code: (\S+)/.exec(written) ?? [];
  const ask = async <Schema extends z.ZodType>(schema: Schema, path: string, body: unknown) => {
    const answer = await fetch(`${origin}${path}`, {
      method: "POST",
      headers: { authorization: `Bearer ${owner}`, "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    if (!answer.ok) throw new Error(`${path}: ${answer.status} ${await answer.text()}`);
    return schema.parse(await answer.json());
  };
  const invitations = new Map<string, Promise<z.output<typeof invitationSchema>>>();
  const tokenOf = async (body: object) => (await ask(joinedSchema(), "/api/join", body)).token ?? "";
  return {
    name,
    origin,
    port: Number(new URL(origin).port),
    join: (walk, device) => tokenOf({ code: owner, walk, device, role: "lead" }),
    watch: async (walk, device) => {
      const made =
        invitations.get(walk) ??
        ask(invitationSchema, `/api/walks/${walk}/invitations`, {
          role: "watcher",
          minutes: 60,
          devices: 500,
        });
      invitations.set(walk, made);
      return tokenOf({ code: (await made).code, device });
    },
    owner,
    path: (walk) => `/api/walks/${walk}/entries`,
    memory: () => memoryOf(origin),
    stop: async () => {
      await ended(child);
      rmSync(data, { recursive: true, force: true });
    },
  };
}

function run(words: readonly string[]): ChildProcess {
  const child = spawn(process.execPath, words, {
    cwd: join(import.meta.dirname, "../.."),
    stdio: ["ignore", "pipe", "inherit"],
  });
  process.once("exit", () => child.kill("SIGKILL"));
  return child;
}

/** Waits for the address that a process prints last. */
function listening(child: ChildProcess): Promise<{ readonly origin: string; readonly written: string }> {
  return new Promise((resolve, reject) => {
    let written = "";
    child.stdout?.on("data", (chunk: Buffer) => {
      written += chunk.toString();
      const [, port] = /^http:\/\/(?:localhost|127\.0\.0\.1):(\d+)\n/m.exec(written) ?? [];
      if (port !== undefined) resolve({ origin: `http://127.0.0.1:${port}`, written });
    });
    child.once("exit", (status) => reject(new Error(`a process ended with ${status}: ${written}`)));
  });
}

async function ended(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, "exit");
  child.kill("SIGTERM");
  await gone;
}

async function memoryOf(origin: string): Promise<number> {
  const text = await (await fetch(`${origin}/metrics`)).text();
  const [, bytes] = /^tetherline_memory_bytes (\S+)$/m.exec(text) ?? [];
  if (bytes === undefined) throw new Error(`${origin} does not say how much memory it takes`);
  return Number(bytes) / 1e6;
}
