import { words } from "../../words/index.ts";
import { doneWords } from "./done-words.ts";
import { Tool } from "./tool.tsx";
import type { OpenManuscript } from "./use-manuscript.ts";

/** The buttons that take a gesture back and make it again, with what that is. */
export function UndoTools({ open }: { readonly open: OpenManuscript }) {
  const [undoes, redoes] = [open.manuscript.done.at(-1), open.manuscript.undone.at(-1)];
  return (
    <>
      <Tool
        says={words("write/undo")}
        isOff={!undoes}
        about={undoes ? words("write/undo-what", { what: doneWords(undoes.about.name) }) : null}
        onTool={open.undo}
      />
      <Tool
        says={words("write/redo")}
        isOff={!redoes}
        about={redoes ? words("write/redo-what", { what: doneWords(redoes.about.name) }) : null}
        onTool={open.redo}
      />
    </>
  );
}
