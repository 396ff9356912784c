import type { Change, ProcedureFile } from "../procedure/index.ts";
import { procedureFileOf } from "../procedure/index.ts";
import type { TextSplice } from "./text-splice.ts";

/** What a gesture did, for the words of undo and redo. */
export type GestureName =
  | "add"
  | "drop"
  | "move"
  | "split"
  | "join"
  | "duplicate"
  | "paste"
  | "set"
  | "rename"
  | "replace"
  | "link"
  | "joint"
  | "hand-over"
  | "mend"
  | "type";

/** What was selected at a moment, and how far the table was scrolled. */
export interface Anchor {
  /** The rows, by id; none where nothing was. */
  readonly rows: readonly string[];
  /** How far the table was scrolled, in px. */
  readonly scroll: number;
}

/** What a gesture is about: what it did, and what was selected before and after. */
export interface About {
  readonly name: GestureName;
  readonly before: Anchor;
  readonly after: Anchor;
}

/** One gesture: what it changed, with the way back, in the file and in its text. */
export interface Gesture {
  readonly changes: readonly Change[];
  readonly inverse: readonly Change[];
  readonly splice: TextSplice;
  readonly about: About;
}

/** As many gestures are kept; the oldest go. */
export const MOST_GESTURES = 500;

/**
 * A procedure that is being written ([WRT1]): plain data, so that it can be kept as it is. Its file always has the shape of a
 * procedure, though it may refer to what does not exist, which is a finding of its reading.
 */
export interface Manuscript {
  /** The text that it was begun with. */
  readonly base: string;
  /** The text as it is now. */
  readonly text: string;
  /** What the text holds. */
  readonly file: ProcedureFile;
  /** The gestures that can be undone, the last one last. */
  readonly done: readonly Gesture[];
  /** The gestures that can be done again, the next one last. */
  readonly undone: readonly Gesture[];
  /** A text that was typed and does not read as a procedure; `null` for none. It is kept and never applied. */
  readonly unread: string | null;
}

/** What is kept of a manuscript: the file is in its text. */
export type KeptManuscript = Omit<Manuscript, "file">;

function fileIn(text: string): ProcedureFile | null {
  try {
    return procedureFileOf(JSON.parse(text.replace(/^\uFEFF/, "")));
  } catch {
    return null;
  }
}

/** The file that a text holds; `null` when it has not the shape of a procedure. */
export const fileOfText = fileIn;

/** Begins to write over the text of a procedure file; `null` when it has not the shape of one. */
export function manuscriptOf(text: string): Manuscript | null {
  const file = fileIn(text);
  return file && { base: text, text, file, done: [], undone: [], unread: null };
}

/** What is to be kept of a manuscript. */
export function keptOf({ base, text, done, undone, unread }: Manuscript): KeptManuscript {
  return { base, text, done, undone, unread };
}

/** A manuscript that was kept; `null` when its text has not the shape of a procedure. */
export function manuscriptFrom(kept: KeptManuscript): Manuscript | null {
  const file = fileIn(kept.text);
  return file && { ...kept, file };
}
