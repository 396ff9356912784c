import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { FileStep } from "../../core/write/index.ts";
import { placedStep } from "../../core/write/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, words } from "../../words/index.ts";

interface GestureNotesProps {
  readonly file: ProcedureFile;
  /** Why the last gesture was not possible; `null` when it was. */
  readonly problem: Message | null;
  /** The step that is selected; `null` for none. */
  readonly step: FileStep | null;
  /** The step that was pointed at last, for it to come after; `null` for none. */
  readonly linked: string | null;
}

/** What became of the last gesture, where it stays in sight: why it was not possible, or which step was hit ([WRT3]). */
export function GestureNotes({ file, problem, step, linked }: GestureNotesProps) {
  const isLinked = step?.after?.some((one) => (typeof one === "string" ? one : one.step) === linked);
  const other = isLinked && linked !== null ? placedStep(file, linked)?.step : undefined;
  return (
    <>
      {problem && (
        <p role="alert" className="write-problem">
          {inWords(problem)}
        </p>
      )}
      {step && other && <p role="status">{words("write/linked", { action: step.do, other: other.do })}</p>}
    </>
  );
}
