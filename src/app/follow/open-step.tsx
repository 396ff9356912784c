import type { CSSProperties, ReactNode } from "react";
import { useRef, useState } from "react";
import { heldByMessage } from "../../core/course/index.ts";
import type { Outline } from "../../core/procedure/index.ts";
import { contingenciesNamedBy, stateLabel, valueLabel } from "../../core/procedure/index.ts";
import type { Message } from "../../words/index.ts";
import { message, words } from "../../words/index.ts";
import type { Strand } from "../braid/index.ts";
import { callsOf, Performers, spanText, Worded } from "../parts/index.ts";
import { StepPictures } from "../pictures/index.ts";
import { StepAlerts, StepDo, TextInLanguage, TextMark } from "../texts/index.ts";
import { AlertMark } from "./alert-mark.tsx";
import { AmendedTag } from "./amended-tag.tsx";
import { askedAgainWords } from "./asked-again-words.ts";
import { OpenBranches } from "./branch-list.tsx";
import { CheckList } from "./check-list.tsx";
import type { DoneOptions, FollowActions } from "./follow-actions.ts";
import type { StepRow } from "./follow-rows.ts";
import { GuardedButton } from "./guarded-button.tsx";
import { NoteMark } from "./note-mark.tsx";
import { RecordField } from "./record-field.tsx";
import { useTap } from "./use-tap.ts";
import { useJudgeTap } from "./use-tap-guard.ts";

interface OpenStepProps {
  readonly row: StepRow;
  readonly outline: Outline;
  readonly strands: readonly Strand[];
  /** `null` for a reader who may not enter anything. */
  readonly actions: FollowActions | null;
  /** True from the moment the mark is kept until the list is up to date. */
  readonly isKept: boolean;
  readonly onKept: (isKept: boolean) => void;
  readonly onPick: (step: string) => void;
}

/**
 * A step that somebody has reached: alerts first, then the action, the values to record, who confirms, and the button
 * that marks it done.
 */
export function OpenStep({ row, outline, strands, actions, isKept, onKept, onPick }: OpenStepProps) {
  const { entry, waitingHere, progress, plannedStart, plannedFinish } = row;
  const { step } = entry;
  const working = row.stage === "working";
  const early = !working && isOnlyEarly(row);
  const calls = callsOf(outline, step.by);
  return (
    <div className="open-step" data-working={working || undefined} data-early={early || undefined}>
      <div className="open-head" data-bead>
        <span className="follow-number">{entry.number}</span>
        <Performers lanes={entry.performers} strands={strands} />
        {step.by.length > 1 && <span>{words("follow/together")}</span>}
        {row.amended !== null && <AmendedTag how={row.amended} />}
        {row.alert !== null && <AlertMark level={row.alert} />}
        {row.notes > 0 && (
          <button
            type="button"
            className="plain-button note-button"
            aria-label={words("follow/read-notes", { step: entry.number })}
            onClick={() => onPick(step.id)}
          >
            <NoteMark count={row.notes} />
          </button>
        )}
        {plannedStart !== null && plannedFinish !== null && (
          <span className="follow-times">
            {words("follow/planned-span", { span: spanText(plannedStart, plannedFinish) })}
          </span>
        )}
      </div>
      <div className="open-body">
        <div className="open-text">
          <StepAlerts step={step} />
          <p className="open-do">
            <StepDo step={step} />
          </p>
          <StepPictures procedure={outline.procedure} step={step} />
          {contingenciesNamedBy(outline.procedure, step).map(
            ({ id, title, when }) =>
              when !== undefined && (
                <p key={id} className="contingency-when">
                  {words("follow/contingency-named", { title, when })}
                </p>
              ),
          )}
          {waitingHere.map(({ lane, waitingOn }) => (
            <p key={lane} className="open-standing">
              <Worded
                message={standingMessage(String(strands[lane]?.call), heldByMessage(outline, waitingOn))}
              />
            </p>
          ))}
          {row.askedAgain && <p className="open-unmet">{askedAgainWords(row.askedAgain)}</p>}
          {row.unmet.length > 0 && (
            <ul className="open-unmet">
              {row.unmet.map(({ state, value, is }) => (
                <li key={state}>
                  {words("follow/unmet", {
                    state: stateLabel(outline, state),
                    value: valueLabel(outline, value),
                    is: valueLabel(outline, is),
                  })}
                </li>
              ))}
            </ul>
          )}
          {(working || early) && <CheckList step={step} progress={progress} actions={actions} />}
          {actions && (working || early) && step.records.length > 0 && (
            <div className="open-records">
              {step.records.map((record) => (
                <RecordField
                  key={record.id}
                  step={step.id}
                  record={record}
                  taken={progress.records}
                  actions={actions}
                />
              ))}
            </div>
          )}
          {(working || early) && step.confirm && (
            <p className="open-confirm">
              <span>
                {words("follow/confirms", {
                  crew: callsOf(outline, [step.confirm.by]),
                  text: step.confirm.text,
                })}
                <TextMark list="steps" id={step.id} field="confirm" />
              </span>
              {progress.confirmed ? (
                <b>{words("follow/is-confirmed")}</b>
              ) : (
                actions && (
                  <GuardedButton onTap={() => void actions.confirm(step.id)}>
                    {words("follow/confirm")}
                  </GuardedButton>
                )
              )}
            </p>
          )}
        </div>
        <div className="open-acts">
          {actions && (working || early) && (
            <DoneButtons
              row={row}
              calls={calls}
              strands={strands}
              actions={actions}
              isKept={isKept}
              onKept={onKept}
            />
          )}
          <button
            type="button"
            className="plain-button open-more"
            onClick={() => onPick(step.id)}
            aria-label={words("follow/more-for-step", { step: entry.number })}
          >
            {words("follow/more-of-step")}
          </button>
        </div>
        {step.decide && <OpenBranches decision={step.decide.id} />}
      </div>
    </div>
  );
}

