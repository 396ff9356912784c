import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { request } from "node:https";
import { createServer } from "node:net";
import { join, resolve as resolvePath } from "node:path";
import { text } from "node:stream/consumers";
import { afterAll, afterEach, describe, expect, it } from "vitest";
import { freePort } from "../machine/free-port.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
const running = new Set<ChildProcess>();
let folders = 0;

afterEach(() => {
  for (const child of running) child.kill("SIGKILL");
  running.clear();
});
afterAll(() => scratch.remove());

const newFolder = () => {
  folders += 1;
  return scratch.path(`data-${folders}`);
};

interface Hub {
  readonly child: ChildProcess;
  /** What it printed up to the address, in lines. */
  readonly lines: readonly string[];
  readonly address: string;
}

/** Where a hub is started, and whose. */
interface Place {
  readonly cwd?: string;
  readonly env?: NodeJS.ProcessEnv;
}

const PROGRAM = resolvePath("src/tetherline.mjs");

const launch = (options: readonly string[], place: Place = {}) => {
  const child = spawn(process.execPath, [PROGRAM, "hub", ...options], {
    stdio: ["ignore", "pipe", "pipe"],
    ...place,
  });
  running.add(child);
  return child;
};
const ended = (child: ChildProcess) =>
  new Promise<number | null>((resolve) => {
    if (child.exitCode !== null) resolve(child.exitCode);
    else child.once("exit", (status) => resolve(status));
  });

/** Starts a hub and waits for the address, its last line. */
const started = (...options: readonly string[]): Promise<Hub> => startedIn({}, ...options);

async function startedIn(place: Place, ...options: readonly string[]): Promise<Hub> {
  const child = launch(options, place);
  return new Promise((resolve, reject) => {
    let printed = "";
    let trouble = "";
    child.stderr.on("data", (chunk: Buffer) => {
      trouble += chunk;
    });
    child.stdout.on("data", (chunk: Buffer) => {
      printed += chunk;
      const lines = printed.trimEnd().split("\n");
      const address = lines.at(-1) ?? "";
      if (printed.endsWith("\n") && /^https?:/.test(address)) resolve({ child, lines, address });
    });
    child.once("exit", (status) => reject(new Error(`ended ${status}: ${printed}${trouble}`)));
  });
}

const port = async () => String(await freePort(4300));

/** What a hub that cannot run says. */
async function refusal(...options: readonly string[]) {
  const child = launch(options);
  const [out, err, status] = await Promise.all([text(child.stdout), text(child.stderr), ended(child)]);
  return { out, err, status };
}

