import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import {
  applyChanges,
  changeProblemMessage,
  changesBetween,
  inverseOf,
  sameJson,
  TextMemory,
  writtenOver,
} from "../changes/index.ts";
import type { Change, ProcedureFile } from "../procedure/index.ts";
import { parseProcedure, procedureFileOf } from "../procedure/index.ts";
import type { About, Anchor, Gesture, Manuscript } from "./manuscript.ts";
import { fileOfText, MOST_GESTURES } from "./manuscript.ts";
import { spliceBetween, spliced, turnedBack } from "./text-splice.ts";

/** A manuscript after a gesture, or why the gesture cannot be made. */
export type Written =
  | { readonly manuscript: Manuscript; readonly problem: null }
  | { readonly manuscript: null; readonly problem: Message };

/** A manuscript that went one gesture back or forth, with what is selected then. */
export interface Stepped {
  readonly manuscript: Manuscript;
  readonly anchor: Anchor;
}

function afterGesture(
  manuscript: Manuscript,
  next: Pick<Manuscript, "text" | "file">,
  gesture: Omit<Gesture, "splice">,
): Manuscript {
  const done = [...manuscript.done, { ...gesture, splice: spliceBetween(manuscript.text, next.text) }];
  return { ...manuscript, ...next, done: done.slice(-MOST_GESTURES), undone: [] };
}

/**
 * Makes a gesture on a manuscript ([WRT1]): all of its changes, or none and why. The text keeps the lines that hold nothing changed
 * ([CHG6]). A gesture that would leave something that has not the shape of a procedure is refused with the first finding of its
 * reading; one that leaves dangling references is made, and its reading has findings. Changes that change nothing are no gesture.
 * `memory` spares reading the text anew for one gesture after another.
 */
export function gestureOn(
  manuscript: Manuscript,
  changes: readonly Change[],
  about: About,
  memory: TextMemory = new TextMemory(),
): Written {
  const applied = applyChanges(manuscript.file, changes);
  if (applied.problem) return { manuscript: null, problem: changeProblemMessage(applied.problem) };
  const { file } = applied;
  if (sameJson(file, manuscript.file)) return { manuscript, problem: null };
  if (!procedureFileOf(file, manuscript.file)) {
    const [first] = parseProcedure(file).findings;
    return { manuscript: null, problem: first?.message ?? message("write/no-procedure") };
  }
  const inverse = inverseOf(manuscript.file, changes);
  const text = writtenOver(manuscript.text, file, memory);
  return { manuscript: afterGesture(manuscript, { text, file }, { changes, inverse, about }), problem: null };
}

/** The file after changes where that is what a text holds, so that what they leave alone is shared; else what the text holds. */
function fileAfter(file: ProcedureFile, changes: readonly Change[], text: string): ProcedureFile {
  const held = fileOfText(text);
  const { file: changed } = applyChanges(file, changes);
  if (held && changed && sameJson(held, changed)) return changed;
  return held ?? file;
}

/** Takes the last gesture back, in the file and to the byte in its text; `null` when there is none. */
export function undone(manuscript: Manuscript): Stepped | null {
  const gesture = manuscript.done.at(-1);
  if (!gesture) return null;
  const text = spliced(manuscript.text, turnedBack(gesture.splice));
  return {
    manuscript: {
      ...manuscript,
      text,
      file: fileAfter(manuscript.file, gesture.inverse, text),
      done: manuscript.done.slice(0, -1),
      undone: [...manuscript.undone, gesture],
    },
    anchor: gesture.about.before,
  };
}

/** Makes the gesture again that was taken back last; `null` when there is none, or something else was done since. */
export function redone(manuscript: Manuscript): Stepped | null {
  const gesture = manuscript.undone.at(-1);
  if (!gesture) return null;
  const text = spliced(manuscript.text, gesture.splice);
  return {
    manuscript: {
      ...manuscript,
      text,
      file: fileAfter(manuscript.file, gesture.changes, text),
      done: [...manuscript.done, gesture],
      undone: manuscript.undone.slice(0, -1),
    },
    anchor: gesture.about.after,
  };
}

/** Changes that make one file of another, whatever ids they hold. */
function changesTo(before: ProcedureFile, after: ProcedureFile): readonly Change[] {
  const changes = changesBetween(before, after);
  if (sameJson(applyChanges(before, changes).file, after)) return changes;
  const unset = Object.keys(before).filter((key) => !Object.hasOwn(after, key));
  return [{ head: { ...after }, unset }];
}

/**
 * A manuscript after somebody typed its text. A text with the shape of a procedure is one gesture, and stands to the byte as it was typed;
 * any other is kept as `unread` and touches nothing.
 */
export function typedOn(manuscript: Manuscript, text: string, anchor: Anchor): Manuscript {
  if (text === manuscript.text) return { ...manuscript, unread: null };
  const file = fileOfText(text);
  if (!file) return { ...manuscript, unread: text };
  const changes = changesTo(manuscript.file, file);
  const inverse = changesTo(file, manuscript.file);
  const next = fileAfter(manuscript.file, changes, text);
  const about: About = { name: "type", before: anchor, after: anchor };
  return { ...afterGesture(manuscript, { text, file: next }, { changes, inverse, about }), unread: null };
}
