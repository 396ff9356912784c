import type { Outline } from "../../core/procedure/index.ts";
import type { AmendedStep, Amendment, Ledger } from "../../core/walk/index.ts";
import { amendmentOutcome, amendmentSeenBy } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { amenderWords, noticeWords } from "./amendment-words.ts";

interface AmendmentPanelProps {
  readonly ledger: Ledger;
  readonly amendment: Amendment;
  readonly onClose: () => void;
}

/** One amendment: who, when and why, each step that is otherwise with it, and what it did to the finish. */
export function AmendmentPanel({ ledger, amendment, onClose }: AmendmentPanelProps) {
  const { outline } = ledger.inForce;
  const { before, after } = amendmentOutcome(amendment).finish;
  const seenBy = amendmentSeenBy(ledger, amendment).map((seen) => amenderWords(seen, outline));
  return (
    <SidePanel title={words("amending/details")} onClose={onClose}>
      <p>{noticeWords(amendment, outline)}</p>
      <ul className="plain-list">
        {amendment.steps.map((one) => (
          <li key={one.step}>
            <AmendedLine one={one} outline={outline} before={amendment.before.outline} />
          </li>
        ))}
      </ul>
      {before !== null && after !== null && <p>{words("amending/finish-then", { before, after })}</p>}
      <p className="hint">
        {seenBy.length === 0
          ? words("amending/by-nobody")
          : words("amending/by-whom-seen", { crew: [...new Set(seenBy)] })}
      </p>
    </SidePanel>
  );
}

function AmendedLine({
  one: { step, how },
  outline,
  before,
}: {
  readonly one: AmendedStep;
  readonly outline: Outline;
  readonly before: Outline;
}) {
  const entry = outline.step(step) ?? before.step(step);
  return (
    <>
      <b>{words(`amending/how-${how}`)}</b>{" "}
      {entry ? words("amending/step-name", { number: entry.number, action: entry.step.do }) : step}
    </>
  );
}
