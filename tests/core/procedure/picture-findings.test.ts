import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { parseProcedure } from "../../../src/core/procedure/index.ts";
import { fileWith, step } from "../procedure-builder.ts";
import { said } from "../said.ts";

type Picture = NonNullable<ProcedureFile["pictures"]>[number];

const base64 = (...parts: (string | readonly number[])[]) =>
  Buffer.concat(
    parts.map((part) => (typeof part === "string" ? Buffer.from(part) : Buffer.from([...part]))),
  ).toString("base64");
const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const CONTENTS: Readonly<Record<Picture["type"], string>> = {
  "image/png": base64(PNG, "rest"),
  "image/jpeg": base64([0xff, 0xd8, 0xff, 0xe0], "rest"),
  "image/webp": base64("RIFF", [9, 0, 0, 0], "WEBPVP8 "),
  "image/svg+xml": base64(
    '<?xml version="1.0"?>\n<!-- own drawing -->\n<svg xmlns="http://www.w3.org/2000/svg"/>',
  ),
};
const TYPES = Object.keys(CONTENTS) as Picture["type"][];

const fileWithPictures = (pictures: Picture[], more: Partial<ProcedureFile> = {}): ProcedureFile => ({
  ...fileWith([step("look", "iv", 5)], { pictures, ...more }),
  format: "tetherline.procedure/2",
});
const codesOf = (file: ProcedureFile) => parseProcedure(file).findings.map(({ code }) => code);

describe("the pictures of a procedure", () => {
  it("[MAP3] are held to their type by their first bytes", () => {
    for (const type of TYPES) {
      for (const content of TYPES) {
        const file = fileWithPictures([{ id: "one", type, data: CONTENTS[content] }]);
        expect(codesOf(file)).toEqual(type === content ? [] : ["file/wrong-value"]);
      }
    }
    const page = fileWithPictures([
      { id: "one", type: "image/svg+xml", data: base64("<html><script>1</script>") },
    ]);
    const [found] = parseProcedure(page).findings;
    expect(found?.pointer).toBe("/pictures/0/type");
    expect(said(found)).toBe(
      'The picture "one" says that it is of the type image/svg+xml, but its content is of another.',
    );
  });

  it("[MAP3] take at most 3 MB together, and 400 kB each", () => {
    const large = (id: string, size: number): Picture => ({
      id,
      type: "image/png",
      data: base64(PNG, "x".repeat(size - PNG.length)),
    });
    const many = (count: number) => Array.from({ length: count }, (_, index) => large(`p${index}`, 400_000));
    expect(codesOf(fileWithPictures(many(7)))).toEqual([]);
    expect(codesOf(fileWithPictures(many(8)))).toEqual(["file/too-large"]);
    expect(codesOf(fileWithPictures([large("one", 401_000)]))).not.toEqual([]);
  });

  it("[MAP3] under the map is one of them, with a size, and belongs to format 2", () => {
    const pictures: Picture[] = [{ id: "deck", type: "image/png", data: CONTENTS["image/png"] }];
    const site = { picture: "deck", left: -2, top: 9, width: 30, height: 12 };
    expect(codesOf(fileWithPictures(pictures, { site }))).toEqual([]);
    expect(codesOf(fileWithPictures(pictures, { site: { ...site, picture: "dock" } }))).toEqual([
      "file/no-such-reference",
    ]);
    expect(codesOf(fileWithPictures(pictures, { site: { ...site, width: 0 } }))).not.toEqual([]);
    const older = {
      ...fileWith([step("look", "iv", 5)], { site }),
      format: "tetherline.procedure/1" as const,
    };
    expect(codesOf(older)).toContain("file/key-of-newer-format");
  });

  it("[MAP3] are named anew by the site when they are renamed", () => {
    const pictures: Picture[] = [{ id: "deck", type: "image/png", data: CONTENTS["image/png"] }];
    const file = fileWithPictures(pictures, {
      site: { picture: "deck", left: 0, top: 0, width: 1, height: 1 },
    });
    const changed = applyChanges(file, [{ rename: "deck", list: "pictures", to: "top-view" }]);
    expect(changed.file?.site?.picture).toBe("top-view");
  });
});
