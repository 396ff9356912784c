import type { Outline, OutlineStep } from "../../core/procedure/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

/** What stands in the row of one step: whether it is ticked, its time as typed, and how its decision came out. */
export interface PaperLine {
  readonly isTicked: boolean;
  readonly time: string;
  readonly outcome: string | null;
}

interface PaperRowProps {
  readonly entry: OutlineStep;
  readonly outline: Outline;
  readonly line: PaperLine;
  /** Why it could not be entered; `null` when nothing was said against it. */
  readonly why: Message | null;
  readonly onLine: (line: PaperLine) => void;
}

/** One step as on paper: a box to tick, the time it was done, and how it came out where it makes a decision. */
export function PaperRow({ entry, outline, line, why, onLine }: PaperRowProps) {
  const { number, step } = entry;
  return (
    <li className="paper-row" data-refused={why !== null || undefined}>
      <label className="paper-tick">
        <input
          type="checkbox"
          checked={line.isTicked}
          onChange={(event) => onLine({ ...line, isTicked: event.target.checked })}
        />
        <span>{words("paper/step", { number, crew: callsOf(outline, step.by), step: step.do })}</span>
      </label>
      <input
        className="paper-time"
        inputMode="decimal"
        autoComplete="off"
        placeholder="0:00"
        aria-label={words("paper/done-at", { number })}
        aria-invalid={why !== null || undefined}
        value={line.time}
        // Whoever writes a time means that the step was done.
        onChange={({ target: { value } }) =>
          onLine({ ...line, time: value, isTicked: line.isTicked || value.trim() !== "" })
        }
      />
      {step.decide && (
        <select
          aria-label={words("paper/outcome", { number })}
          value={line.outcome ?? ""}
          onChange={(event) => onLine({ ...line, outcome: event.target.value || null })}
        >
          <option value="">{words("paper/choose-outcome")}</option>
          {step.decide.outcomes.map((outcome) => (
            <option key={outcome} value={outcome}>
              {outcome.replaceAll("-", " ")}
            </option>
          ))}
        </select>
      )}
      {why !== null && <p className="paper-why">{inWords(why)}</p>}
    </li>
  );
}
