import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, openSync, rmSync, writeFileSync } from "node:fs";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { isExecutable } from "./is-executable.ts";

/** A NATS server with JetStream that was started for tests. */
export interface NatsServer {
  readonly name: string;
  readonly port: number;
  /** Ends it with a signal (SIGKILL unless said) and waits until it is gone. */
  kill(signal?: NodeJS.Signals): Promise<void>;
  /** Starts it again on the same port and folder. */
  start(): Promise<void>;
}

/** One server, or several that form a cluster. */
export interface NatsServers {
  /** For `--engine`. */
  readonly url: string;
  readonly servers: readonly NatsServer[];
  /** Ends all and removes what they kept. */
  stop(): Promise<void>;
}

/** What the servers are to be like. */
export interface NatsWish {
  /** 1, or 3 for a cluster. */
  readonly count: 1 | 3;
  /** Further lines of the configuration of each. */
  readonly lines?: readonly string[];
}

/** The server of TETHERLINE_NATS_SERVER, else of the PATH, else Debian's; `null` when there is none. */
export function findNatsServer(): string | null {
  const named = process.env["TETHERLINE_NATS_SERVER"];
  const folders = (process.env["PATH"] ?? "").split(delimiter);
  const paths = named
    ? [named]
    : [...folders, "/usr/sbin", "/usr/local/bin"].map((folder) => join(folder, "nats-server"));
  return paths.find(isExecutable) ?? null;
}

/** Why tests with a NATS server are skipped, for their titles; `null` when they need not be. */
export function whyNoNats(): string | null {
  return findNatsServer() === null
    ? "skipped: no nats-server here; install it or set TETHERLINE_NATS_SERVER"
    : null;
}

/** What TETHERLINE_NATS_JETSTREAM says of JetStream, such as `sync_interval: always`, which servers before 2.10 do not know. */
function furtherJetStream(): string {
  const further = process.env["TETHERLINE_NATS_JETSTREAM"];
  return further === undefined ? "" : `, ${further}`;
}

/** Starts servers on free ports, with their folders under the system's temporary folder. */
export async function startNats({ count, lines = [] }: NatsWish): Promise<NatsServers> {
  const binary = findNatsServer();
  if (binary === null) throw new Error("No nats-server was found.");
  const folder = mkdtempSync(join(tmpdir(), "tetherline-nats-"));
  const ports = await unusedPorts(count * 2);
  const routes = ports.slice(count).map((port) => `"nats://127.0.0.1:${port}"`);
  const servers = ports.slice(0, count).map((port, index) => {
    const name = `n${index + 1}`;
    const configuration = join(folder, `${name}.conf`);
    const cluster = `cluster { name: "test", listen: "127.0.0.1:${ports[count + index]}", routes: [${routes.join(", ")}] }`;
    writeFileSync(
      configuration,
      [
        `server_name: "${name}"`,
        `listen: "127.0.0.1:${port}"`,
        `jetstream { store_dir: "${join(folder, name)}"${furtherJetStream()} }`,
        ...(count > 1 ? [cluster] : []),
        ...lines,
        "",
      ].join("\n"),
    );
    return natsServer(binary, name, port, configuration, join(folder, `${name}.log`));
  });
  await Promise.all(servers.map((server) => server.start()));
  return {
    url: `nats://${servers.map(({ port }) => `127.0.0.1:${port}`).join(",")}`,
    servers,
    stop: async () => {
      await Promise.all(servers.map((server) => server.kill()));
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function natsServer(
  binary: string,
  name: string,
  port: number,
  configuration: string,
  log: string,
): NatsServer {
  let running: ChildProcess | null = null;
  const endWithTests = () => void running?.kill("SIGKILL");
  process.once("exit", endWithTests);
  return {
    name,
    port,
    kill: async (signal = "SIGKILL") => {
      const ending = running;
      running = null;
      if (!ending || ending.exitCode !== null || ending.signalCode !== null) return;
      const gone = once(ending, "exit");
      ending.kill(signal);
      await gone;
    },
    start: async () => {
      const output = openSync(log, "a");
      running = spawn(binary, ["-c", configuration], { stdio: ["ignore", output, output] });
      await answers(port, running);
    },
  };
}

/** Waits until something listens. */
async function answers(port: number, server: ChildProcess): Promise<void> {
  for (let attempt = 0; attempt < 400; attempt += 1) {
    if (server.exitCode !== null) throw new Error(`nats-server ended with ${server.exitCode}.`);
    if (await isListening(port)) return;
    await wait(25);
  }
  throw new Error(`nats-server does not listen on ${port}.`);
}

function isListening(port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(port, "127.0.0.1");
    socket.once("error", () => resolve(false));
    socket.once("connect", () => {
      socket.destroy();
      resolve(true);
    });
  });
}

/** Ports that nobody used just now, each another. */
async function unusedPorts(count: number): Promise<readonly number[]> {
  const probes = await Promise.all(
    Array.from({ length: count }, async () => {
      const probe = createServer();
      probe.listen(0, "127.0.0.1");
      await once(probe, "listening");
      return probe;
    }),
  );
  const ports = probes.map((probe) => {
    const address = probe.address();
    if (address === null || typeof address === "string") throw new Error("no port");
    return address.port;
  });
  await Promise.all(
    probes.map(async (probe) => {
      probe.close();
      await once(probe, "close");
    }),
  );
  return ports;
}
