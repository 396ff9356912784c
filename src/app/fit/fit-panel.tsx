import { useMemo, useState } from "react";
import type { Outline, Task } from "../../core/procedure/index.ts";
import type { Duration, TaskId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import type { OnAmend } from "./fit-answer-view.tsx";
import { FitAnswerView } from "./fit-answer-view.tsx";
import type { FitRequest, FitSubject } from "./fit-request.ts";
import { useFit } from "./use-fit.ts";
import "./fit.css";

interface FitPanelProps {
  readonly outline: Outline;
  readonly subject: FitSubject;
  /** The essential tasks that the lead may leave out, in reading order. */
  readonly essential: readonly Task[];
  /** Asks again with what has happened since; `null` where nothing happens. */
  readonly onAgain: (() => void) | null;
  /** Goes on to who could do the rest in less time; `null` where that is asked elsewhere. */
  readonly onSplit?: (() => void) | null;
  /** Amends the plan so that get-aheads are kept and tasks are left out; `null` where it may not be amended. */
  readonly onAmend?: OnAmend | null;
  readonly onClose: () => void;
}

/** The chance that is asked for unless the reader goes by likely times. */
const NINE_IN_TEN = 0.9;

/**
 * What still fits under the elapsed limit: sets of get-aheads, best first. Essential work is left out only where the
 * reader ticks it, and nothing is changed by any of it ([FIT1], [FIT2], [FIT4]).
 */
export function FitPanel({
  outline,
  subject,
  essential,
  onAgain,
  onSplit = null,
  onAmend = null,
  onClose,
}: FitPanelProps) {
  const limit = outline.procedure.limits.elapsed ?? null;
  const [chance, setChance] = useState<number | null>(limit === null ? null : NINE_IN_TEN);
  const [leftOut, setLeftOut] = useState<readonly TaskId[]>([]);
  const request = useMemo(() => ({ subject, limit, chance, leftOut }), [subject, limit, chance, leftOut]);
  const toggle = (id: TaskId) =>
    setLeftOut((ids) => (ids.includes(id) ? ids.filter((one) => one !== id) : [...ids, id]));
  return (
    <SidePanel title={words("fit/title")} onClose={onClose}>
      {limit !== null && <ByWhat chance={chance} onChance={setChance} />}
      <Answered
        outline={outline}
        request={request}
        limit={limit}
        onAmend={onAmend && (({ keep, out }) => onAmend({ keep, out: [...out, ...leftOut] }))}
      />
      {(onAgain || onSplit) && (
        <div className="panel-acts">
          {onAgain && (
            <button type="button" className="plain-button" onClick={onAgain}>
              {words("fit/again")}
            </button>
          )}
          {onSplit && (
            <button type="button" className="plain-button" onClick={onSplit}>
              {words("split/rest")}
            </button>
          )}
        </div>
      )}
      {essential.length > 0 && limit !== null && (
        <details className="fit-essential" open={leftOut.length > 0 || undefined}>
          <summary>{words("fit/leave-out")}</summary>
          <p className="hint">{words("fit/leave-out-how")}</p>
          <ul className="plain-list">
            {essential.map(({ id, title }) => (
              <li key={id}>
                <label className="fit-tick">
                  <input type="checkbox" checked={leftOut.includes(id)} onChange={() => toggle(id)} />
                  {title}
                </label>
              </li>
            ))}
          </ul>
        </details>
      )}
      <p className="hint">{words("fit/how")}</p>
      <p className="hint">{words("follow/advises")}</p>
    </SidePanel>
  );
}

function ByWhat({
  chance,
  onChance,
}: {
  readonly chance: number | null;
  readonly onChance: (chance: number | null) => void;
}) {
  const choices = [
    { value: NINE_IN_TEN, says: words("fit/by-chance") },
    { value: null, says: words("fit/by-likely") },
  ];
  return (
    <fieldset className="fit-by">
      <legend>{words("fit/in-time")}</legend>
      {choices.map(({ value, says }) => (
        <label key={says} className="fit-tick">
          <input type="radio" name="fit-by" checked={chance === value} onChange={() => onChance(value)} />
          {says}
        </label>
      ))}
    </fieldset>
  );
}

function Answered({
  outline,
  request,
  limit,
  onAmend,
}: {
  readonly outline: Outline;
  readonly request: FitRequest;
  readonly limit: Duration | null;
  readonly onAmend: OnAmend | null;
}) {
  const asked = useFit(request);
  if (asked === "working")
    return (
      <p role="status" className="page-message">
        {words("fit/working")}
      </p>
    );
  if (asked === "failed" || asked.fit === null || asked.now === null)
    return (
      <p role="alert" className="page-message">
        {words("fit/failed")}
      </p>
    );
  return (
    <FitAnswerView
      outline={outline}
      fit={asked.fit}
      now={asked.now}
      limit={limit}
      onAmend={onAmend}
      isAsWritten={request.leftOut.length === 0}
    />
  );
}
