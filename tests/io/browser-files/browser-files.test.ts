// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from "vitest";
import {
  pickFiles,
  readGivenBytes,
  readGivenFiles,
  readTransfer,
  saveFile,
} from "../../../src/io/browser-files/index.ts";
import { worded } from "../../core/said.ts";

const textFile = (name: string, ...parts: BlobPart[]) => new File(parts, name);

function transferOf(files: readonly File[], text = "") {
  return {
    files: files as unknown as FileList,
    getData: (type: string) => (type === "text/plain" ? text : ""),
  };
}

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  document.body.replaceChildren();
});

describe("files that were given", () => {
  it("are read exactly and in their order", async () => {
    const given = await readGivenFiles([textFile("b.json", "\uFEFF{ }\r\n"), textFile("a.json", "é")]);
    expect(given).toEqual([
      { name: "b.json", text: "\uFEFF{ }\r\n", problem: null },
      { name: "a.json", text: "é", problem: null },
    ]);
  });

  it("are refused one by one, in a sentence", async () => {
    const folder = textFile("folder");
    folder.arrayBuffer = () => Promise.reject(new DOMException("gone", "NotFoundError"));
    const large = textFile("large.json", "x".repeat(2 * 1024 * 1024));
    const given = await readGivenFiles(
      [textFile("latin1.json", Uint8Array.of(0xe9)), folder, large, textFile("fine.json", "{}")],
      1024 * 1024,
    );
    expect(worded(given.map(({ problem }) => problem))).toEqual([
      "The file is not text in UTF-8.",
      "The file cannot be read; it may be a folder, or have been moved.",
      "The file is larger than 1 MiB.",
      null,
    ]);
  });
});

describe("what was dropped or pasted", () => {
  it("is its files, or else its text, or nothing", async () => {
    expect(await readTransfer(transferOf([textFile("a.json", "{}")], "a.json"))).toEqual([
      { name: "a.json", text: "{}", problem: null },
    ]);
    expect(worded(await readTransfer(transferOf([], '{"a":1}')))).toEqual([
      { name: "pasted text", text: '{"a":1}', problem: null },
    ]);
    expect(await readTransfer(transferOf([], " \n"))).toEqual([]);
    expect(await readTransfer(null)).toEqual([]);
  });

  it("is taken before the event is over", async () => {
    const files = [textFile("a.json", "{}")];
    const reading = readTransfer(transferOf(files));
    files.length = 0;
    expect(await reading).toHaveLength(1);
  });
});

describe("picking", () => {
  const openInput = () => document.querySelector<HTMLInputElement>("input[type=file]");

  it("gives the files that were picked and leaves nothing behind", async () => {
    const picking = pickFiles();
    const input = openInput();
    expect(input?.multiple).toBe(true);
    Object.defineProperty(input, "files", { value: [textFile("a.json", "{}")] });
    input?.dispatchEvent(new Event("change"));
    expect(await picking).toEqual([{ name: "a.json", text: "{}", problem: null }]);
    expect(openInput()).toBeNull();
  });

  it("gives nothing when it is called off", async () => {
    const picking = pickFiles();
    openInput()?.dispatchEvent(new Event("cancel"));
    expect(await picking).toEqual([]);
    expect(openInput()).toBeNull();
  });
});

describe("saving", () => {
  const saved: { name: string; blob: Blob }[] = [];

  function inBrowser(parts: { touch?: boolean; share?: (data: ShareData) => Promise<void> } = {}) {
    saved.length = 0;
    vi.stubGlobal("matchMedia", () => ({ matches: parts.touch ?? false }));
    let last: Blob | null = null;
    URL.createObjectURL = (blob) => {
      last = blob as Blob;
      return "blob:here";
    };
    URL.revokeObjectURL = () => {};
    vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
      if (last) saved.push({ name: this.download, blob: last });
    });
    Object.assign(navigator, { canShare: parts.share && (() => true), share: parts.share });
  }

  it("downloads where there is a mouse, even if the browser could share", async () => {
    const share = vi.fn();
    inBrowser({ share });
    expect(await saveFile("walk-1.walk.jsonl", "é\n", "application/jsonl")).toBe("saved");
    expect(share).not.toHaveBeenCalled();
    expect(saved.map(({ name }) => name)).toEqual(["walk-1.walk.jsonl"]);
    expect(await saved[0]?.blob.text()).toBe("é\n");
    expect(saved[0]?.blob.type).toBe("application/jsonl;charset=utf-8");
  });

  it("shares on a touch screen that can", async () => {
    const share = vi.fn(async () => {});
    inBrowser({ touch: true, share });
    expect(await saveFile("a.json", "{}")).toBe("shared");
    expect(share).toHaveBeenCalledOnce();
    expect(saved).toEqual([]);
  });

  it("takes a closed share sheet for a change of mind, and downloads when sharing is refused", async () => {
    inBrowser({ touch: true, share: () => Promise.reject(new DOMException("closed", "AbortError")) });
    expect(await saveFile("a.json", "{}")).toBe("cancelled");
    expect(saved).toEqual([]);
    inBrowser({ touch: true, share: () => Promise.reject(new DOMException("no", "NotAllowedError")) });
    expect(await saveFile("a.json", "{}")).toBe("saved");
    expect(saved).toHaveLength(1);
  });
});

describe("files of bytes", () => {
  it("are read whatever is in them, up to a limit", async () => {
    const bytes = Uint8Array.from({ length: 300 }, (_, at) => at % 256);
    const [read, large] = await readGivenBytes(
      [new File([bytes], "a.png"), new File([new Uint8Array(2_000_000)], "b.png")],
      1_048_576,
    );
    expect(Uint8Array.from(atob(read?.data ?? ""), (letter) => letter.charCodeAt(0))).toEqual(bytes);
    expect(large).toMatchObject({ name: "b.png", data: null, problem: { key: "given/too-large" } });
  });
});
