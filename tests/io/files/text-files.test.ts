import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { readText, UnusableFileError, writeText } from "../../../src/io/files/index.ts";

const folder = mkdtempSync(join(tmpdir(), "tetherline-files-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function fileWith(name: string, content: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

async function* givenIn(...chunks: Uint8Array[]) {
  yield* chunks;
}

async function refusal(work: Promise<unknown>): Promise<UnusableFileError> {
  const error = await work.then(
    () => null,
    (reason: unknown) => reason,
  );
  if (!(error instanceof UnusableFileError)) throw new Error(`not refused: ${String(error)}`);
  return error;
}

describe("reading a file", () => {
  it("gives the text exactly, with byte order mark, line ends and all", async () => {
    const text = '\uFEFF{\r\n "a": "°é\u{1F6F0}" }\n\n';
    expect(await readText(fileWith("exact.json", text))).toBe(text);
  });

  it.each([
    ["not there", () => join(folder, "none.json"), "not-found", "there is no such file"],
    ["under a file", () => join(fileWith("leaf", ""), "none.json"), "not-found", "there is no such file"],
    ["a directory", () => folder, "directory", "a directory"],
    [
      "not UTF-8",
      () => fileWith("latin1.json", Uint8Array.of(0x7b, 0xe9, 0x7d)),
      "not-text",
      "not text in UTF-8",
    ],
    ["cut in a character", () => fileWith("cut.json", Uint8Array.of(0xc3)), "not-text", "not text in UTF-8"],
    ["too large", () => fileWith("large.json", "x".repeat(101)), "too-large", "larger than 100 bytes"],
  ] as const)("says in one sentence that it is %s", async (_, path, trouble, words) => {
    const named = path();
    const error = await refusal(readText(named, { limit: 100 }));
    expect(error.trouble).toBe(trouble);
    expect(error.path).toBe(named);
    expect(error.message).toContain(words);
    expect(error.message).toMatch(/^[^\n]+\.$/);
  });

  it("takes as many bytes as the limit says", async () => {
    expect(await readText(fileWith("full.json", "x".repeat(100)), { limit: 100 })).toHaveLength(100);
  });

  it("reads what has no size beforehand, such as a pipe", async () => {
    const pipe = join(folder, "pipe");
    const makePipe = "mkfifo";
    execFileSync(makePipe, [pipe]);
    const reading = readText(pipe);
    await writeText(pipe, "from a pipe");
    expect(await reading).toBe("from a pipe");
  });
});

describe("standard input", () => {
  it("stands for -, its pieces put together before they are read as UTF-8", async () => {
    const bytes = new TextEncoder().encode("{é}");
    const input = givenIn(bytes.subarray(0, 2), bytes.subarray(2));
    expect(await readText("-", { input })).toBe("{é}");
  });

  it("is refused like a file", async () => {
    expect((await refusal(readText("-", { input: givenIn(Uint8Array.of(0xff)) }))).message).toBe(
      '"standard input" cannot be read: it is not text in UTF-8.',
    );
    const large = givenIn(new Uint8Array(60), new Uint8Array(60));
    expect((await refusal(readText("-", { input: large, limit: 100 }))).trouble).toBe("too-large");
  });
});

describe("writing a file", () => {
  it("writes over what was there", async () => {
    const path = fileWith("out.jsonl", "something longer");
    await writeText(path, "é\n");
    expect(readFileSync(path, "utf8")).toBe("é\n");
  });

  it("says in one sentence why it cannot", async () => {
    mkdirSync(join(folder, "taken"));
    const error = await refusal(writeText(join(folder, "taken"), "x"));
    expect(error.message).toMatch(/cannot be written: it is a directory, not a file\.$/);
    expect((await refusal(writeText(join(folder, "no", "out.jsonl"), "x"))).trouble).toBe("not-found");
  });
});