/** Who has reached a step and what they wait for. */
const standingMessage = (crew: string, heldBy: Message | null): Message =>
  message("follow/here-and-waits", { crew, waits: heldBy ?? message("follow/waits-for-start") });

/**
 * True when nobody is missing and only a time has not been reached. The crew members who are there may have done the
 * step already.
 */
function isOnlyEarly({ waitingHere, entry }: StepRow): boolean {
  return (
    waitingHere.length === entry.performers.length &&
    waitingHere.every(
      ({ waitingOn }) =>
        waitingOn.length > 0 &&
        waitingOn.every(({ kind }) => kind === "lag" || kind === "notBefore" || kind === "window"),
    )
  );
}

function DoneButtons({
  row,
  calls,
  strands,
  actions,
  isKept,
  onKept,
}: {
  readonly row: StepRow;
  readonly calls: string;
  readonly strands: readonly Strand[];
  readonly actions: FollowActions;
  readonly isKept: boolean;
  readonly onKept: (isKept: boolean) => void;
}) {
  const { step, performers } = row.entry;
  const decide = step.decide;
  const isUnderWay = useRef(false);
  const [chosen, setChosen] = useState<string | null>(null);
  // A second tap while the first entry is being kept must not make another entry.
  const markDone = async (options: DoneOptions = {}) => {
    if (isUnderWay.current) return;
    isUnderWay.current = true;
    setChosen(options.outcome ?? null);
    await actions.done(step.id, { ...options, onKept: () => onKept(true) });
    isUnderWay.current = false;
    onKept(false);
  };
  if (!decide) {
    return (
      <DoneButton strands={performers.length} isKept={isKept} onTap={() => void markDone()}>
        <StrandEdge lanes={performers} strands={strands} />
        <span className="done-who">{calls}</span>
        <DoneWord
          word={words(row.stage === "working" ? "follow/done" : "follow/done-already")}
          kept={words("follow/is-done")}
          isKept={isKept}
        />
      </DoneButton>
    );
  }
  return (
    <fieldset className="done-outcomes">
      <legend>
        <TextInLanguage list="decisions" id={decide.id} field="ask">
          {decide.ask}
        </TextInLanguage>
      </legend>
      {decide.outcomes.map((outcome) => (
        <DoneButton
          key={outcome}
          strands={performers.length}
          isKept={isKept}
          onTap={() => void markDone({ decision: decide.id, outcome })}
        >
          <StrandEdge lanes={performers} strands={strands} />
          <span className="done-who">{calls}</span>
          <DoneWord
            word={outcome.replaceAll("-", " ")}
            kept={`✓ ${outcome.replaceAll("-", " ")}`}
            isKept={isKept && outcome === chosen}
          />
        </DoneButton>
      ))}
    </fieldset>
  );
}

/**
 * The text of a button before and after its tap is kept. Both are laid out from the start, so that the change needs no
 * layout.
 */
function DoneWord({
  word,
  kept,
  isKept,
}: {
  readonly word: string;
  readonly kept: string;
  readonly isKept: boolean;
}) {
  return (
    <span className="done-word done-words" data-kept={isKept || undefined}>
      <span>{word}</span>
      <span>{kept}</span>
    </span>
  );
}

/**
 * The button that marks a step done. Once the entry is kept it remains in place, and so does the focus, until the list
 * is up to date.
 */
function DoneButton({
  strands,
  isKept,
  onTap,
  children,
}: {
  /** The number of strands along its edge. */
  readonly strands: number;
  readonly isKept: boolean;
  readonly onTap: () => void;
  readonly children: ReactNode;
}) {
  const judge = useJudgeTap();
  const tap = useTap((control, point) => {
    if (!isKept && judge(control, point)) onTap();
  });
  return (
    <button
      type="button"
      className="done-button"
      data-guarded
      style={{ "--strands": strands } as CSSProperties}
      aria-disabled={isKept || undefined}
      {...tap}
    >
      {children}
    </button>
  );
}

/** The strands of a step's performers along the edge of its button, so that nobody mistakes one button for another. */
function StrandEdge({
  lanes,
  strands,
}: {
  readonly lanes: readonly number[];
  readonly strands: readonly Strand[];
}) {
  return (
    <svg className="done-edge" aria-hidden="true" width={lanes.length * 8} height="100%">
      {lanes.map((lane, index) => (
        <line
          key={lane}
          x1={index * 8 + 4}
          x2={index * 8 + 4}
          y1="0"
          y2="100%"
          style={{ stroke: strands[lane]?.colour, strokeDasharray: strands[lane]?.dash }}
        />
      ))}
    </svg>
  );
}
