import { memo, useState } from "react";
import { flushSync } from "react-dom";
import type { Outline } from "../../core/procedure/index.ts";
import { clockText } from "../../core/units/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { Performers, spanText } from "../parts/index.ts";
import { StepDo, TextInLanguage } from "../texts/index.ts";
import { actorsText } from "./actors-text.ts";
import { AlertMark } from "./alert-mark.tsx";
import { AmendedTag } from "./amended-tag.tsx";
import { askedAgainWords } from "./asked-again-words.ts";
import type { FollowActions } from "./follow-actions.ts";
import type { FollowRow, GoneRow, StepRow } from "./follow-rows.ts";
import { NoteMark } from "./note-mark.tsx";
import { OpenStep } from "./open-step.tsx";

interface RowProps {
  readonly row: FollowRow;
  readonly outline: Outline;
  readonly strands: readonly Strand[];
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  readonly live: boolean;
  readonly onPick: (step: string) => void;
}

/** One row of the list: the heading of a task, a step that somebody has reached, or any other step on one line. */
export const FollowListRow = memo(function FollowListRow({
  row,
  outline,
  strands,
  actions,
  live,
  onPick,
}: RowProps) {
  if (row.kind === "task") {
    return (
      <li data-row={row.key} className="follow-row follow-task">
        <h2>
          {row.number}{" "}
          <TextInLanguage list="tasks" id={row.task.id} field="title">
            {row.task.title}
          </TextInLanguage>{" "}
        </h2>
        {row.task.priority === "get-ahead" && <span className="follow-tag">{words("follow/get-ahead")}</span>}
        {row.task.closeout && <span className="follow-tag">{words("follow/closeout")}</span>}
        {row.plannedStart !== null && row.plannedFinish !== null && (
          <span className="follow-times">
            {words("follow/planned", { start: row.plannedStart, finish: row.plannedFinish })}
          </span>
        )}
      </li>
    );
  }
  if (row.kind === "gone") return <GoneItem row={row} strands={strands} />;
  return (
    <StepItem row={row} outline={outline} strands={strands} actions={actions} live={live} onPick={onPick} />
  );
});

/** A step that was taken out. Nothing can be done with it. */
function GoneItem({
  row: { key, stage, entry },
  strands,
}: Pick<RowProps, "strands"> & { readonly row: GoneRow }) {
  return (
    <li data-row={key} data-stage={stage} className="follow-row follow-line">
      <div className="follow-line-button">
        <span className="follow-number" data-bead>
          {entry.number}
        </span>
        <Performers lanes={entry.performers} strands={strands} />
        <span className="follow-do">
          <s>{entry.step.do}</s>
          <AmendedTag how="dropped" />
        </span>
      </div>
    </li>
  );
}

/** A step. It is shown as marked done at once; the rest of the list is brought up to date one frame later. */
function StepItem({ row, outline, strands, actions, live, onPick }: RowProps & { readonly row: StepRow }) {
  const [isKept, setIsKept] = useState(false);
  const isOpen = live && (row.stage === "working" || row.stage === "waiting");
  return (
    <li
      data-row={row.key}
      data-stage={isOpen && isKept ? "done" : row.stage}
      className={isOpen ? "follow-open" : "follow-row follow-line"}
    >
      {isOpen ? (
        <OpenStep
          row={row}
          outline={outline}
          strands={strands}
          actions={actions}
          isKept={isKept}
          onKept={(kept) => flushSync(() => setIsKept(kept))}
          onPick={onPick}
        />
      ) : (
        <LineStep row={row} outline={outline} strands={strands} onPick={onPick} />
      )}
    </li>
  );
}

function LineStep({
  row,
  outline,
  strands,
  onPick,
}: {
  readonly row: StepRow;
  readonly outline: Outline;
  readonly strands: readonly Strand[];
  readonly onPick: (step: string) => void;
}) {
  const { entry, stage, progress } = row;
  return (
    <button type="button" className="follow-line-button" onClick={() => onPick(entry.step.id)}>
      <span className="follow-number" data-bead>
        {entry.number}
      </span>
      <Performers lanes={entry.performers} strands={strands} />
      <span className="follow-do">
        <StepDo step={entry.step} />
        {row.hangsOn !== null && (
          <span className="follow-tag">
            {words("follow/only-if", {
              outcomes: Object.values(entry.step.when ?? {}).join(words("figures/between")),
            })}
          </span>
        )}
        {row.outcome !== null && (
          <span className="follow-tag">
            {words("follow/came-out", { outcome: row.outcome.replaceAll("-", " ") })}
          </span>
        )}
        {row.askedAgain !== null && <span className="follow-owed">{askedAgainWords(row.askedAgain)}</span>}
        {progress.outOfOrder && <span className="follow-tag">{words("follow/out-of-order")}</span>}
        {stage === "done" && progress.alsoDone.length > 0 && (
          <span className="follow-tag">
            {words("follow/also-marked-by", { who: actorsText(progress.alsoDone, outline.crew) })}
          </span>
        )}
        {row.amended !== null && <AmendedTag how={row.amended} />}
        {row.alert !== null && <AlertMark level={row.alert} />}
        <NoteMark count={row.notes} />
        {row.owed.map(({ kind, record, text }) => (
          <span key={`${kind} ${record}`} className="follow-owed">
            {inWords(text)}
          </span>
        ))}
      </span>
      <LineTimes row={row} />
    </button>
  );
}

/** The times of a step, with the word that says what they are: done or skipped, expected, or planned. */
function LineTimes({ row }: { readonly row: StepRow }) {
  const { stage, start, finish, isPlanned } = row;
  if (start === null || finish === null) return <span className="follow-times" />;
  const happened = stage === "done" || stage === "skipped";
  const kind = happened ? stage : isPlanned ? "planned" : "expected";
  return (
    <span className="follow-times" data-kind={kind}>
      <span className="heard-only">{words(`follow/stage-${stage}`)} </span>
      <span className="follow-time-kind">{words(`follow/time-${kind}`)}</span>
      <span>{happened ? clockText(finish) : spanText(start, finish)}</span>
    </span>
  );
}
