import { type ReactNode, useMemo, useState } from "react";
import type { JudgedAmendment } from "../../core/effect/index.ts";
import type { Risk } from "../../core/plan/index.ts";
import type { Change } from "../../core/procedure/index.ts";
import type { Instant, StepId } from "../../core/units/index.ts";
import { NO_TIME } from "../../core/units/index.ts";
import type { Ledger, WalkState } from "../../core/walk/index.ts";
import { begunSteps } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { markedInText, useShownTexts } from "../texts/index.ts";
import "./amend.css";
import { ContingencyWishes } from "./contingency-wishes.tsx";
import { EffectView } from "./effect-view.tsx";
import { NewStepWish, StepWishes } from "./step-wishes.tsx";
import { TaskWishes, WindowWish } from "./task-wishes.tsx";
import { useJudged } from "./use-judged.ts";
import type { Wish } from "./wish.ts";

/** What an amendment begins with. */
export interface AmendmentDraft {
  /** The step that is to be changed; `null` for none in particular. */
  readonly step: StepId | null;
  readonly wishes: readonly Wish[];
  readonly reason: string;
}

/** An amendment that begins with nothing. */
export const NO_DRAFT: AmendmentDraft = { step: null, wishes: [], reason: "" };

interface AmendPanelProps {
  readonly state: WalkState;
  readonly now: Instant;
  /** The samples of the walk as it stands. */
  readonly risk: Risk | null;
  readonly first: AmendmentDraft;
  /** Enters the amendment; resolves once it is kept. */
  readonly onAmend: (changes: readonly Change[], reason: string) => Promise<void>;
  readonly onClose: () => void;
}

/**
 * A lead puts an amendment together and sees what it would come to before it is entered ([AMD3]). What makes something
 * grave that was not so before needs a second tap, with a reason.
 */
export function AmendPanel({ state, now, risk, first, onAmend, onClose }: AmendPanelProps) {
  const [wishes, setWishes] = useState(first.wishes);
  const [reason, setReason] = useState(first.reason);
  const changes = useMemo(() => wishes.flatMap((wish) => wish.changes), [wishes]);
  const { judged, isThorough, risk: then } = useJudged(state, changes);
  const ledger = judged?.effect?.ledger ?? state.ledger;
  const onWish = (wish: Wish) => setWishes((all) => [...all, wish]);
  const begun = useMemo(() => begunSteps(state.ledger, now), [state.ledger, now]);
  const isOpen = (step: StepId) => !begun.complete.has(step) && !begun.working.has(step);
  const texts = useShownTexts();
  const written = ledger.inForce.outline;
  const outline = useMemo(() => texts?.show(written, markedInText) ?? written, [texts, written]);
  const shared = { outline, written, isOpen, onWish };
  const nextStep = first.step ?? state.lanes.find(({ step }) => step !== null)?.step ?? null;
  return (
    <SidePanel title={words("amending/title")} onClose={onClose}>
      {wishes.length === 0 ? (
        <p className="hint">{words("amending/nothing-yet")}</p>
      ) : (
        <>
          <h3>{words("amending/chosen")}</h3>
          <ul className="plain-list amend-wishes">
            {wishes.map((wish, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: the same may be wished twice, and one is removed by its place.
              <li key={index}>
                {wish.says}
                <button
                  type="button"
                  className="plain-button"
                  aria-label={words("amending/remove", { what: wish.says })}
                  onClick={() => setWishes((all) => all.filter((_, at) => at !== index))}
                >
                  ×
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {judged?.effect && <EffectView effect={judged.effect} risk={{ before: risk, after: then }} />}
      {judged && (
        <Entering
          // A second tap is for what was seen at the first: with other changes it begins anew.
          key={wishes.length}
          judged={judged}
          isThorough={isThorough}
          reason={reason}
          onReason={setReason}
          onEnter={() => void onAmend(changes, reason.trim()).then(onClose)}
        />
      )}
      <Section title={words("amending/a-step")} isOpen={first.step !== null}>
        <StepWishes {...shared} first={nextStep} />
      </Section>
      <Section title={words("amending/a-task")}>
        <TaskWishes {...shared} />
      </Section>
      <Section title={words("amending/a-contingency")}>
        <ContingencyWishes ledger={ledger} outline={outline} at={now} onWish={onWish} />
      </Section>
      <Section title={words("amending/a-new-step")}>
        <NewStepWish {...shared} first={nextStep} pet={state.pet ?? NO_TIME} />
      </Section>
      <Section title={words("amending/a-window")}>
        <WindowWish {...shared} />
      </Section>
      <p className="hint">{words("amending/how")}</p>
      <p className="hint">{words("follow/advises")}</p>
    </SidePanel>
  );
}

function Section({
  title,
  isOpen = false,
  children,
}: {
  readonly title: string;
  readonly isOpen?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <details className="amend-section" open={isOpen || undefined}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}

/** The reason, and the button that enters the amendment; two taps where something grave comes with it. */
function Entering({
  judged: { effect, refusal },
  isThorough,
  reason,
  onReason,
  onEnter,
}: {
  readonly judged: JudgedAmendment;
  /** False while not everything was looked at: it is not entered before. */
  readonly isThorough: boolean;
  readonly reason: string;
  readonly onReason: (reason: string) => void;
  readonly onEnter: () => void;
}) {
  const [isWarned, setIsWarned] = useState(false);
  if (!effect)
    return (
      <p role="alert" className="amend-refused">
        {words("amending/refused", { why: refusal })}
      </p>
    );
  const { grave } = effect;
  const hasReason = reason.trim() !== "";
  const warns = isWarned && grave.length > 0;
  return (
    <div className="amend-enter">
      <label className="field">
        <span>{words("amending/reason")}</span>
        <textarea rows={2} value={reason} onChange={(event) => onReason(event.target.value)} />
      </label>
      {warns && (
        <div role="alert" className="amend-grave">
          <h4>{words("amending/grave")}</h4>
          <ul>
            {grave.map((one) => (
              <li key={inWords(one)}>{inWords(one)}</li>
            ))}
          </ul>
        </div>
      )}
      {!hasReason && <p className="hint">{words("amending/needs-reason")}</p>}
      <div className="panel-acts">
        {warns ? (
          <button type="button" className="plain-button" disabled={!hasReason} onClick={onEnter}>
            {words("amending/enter-anyway")}
          </button>
        ) : (
          <button
            type="button"
            className="main-button"
            disabled={!hasReason || !isThorough}
            onClick={() => (grave.length > 0 ? setIsWarned(true) : onEnter())}
          >
            {words("amending/enter")}
          </button>
        )}
      </div>
    </div>
  );
}

/** True for a walk whose plan can be amended: it is not closed. */
export const mayBeAmended = ({ phase }: Ledger): boolean => phase !== "closed";
