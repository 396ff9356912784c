import type { WalkId } from "../units/index.ts";
import { surpriseText } from "./surprise-text.ts";
import { type Surprise, surpriseSchema } from "./surprises-file.ts";

const HALF = 16;

/**
 * A surprise as a log carries it: its JSON in UTF-8, each byte added to one of a sequence that begins with the walk's id, in
 * hexadecimal. This keeps somebody from reading it by accident, and nobody who wants to know ([TRN2]).
 */
export function obscured(walk: WalkId, surprise: Surprise): string {
  const bytes = new TextEncoder().encode(surpriseText(surprise));
  return Array.from(veil(walk, bytes), (byte) => byte.toString(HALF).padStart(2, "0")).join("");
}

/** The surprise in an entry of a walk; `null` where there is none that this program understands. */
export function readObscured(walk: WalkId, text: string): Surprise | null {
  if (!/^(?:[0-9a-f]{2})+$/.test(text)) return null;
  const bytes = Uint8Array.from(text.match(/../g) ?? [], (pair) => Number.parseInt(pair, HALF));
  let value: unknown;
  try {
    value = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(veil(walk, bytes)));
  } catch {
    return null;
  }
  const read = surpriseSchema.safeParse(value);
  return read.success ? read.data : null;
}

/** The bytes with a sequence laid over them that hangs on the walk; done twice it gives them back. */
function veil(walk: WalkId, bytes: Uint8Array): Uint8Array {
  let state = 0x811c9dc5;
  for (const letter of walk) state = Math.imul(state ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  return bytes.map((byte) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) | 0;
    return byte ^ (state >>> 24);
  });
}
