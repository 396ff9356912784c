import type { GestureName } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";

/** What a gesture did, as undo and redo name it. */
export const doneWords = (name: GestureName): string => words(`write/did-${name}`);
