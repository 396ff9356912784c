import type { Handover } from "../../core/review/index.ts";
import { between, clockText } from "../../core/units/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { callsOf, stepWords } from "../parts/index.ts";
import { TextsTurn } from "../texts/index.ts";
import { HandoverCrew } from "./handover-crew.tsx";
import { handoverLines } from "./handover-lines.ts";
import { HandoverSupplies } from "./handover-supplies.tsx";
import "./print.css";
import "./handover.css";

export interface HandoverSheetProps {
  readonly handover: Handover;
  /** The device from whose log it is made. */
  readonly device: string;
  /** Makes it anew, as of the present. */
  readonly onAgain: () => void;
  /** Goes back to the follow screen. */
  readonly onFollow: () => void;
  /** Goes to the paper procedure as the walk stands. */
  readonly onPaper: () => void;
}

/** How a walk stands, for somebody who takes over, on a screen and on paper ([REV4]). */
export function HandoverSheet({ handover, device, onAgain, onFollow, onPaper }: HandoverSheetProps) {
  const { ledger } = handover.state;
  const { procedure } = ledger.inForce.outline;
  const revision = procedure.revision
    ? words("print/revision", { revision: procedure.revision })
    : words("print/no-revision");
  const { entries, lastAt } = handover.log;
  return (
    <main className="print-sheet handover">
      <p className="print-tools">
        <button type="button" className="plain-button" onClick={onFollow}>
          {words("parts/follow")}
        </button>
        <button type="button" className="plain-button" onClick={onPaper}>
          {words("print/as-it-stands")}
        </button>
        <TextsTurn />
        <HelpButton screen="handover" />
        <button type="button" className="plain-button" onClick={onAgain}>
          {words("handover/again")}
        </button>
        <button type="button" className="main-button" onClick={() => window.print()}>
          {words("print/print")}
        </button>
      </p>
      <header>
        <p className="print-kind">{words("handover/kind")}</p>
        <h1>{procedure.title}</h1>
        <p className="print-identity">
          <b>{ledger.opened.walk}</b> · {revision}
        </p>
        <p>
          {words("handover/made", {
            at: handover.at,
            device,
            count: entries,
            last: lastAt ?? ledger.opened.at,
          })}
        </p>
        <p>
          <b>{inWords(standMessage(handover))}</b>{" "}
          {ledger.opened.mode === "rehearsal" && words("handover/rehearsal")}
        </p>
      </header>
      <Alerts handover={handover} />
      <Limits handover={handover} />
      <HandoverCrew handover={handover} />
      <Outstanding handover={handover} />
      <Otherwise handover={handover} />
      {handover.supplies.length > 0 && <HandoverSupplies handover={handover} />}
      <p className="print-remark">{words("handover/advises")}</p>
    </main>
  );
}

/** The phase of the walk, with the hold in force and its reason. */
function standMessage({ state, hold }: Handover): Message {
  const { phase, pet, ledger } = state;
  if (pet === null) return message("handover/stands-prepared");
  if (hold) {
    const since = between(ledger.petZero ?? ledger.opened.at, hold.from);
    const { reason } = hold;
    return reason
      ? message("handover/stands-held", { since, pet, reason })
      : message("handover/stands-held-no-reason", { since, pet });
  }
  return message(phase === "closed" ? "handover/stands-closed" : "handover/stands-running", { pet });
}

function Alerts({ handover: { alerts, state } }: { readonly handover: Handover }) {
  const { outline } = state.ledger.inForce;
  const seenWords = (seen: (typeof alerts)[number]["seen"]) => {
    if (seen === null) return words("handover/not-seen");
    if (seen.actor === null) return words("handover/seen-by-somebody");
    return words("handover/seen-by", {
      who: outline.crew.find(({ id }) => id === seen.actor)?.call ?? seen.actor,
    });
  };
  return (
    <section className="print-keep">
      <h2>{words("handover/alerts")}</h2>
      {alerts.length === 0 ? (
        <p>{words("handover/no-alerts")}</p>
      ) : (
        <ul className="handover-list">
          {alerts.map(({ alert, level, text, since, seen }) => (
            <li key={`${alert} ${level}`} data-level={level}>
              <b>{words(`handover/level-${level}`)}:</b> {inWords(text)}{" "}
              <span className="print-remark">
                {words("handover/since", { since })} · {seenWords(seen)}
              </span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Limits({ handover }: { readonly handover: Handover }) {
  const { finish, margin, turnBack, state } = handover;
  const { outline } = state.ledger.inForce;
  const none = words("handover/not-known");
  return (
    <section className="print-keep">
      <h2>{words("handover/limits")}</h2>
      <dl className="print-facts">
        <dt>{words("handover/finish-by-forecast")}</dt>
        <dd>{finish === null ? none : words("handover/at", { at: finish })}</dd>
        <dt>{words("handover/margin-by-forecast")}</dt>
        <dd>
          {outline.procedure.limits.elapsed === undefined
            ? words("print/no-limit-set")
            : margin === null
              ? none
              : words(margin < 0 ? "follow/over" : "follow/margin", { time: margin })}
        </dd>
        <dt>{words("handover/turn-back")}</dt>
        <dd>{turnBack === null ? none : inWords(turnBackMessage(handover, turnBack))}</dd>
      </dl>
    </section>
  );
}

function turnBackMessage(
  { state }: Handover,
  { at, because, supply: limiting }: NonNullable<Handover["turnBack"]>,
): Message {
  const { outline } = state.ledger.inForce;
  const supply = limiting?.supply;
  const when =
    because === "limit" || !supply
      ? message("handover/turn-back-limit", { at })
      : message("handover/turn-back-supply", {
          at,
          crew: callsOf(outline, [supply.crew]),
          supply: supply.label ?? supply.id,
        });
  return state.pet !== null && at <= state.pet ? message("handover/turn-back-passed", { when }) : when;
}

function Outstanding({ handover: { outstanding, state } }: { readonly handover: Handover }) {
  const { outline } = state.ledger.inForce;
  return (
    <section>
      <h2>{words("handover/outstanding")}</h2>
      {outstanding.length === 0 ? (
        <p>{words("handover/nothing-outstanding")}</p>
      ) : (
        <ul className="handover-list">
          {outstanding.map(({ kind, step, record, watch, text, since }) => (
            <li key={`${kind} ${step} ${record} ${watch} ${since}`}>
              <span className="print-box" /> {step !== null && <b>{stepWords(outline, step)}</b>}{" "}
              {inWords(text)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Otherwise({ handover }: { readonly handover: Handover }) {
  const { ledger } = handover.state;
  const petZero = ledger.petZero ?? ledger.opened.at;
  const lines = handoverLines(handover);
  return (
    <section>
      <h2>{words("handover/otherwise")}</h2>
      {lines.length === 0 ? (
        <p>{words("handover/nothing-otherwise")}</p>
      ) : (
        <ul className="handover-list">
          {lines.map(({ at, step, text }) => (
            <li key={`${at} ${step} ${inWords(text)}`}>
              {clockText(between(petZero, at))}{" "}
              {step !== null && <b>{stepWords(ledger.inForce.outline, step)}</b>} {inWords(text)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
