import { message } from "../../words/index.ts";
import { errorAt } from "./error-at.ts";
import type { Finding } from "./finding.ts";
import { finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { member, textOf } from "./raw-file.ts";
import { idOf } from "./raw-step.ts";
import type { Procedure } from "./schema.ts";

/** A type of picture that a procedure may hold. */
type PictureType = Procedure["pictures"][number]["type"];

/** The bytes that the pictures of a procedure may take together ([MAP3]). */
const MOST_BYTES = 3_000_000;
const MEGABYTE = 1_000_000;

/** So many letters of Base64 are looked at: their bytes tell every type. A multiple of four. */
const LETTERS = 2000;

/** An error for each picture that is not of the type that it says, and for pictures that are too large together ([MAP3]). */
export function pictureFindings(pictures: readonly RawPart[]): Finding[] {
  const size = pictures.reduce((sum, picture) => sum + bytesOf(textOf(member(picture, "data")) ?? ""), 0);
  const tooLarge = message("file/pictures-too-large", { size: size / MEGABYTE, most: MOST_BYTES / MEGABYTE });
  return [
    ...pictures.flatMap(typeFindings),
    ...(size > MOST_BYTES ? [finding("error", "file/too-large", "/pictures", tooLarge)] : []),
  ];
}

/** The bytes that a text in Base64 stands for. */
function bytesOf(data: string): number {
  const padding = data.endsWith("==") ? 2 : data.endsWith("=") ? 1 : 0;
  return (data.length / 4) * 3 - padding;
}

function typeFindings(picture: RawPart): Finding[] {
  const [type, data] = [textOf(member(picture, "type")), textOf(member(picture, "data"))];
  const begins = data === null ? null : decoded(data.slice(0, LETTERS));
  const isOfType = type === null ? undefined : IS_OF_TYPE[type];
  if (begins === null || type === null || !isOfType || isOfType(begins)) return [];
  const id = idOf(picture) ?? "";
  const said = message("file/picture-not-of-type", { id, type });
  return [errorAt(member(picture, "type"), "file/wrong-value", said, { things: [id] })];
}

/** Base64 as bytes, a letter each; `null` where it is none, which the schema says. */
function decoded(data: string): string | null {
  try {
    return atob(data);
  } catch {
    return null;
  }
}

/** What the content of each type begins with. */
const IS_OF_TYPE: Readonly<Record<string, (begins: string) => boolean>> = {
  "image/png": (begins) => begins.startsWith("\x89PNG\r\n\x1a\n"),
  "image/jpeg": (begins) => begins.startsWith("\xff\xd8\xff"),
  "image/webp": (begins) => begins.startsWith("RIFF") && begins.slice(8, 12) === "WEBP",
  "image/svg+xml": (begins) => /^(?:\xef\xbb\xbf)?\s*<(?:svg[\s/>]|[?!][\s\S]*<svg[\s/>])/.test(begins),
};

/** The type that the content of a picture shows, from its Base64; `null` for none of those that a procedure may hold. */
export function pictureTypeOf(data: string): PictureType | null {
  const begins = decoded(data.slice(0, LETTERS));
  if (begins === null) return null;
  const found = Object.entries(IS_OF_TYPE).find(([, isOfType]) => isOfType(begins));
  return (found?.[0] ?? null) as PictureType | null;
}
