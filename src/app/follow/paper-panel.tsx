import { useState } from "react";
import type { StepId } from "../../core/units/index.ts";
import type { PaperClock } from "../../core/walk/index.ts";
import { paperMarks, paperSteps, paperTime } from "../../core/walk/index.ts";
import type { Message } from "../../words/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { actorsText } from "./actors-text.ts";
import { GuardedButton } from "./guarded-button.tsx";
import type { PaperLine } from "./paper-row.tsx";
import { PaperRow } from "./paper-row.tsx";
import type { WalkPanelProps } from "./walk-panel-props.ts";
import "./paper.css";

/** How many steps are shown at first, and how many more at a time. */
const AT_A_TIME = 20;

const BLANK: PaperLine = { isTicked: false, time: "", outcome: null };
const CLOCKS: readonly PaperClock[] = ["pet", "utc"];

type Lines = Readonly<Record<StepId, PaperLine>>;

/**
 * Going back from paper ([PAP1]): the steps that are next, each with a box and the time it was done, entered in one go.
 * What is refused stays as typed, with the reason at its step, and nothing of it is entered.
 */
export function PaperPanel({
  state,
  now,
  actions,
  actor,
  onClose,
}: WalkPanelProps & { readonly actor: string }) {
  const { ledger } = state;
  const { outline } = ledger.inForce;
  const [clock, setClock] = useState<PaperClock>("pet");
  const [lines, setLines] = useState<Lines>({});
  const [why, setWhy] = useState<ReadonlyMap<StepId, Message>>(new Map());
  const [said, setSaid] = useState<string | null>(null);
  const [isEntering, setIsEntering] = useState(false);
  const [shown, setShown] = useState(AT_A_TIME);
  const steps = paperSteps(ledger);
  const ticked = Object.entries(lines).flatMap(([step, line]) =>
    line.isTicked ? [{ step: step as StepId, line }] : [],
  );
  // A ticked step that another device has marked meanwhile stays in sight, with the reason once it is refused.
  const rows = outline.steps.filter(
    ({ step }) => steps.some((one) => one.step.id === step.id) || lines[step.id]?.isTicked,
  );
  const change = (step: StepId, line: PaperLine) => {
    setLines({ ...lines, [step]: line });
    setWhy(new Map([...why].filter(([one]) => one !== step)));
    setSaid(null);
  };
  const enter = async () => {
    if (isEntering) return;
    if (ticked.length === 0) return setSaid(words("paper/nothing-ticked"));
    const petZero = ledger.petZero ?? ledger.opened.at;
    const marks = ticked.map(({ step, line: { time, outcome } }) => {
      const decision = outline.step(step)?.step.decide?.id;
      return {
        step,
        at: paperTime(time, clock, petZero, now),
        decided: decision === undefined || outcome === null ? null : { decision, outcome },
      };
    });
    const checked = paperMarks(ledger, marks, now);
    if (checked.kind === "refused") {
      setWhy(checked.why);
      return setSaid(words("paper/refused", { count: checked.why.size }));
    }
    setIsEntering(true);
    setSaid(null);
    await actions.fromPaper(checked.marks, () => {
      setLines({});
      setSaid(words("paper/entered", { count: checked.marks.length }));
    });
    setIsEntering(false);
  };
  return (
    <SidePanel title={words("paper/title")} onClose={onClose}>
      <p className="hint">{words("paper/how", { who: actorsText([{ actor }], outline.crew) })}</p>
      <p className="hint">{words("paper/owed")}</p>
      <label className="field">
        <span>{words("paper/clock")}</span>
        <select
          value={clock}
          onChange={(event) => {
            setClock(event.target.value as PaperClock);
            setWhy(new Map());
          }}
        >
          {CLOCKS.map((one) => (
            <option key={one} value={one}>
              {words(`paper/clock-${one}`)}
            </option>
          ))}
        </select>
      </label>
      {rows.length === 0 && <p>{words("paper/none")}</p>}
      <ul className="plain-list">
        {rows.slice(0, shown).map((entry) => (
          <PaperRow
            key={entry.step.id}
            entry={entry}
            outline={outline}
            line={lines[entry.step.id] ?? BLANK}
            why={why.get(entry.step.id) ?? null}
            onLine={(line) => change(entry.step.id, line)}
          />
        ))}
      </ul>
      {rows.length > shown && (
        <button type="button" className="plain-button" onClick={() => setShown(shown + AT_A_TIME)}>
          {words("paper/more", { count: Math.min(AT_A_TIME, rows.length - shown) })}
        </button>
      )}
      <p role="status" className="paper-said">
        {said}
      </p>
      {rows.length > 0 && (
        <GuardedButton wide onTap={() => void enter()}>
          {words("paper/enter", { count: ticked.length })}
        </GuardedButton>
      )}
    </SidePanel>
  );
}
