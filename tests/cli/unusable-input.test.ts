import { execFile, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { text } from "node:stream/consumers";
import { promisify } from "node:util";
import { afterAll, describe, expect, it } from "vitest";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const ORBIT = "procedures/osier-ranging-head.procedure.json";
const bytes = Uint8Array.from({ length: 4096 }, (_, index) => (index * 89 + 200) % 256);
const files: Readonly<Record<string, string>> = {
  missing: scratch.path("missing.json"),
  directory: scratch.path(""),
  empty: scratch.write("empty", ""),
  blank: scratch.write("blank", "\n\n \n"),
  binary: scratch.write("binary", bytes),
  "half a document": scratch.write("half", '{"format": "tetherline.procedure/1", "crew": ['),
  "very deep": scratch.write("deep", "[".repeat(100_000) + "]".repeat(100_000)),
  "very deep objects": scratch.write("deep-objects", `${'{"a":'.repeat(50_000)}1${"}".repeat(50_000)}`),
  "wrong JSON": scratch.write("wrong", '{"a": [1, null, {"b": "c"}]}'),
  "a list": scratch.write("list", "[1, 2, 3]"),
  "a number": scratch.write("number", "7"),
  "entries without an opening": scratch.write(
    "unopened",
    `${JSON.stringify({ specversion: "1.0", id: "1", source: "/devices/x", type: "tetherline.note.made", subject: "w", time: "2031-04-02T09:00:00Z", sequence: "1", hlc: "001932974353020-0000", data: { text: "x" } })}\n`,
  ),
  "an opening with no procedure": scratch.write(
    "no-procedure",
    `${JSON.stringify({ specversion: "1.0", id: "1", source: "/devices/x", type: "tetherline.walk.opened", subject: "w", time: "2031-04-02T09:00:00Z", sequence: "1", hlc: "001932974353020-0000", data: { mode: "live", procedure: { format: "x" } } })}\n`,
  ),
};

/** One sentence, or one for each file, on its own line; never the trace of a stack. */
const SENTENCE = /^[^\n]+[.?]\n$/;

describe.each(["check", "plan", "rehearse", "state", "review"])("%s", (command) => {
  it.each(Object.keys(files))("given %s ends 1 or 2 with a sentence and no stack trace", async (kind) => {
    for (const form of command === "rehearse" ? [[]] : [[], ["--json"]]) {
      const { status, out, err } = await tetherline(command, files[kind] ?? "", ...form);
      expect([1, 2]).toContain(status);
      expect(out + err).not.toMatch(/\bat .*:\d+:\d+\)?$|node_modules|RangeError|TypeError/m);
      if (command === "check") expect(out + err).toMatch(/\S/);
      else expect([out, err]).toEqual(["", expect.stringMatching(SENTENCE)]);
      if (command === "check" && status === 1 && form.length > 0) {
        const { files: checked } = JSON.parse(out) as { files: { findings: { message: string }[] }[] };
        expect(checked[0]?.findings.length).toBeGreaterThan(0);
      }
    }
  });
});

describe("arguments", () => {
  it.each([
    [[], /Say what to do/],
    [["fly"], /Unknown command 'fly'/],
    [["plan", ORBIT, "--fast"], /Unknown option '--fast'/],
    [["plan", ORBIT, "--orbit", "x"], /--orbit needs --start/],
    [["plan", ORBIT, "--orbit", "/nowhere", "--start", "2031-04-02T09:00:00Z"], /there is no such file/],
    [["passes", ORBIT], /required option '--from/i],
    [["plan", ORBIT, "--samples", "0"], /it is a whole number from 1 to/],
    [["plan", ORBIT, "--samples", "1e9"], /it is a whole number from 1 to/],
    [["check"], /Missing required argument 'file'/],
    [["plan", ORBIT, ORBIT], /Too many arguments/],
    [["plan", ORBIT, "--start", "today"], /--start "today": an instant looks like/],
    [["plan", ORBIT, "--start"], /argument missing/],
    [["plan", ORBIT, "--decide", "bolt-3"], /write a decision as id=outcome/],
    [["plan", ORBIT, "--decide", "bolt-3=bent"], /"bent" is not an outcome of "bolt-3"/],
    [["plan", ORBIT, "--decide", "bolt=free"], /There is no decision "bolt"\. Did you mean "bolt-3"\?/],
    [["rehearse", ORBIT, "--seed", "1.5"], /A seed is a whole number/i],
    [["rehearse", ORBIT, "--seed", "-1"], /A seed is a whole number/i],
    [["rehearse", ORBIT, "--pace", "0"], /A pace is a number above 0/i],
    [["state", "x", "--at", "2031-02-30T00:00:00Z"], /an instant looks like/],
  ])("%j are refused with one sentence and status 2", async (args, words) => {
    const { status, out, err } = await tetherline(...args);
    expect([status, out]).toEqual([2, ""]);
    expect(err).toMatch(words);
    expect(err).toMatch(/^[^\n]+[.?)]\n$/);
  });

  it("that contradict each other are refused", async () => {
    const outcomes = outcomesIn(ORBIT);
    const said = outcomes.flatMap((outcome) => ["--decide", `bolt-3=${outcome}`]);
    expect(await tetherline("plan", ORBIT, ...said)).toMatchObject({
      status: 2,
      err: expect.stringContaining("cannot come out both"),
    });
  });

  it("that ask for help get it", async () => {
    const whole = await tetherline("--help");
    expect([whole.status, whole.err]).toEqual([0, ""]);
    const plan = await tetherline("plan", "--help");
    expect(whole.out).toMatch(/\bhub\b/);
    expect(plan.out).toMatch(/--decide/);
  });
});

function outcomesIn(file: string): string[] {
  const outcomes = /"outcomes":\s*\[([^\]]*)\]/.exec(readFileSync(file, "utf8"))?.[1] ?? "";
  return JSON.parse(`[${outcomes}]`) as string[];
}

describe("the program as a process", () => {
  const program = "src/tetherline.mjs";
  const run = promisify(execFile);

  it("runs from a checkout, with results on standard output and messages on standard error", async () => {
    const { stdout, stderr } = await run(process.execPath, [program, "plan", ORBIT, "--json"], {
      maxBuffer: 1e8,
    });
    expect(JSON.parse(stdout)).toMatchObject({ procedure: "osier-ranging-head" });
    expect(stderr).toMatch(/^(.*caution.*\n)*$/);
  });

  it("ends 2 with one sentence for a file that is not there", async () => {
    const failed = (await run(process.execPath, [program, "state", "/nowhere"]).catch(
      (error: unknown) => error,
    )) as { code: number; stdout: string; stderr: string };
    expect(failed).toMatchObject({
      code: 2,
      stdout: "",
      stderr: '"/nowhere" cannot be read: there is no such file.\n',
    });
  });

  it("ends quietly when its reader has seen enough", async () => {
    const child = spawn(
      "bash",
      ["-c", `set -o pipefail; "${process.execPath}" ${program} rehearse ${ORBIT} | head -c 100`],
      { stdio: ["ignore", "pipe", "pipe"] },
    );
    const [out, err, status] = await Promise.all([
      text(child.stdout),
      text(child.stderr),
      new Promise((resolve) => child.on("close", resolve)),
    ]);
    expect([out.length, err, status]).toEqual([100, "", 0]);
  });
});
