import type { Conflict, MergeSide } from "../../core/changes/index.ts";
import { conflictMessage, conflictName } from "../../core/changes/index.ts";
import { inWords, words } from "../../words/index.ts";

/** What the base and both sides are called. */
export type SideNames = Readonly<Record<MergeSide, string>>;

interface ConflictFieldProps {
  readonly conflict: Conflict;
  readonly names: SideNames;
  /** `null` while nobody decided: none of the three is chosen then. */
  readonly decided: MergeSide | null;
  readonly onDecide: (side: MergeSide) => void;
}

const SIDES = ["ours", "theirs", "base"] as const satisfies readonly MergeSide[];

/** A value as it stands in the file, whole: a choice is made by what is seen. */
const valueText = (value: unknown): string =>
  value === null || value === undefined
    ? words("merge/is-absent")
    : typeof value === "string"
      ? value
      : JSON.stringify(value, null, 1);

/** One conflict with what the base and both sides have, and the choice of one of them ([CHG5]). */
export function ConflictField({ conflict, names, decided, onDecide }: ConflictFieldProps) {
  const group = conflictName(conflict);
  return (
    <fieldset className="compare-conflict" data-decided={decided !== null || undefined}>
      <legend>{inWords(conflictMessage(conflict))}</legend>
      {decided === null && <p className="compare-undecided">{words("merge/undecided")}</p>}
      {SIDES.map((side) => (
        <label key={side} className="compare-side">
          <input type="radio" name={group} checked={decided === side} onChange={() => onDecide(side)} />
          <span>
            <b>{side === "base" ? words("merge/base-has", { name: names.base }) : names[side]}</b>
            <span className="compare-value">{valueText(conflict[side])}</span>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