describe("[HUB] the command", () => {
  it("prints the owner's code and last the address, and ends cleanly when told to", async () => {
    const data = newFolder();
    const hub = await started("--port", await port(), "--data", data, "--name", "ground");
    expect(hub.lines[0]).toBe(`Tetherline hub "ground", log kept in ${data}.`);
    expect(hub.lines).toContainEqual(
      expect.stringMatching(/^Owner's code: [A-HJKMNP-Z02-9]{3}-[A-HJKMNP-Z02-9]{3}-[A-HJKMNP-Z02-9]{3}$/),
    );
    expect(hub.address).toMatch(/^http:\/\/localhost:\d+$/);
    expect((await fetch(`${hub.address}/api/health`)).status).toBe(200);
    // An open stream does not keep it from ending.
    const code = hub.lines.find((line) => line.startsWith("Owner's code: "))?.slice(14) ?? "";
    const stream = await fetch(`${hub.address}/api/walks/w/entries`, {
      headers: { accept: "text/event-stream", authorization: `Bearer ${code}` },
    });
    expect(stream.status).toBe(200);
    hub.child.kill("SIGTERM");
    expect(await ended(hub.child)).toBe(0);
    await stream.text().catch(() => {});
  });

  it("keeps the owner's code and the log over a kill, and makes another code when wished", async () => {
    const data = newFolder();
    const options = ["--port", await port(), "--data", data];
    const codeOf = ({ lines }: Hub) =>
      lines.find((line) => line.startsWith("Owner's code: "))?.slice(14) ?? "";
    const entry = {
      ...{ specversion: "1.0", id: "1", source: "/devices/d", type: "tetherline.note.made", subject: "w" },
      ...{ time: "2021-04-02T09:00:00Z", sequence: "1", hlc: "001700000000000-0000", data: { text: "x" } },
    };
    const first = await started(...options);
    const url = `${first.address}/api/walks/w/entries`;
    const headers = { authorization: `Bearer ${codeOf(first)}`, "content-type": "application/json" };
    const pushed = await fetch(url, { method: "POST", headers, body: JSON.stringify([entry]) });
    expect(await pushed.json()).toMatchObject({ results: [{ outcome: "accepted" }] });
    // The process started is the hub itself: killing it kills the hub.
    first.child.kill("SIGKILL");
    await ended(first.child);
    await expect(fetch(url)).rejects.toThrow();
    const second = await started(...options);
    expect(codeOf(second)).toBe(codeOf(first));
    expect(JSON.parse(await (await fetch(url, { headers })).text())).toEqual(entry);
    second.child.kill("SIGINT");
    expect(await ended(second.child)).toBe(0);
    const third = await started(...options, "--new-owner-code");
    expect(codeOf(third)).not.toBe(codeOf(first));
    expect((await fetch(url, { headers })).status).toBe(401);
  });

  it("is backed up while it runs and when it is stopped, and is brought back by a command when it is stopped", async () => {
    const data = newFolder();
    const options = ["--port", await port(), "--data", data];
    const file = (name: string) => scratch.path(`${name}-${folders}`);
    const asked = async (...args: readonly string[]) => {
      const child = launch(args);
      const [out, err, status] = await Promise.all([text(child.stdout), text(child.stderr), ended(child)]);
      return { out, err, status };
    };
    const hub = await started(...options);
    const epochOf = async () =>
      ((await (await fetch(`${hub.address}/api/health`)).json()) as { epoch: string }).epoch;
    const epoch = await epochOf();
    expect(await asked("backup", "--data", data, "--to", file("one"))).toEqual({
      out: `The log is backed up in ${file("one")}.\n`,
      err: "",
      status: 0,
    });
    const refused = await asked("restore", "--from", file("one"), "--data", data);
    expect([refused.status, refused.err]).toEqual([
      2,
      expect.stringMatching(/^Another hub is using [^\n]+\n$/),
    ]);
    hub.child.kill("SIGKILL");
    await ended(hub.child);
    expect((await asked("backup", "--to", file("two"), "--data", data)).status).toBe(0);
    expect(await asked("restore", "--from", file("two"), "--data", data)).toMatchObject({
      out: expect.stringMatching(/ is brought back: 0 walks, 0 entries\.\nWhat was there before is in /),
      status: 0,
    });
    await started(...options);
    expect(await epochOf()).not.toBe(epoch);
  }, 240_000);

  it("serves the network with TLS by a certificate of its own, and prints its fingerprint", async () => {
    const hub = await started("--port", await port(), "--data", newFolder(), "--host", "0.0.0.0");
    const printed = hub.lines.join("\n");
    const [, fingerprint] = /^Certificate, SHA-256: (\S+)$/m.exec(printed) ?? [];
    expect(printed).toMatch(/authority, SHA-256: ([0-9A-F]{2}:){31}[0-9A-F]{2}$/m);
    expect(hub.address).toMatch(/^https:\/\/[\d.]+:\d+$|^https:\/\/localhost:\d+$/);
    const shown = await new Promise((resolve, reject) => {
      const asked = request(
        `${hub.address}/api/health`,
        { rejectUnauthorized: false, agent: false },
        (answer) => {
          answer.resume();
          resolve((answer.socket as import("node:tls").TLSSocket).getPeerCertificate().fingerprint256);
        },
      );
      asked.once("error", reject).end();
    });
    expect(shown).toBe(fingerprint);
  });

  it("serves the network without TLS only when told so, and says what that means", async () => {
    const hub = await started("--port", await port(), "--data", newFolder(), "--host", "0.0.0.0", "--plain");
    expect(hub.address).toMatch(/^http:/);
    expect(hub.lines.join("\n")).toMatch(/Plain HTTP: put a proxy with TLS in front/);
  });

  it("serves the interface alone where no app was built, and says so", async () => {
    const hub = await started("--port", await port(), "--data", newFolder(), "--app", scratch.path("no-app"));
    expect(hub.lines.join("\n")).toMatch(/No built app in .*: only the interface is served/);
    expect((await fetch(`${hub.address}/`)).status).toBe(404);
  });
});

describe("[HUB] where the log is kept", () => {
  /** A user of this machine who has no hub yet. */
  const newUser = (more: NodeJS.ProcessEnv = {}) => {
    const home = newFolder();
    mkdirSync(home);
    const { XDG_DATA_HOME: _, ...environment } = process.env;
    return {
      home,
      env: { ...environment, HOME: home, LOCALAPPDATA: join(home, "AppData"), ...more },
    };
  };
  const folderOf = ({ lines }: Hub) => /log kept in (.*)\.$/m.exec(lines.join("\n"))?.[1] ?? "";
  const isLinux = process.platform === "linux";

  it("is a folder of the user's own: starting a hub leaves the checkout as it was", async () => {
    const { home, env } = newUser();
    const before = readdirSync(".");
    const hub = await startedIn({ env }, "--port", await port());
    expect(readdirSync(".")).toEqual(before);
    expect(folderOf(hub).startsWith(home)).toBe(true);
    if (isLinux) expect(folderOf(hub)).toBe(join(home, ".local", "share", "tetherline"));
    expect(readdirSync(folderOf(hub))).toContain("walks.sqlite");
    expect((await fetch(`${hub.address}/api/health`)).status).toBe(200);
    hub.child.kill("SIGTERM");
    expect(await ended(hub.child)).toBe(0);
  });

  it.runIf(isLinux)("follows XDG_DATA_HOME, and --data before that", async () => {
    const shared = newFolder();
    const { home, env } = newUser({ XDG_DATA_HOME: shared });
    const hub = await startedIn({ env }, "--port", await port());
    expect(folderOf(hub)).toBe(join(shared, "tetherline"));
    const data = newFolder();
    const other = await startedIn({ env }, "--port", await port(), "--data", data);
    expect(folderOf(other)).toBe(data);
    expect(readdirSync(home)).toEqual([]);
  });

  it("is ./hub-data where an earlier version has left one, which is said", async () => {
    const { home, env } = newUser();
    const cwd = newFolder();
    mkdirSync(cwd);
    const number = await port();
    const codeOf = ({ lines }: Hub) => lines.find((line) => line.startsWith("Owner's code: "));
    const earlier = await startedIn({ env, cwd }, "--port", number, "--data", "./hub-data");
    expect((await fetch(`${earlier.address}/api/health`)).status).toBe(200);
    earlier.child.kill("SIGTERM");
    await ended(earlier.child);
    const hub = await startedIn({ env, cwd }, "--port", number);
    expect(folderOf(hub)).toBe("./hub-data");
    expect(hub.lines[0]).toMatch(
      /^The log that an earlier version kept in \.\/hub-data is used where it is\./,
    );
    expect(codeOf(hub)).toBe(codeOf(earlier));
    expect(readdirSync(home)).toEqual([]);
  });
});

describe("[HUB] what cannot be served ends 2 with one sentence", () => {
  const SENTENCE = /^[^\n]+\.( \([A-Z_]+\))?\n$/;

  it("a port in use", async () => {
    const taken = createServer().listen(0, "localhost");
    await new Promise((resolve) => taken.once("listening", resolve));
    const { port: number } = taken.address() as { port: number };
    const { out, err, status } = await refusal("--port", String(number), "--data", newFolder());
    taken.close();
    expect([out, status]).toEqual(["", 2]);
    expect(err).toMatch(/^Port \d+ is in use: [^\n]+\.\n$/);
  });

  it("an address of another machine", async () => {
    const { err, status } = await refusal(
      "--port",
      "0",
      "--host",
      "203.0.113.7",
      "--plain",
      "--data",
      newFolder(),
    );
    expect([status, err]).toEqual([
      2,
      expect.stringMatching(/^"203\.0\.113\.7" is no address of this machine[^\n]+\.\n$/),
    ]);
  });

  it("a data folder that is a file, or below one", async () => {
    const file = scratch.write("a-file", "x");
    for (const data of [file, `${file}/below`]) {
      const { out, err, status } = await refusal("--port", "0", "--data", data);
      expect([out, status, err]).toEqual(["", 2, expect.stringMatching(SENTENCE)]);
    }
  });

  it("a log that is torn, which is left as it was", async () => {
    const data = newFolder();
    const hub = await started("--port", await port(), "--data", data);
    hub.child.kill("SIGTERM");
    await ended(hub.child);
    const file = readdirSync(data).find((name) => name.endsWith(".sqlite")) ?? readdirSync(data)[0] ?? "";
    writeFileSync(`${data}/${file}`, "this is no log of a hub, not at all, whatever its name may say");
    const { out, err, status } = await refusal("--port", "0", "--data", data);
    expect([out, status, err]).toEqual(["", 2, expect.stringMatching(SENTENCE)]);
  });

  it.each([
    [["--cert", "x.crt"], /--cert and --key go together/],
    [["--cert", "/nowhere.crt", "--key", "/nowhere.key"], /"\/nowhere\.(crt|key)" cannot be read/],
    [["--cert", "package.json", "--key", "package.json"], /not a certificate and its key/],
    [["--plain", "--cert", "a", "--key", "b"], /Either --plain or --cert/],
    [["--engine", "ftp://x"], /engine's address is not understood/],
    [["--upstream", "https://x"], /--upstream and --upstream-code/],
    [
      ["--upstream", "https://x", "--upstream-code-file", "/nowhere.code"],
      /"\/nowhere\.code" cannot be read/,
    ],
    [["--also-as", "a b"], /A host's name has letters/i],
  ])("options of no use: %j", async (options, words) => {
    const data = newFolder();
    const { out, err, status } = await refusal("--port", "0", "--data", data, ...options);
    expect([out, status]).toEqual(["", 2]);
    expect(err).toMatch(words);
    expect(err).toMatch(SENTENCE);
  });

  it.each([
    [["--port", "70000"], /A port is a whole number from 0 to 65535/i],
    [["--port", "x"], /A port is a whole number/i],
    [["--rate", "59"], /A rate is a whole number of requests a minute/i],
    [["--proxy", "10.0.0.0/33"], /An address is written/i],
    [["--proxy", "ground"], /An address is written/i],
    [["--name", ""], /A name has 1 to 80 letters/i],
    [["--fast"], /Unknown option/],
    [["extra"], /Too many arguments/],
  ])("arguments of no use: %j", async (args, words) => {
    const before = readdirSync(".");
    const { out, err, status } = await tetherline("hub", ...args);
    expect([out, status]).toEqual(["", 2]);
    expect(err).toMatch(words);
    expect(readdirSync(".")).toEqual(before);
  });
});
