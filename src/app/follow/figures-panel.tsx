import { lightMessage } from "../../core/light/index.ts";
import type { Outcome, RecordedLight, Risk } from "../../core/plan/index.ts";
import { lightFrom, outlookOf } from "../../core/plan/index.ts";
import type { Procedure } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { turnBackState } from "../../core/walk/index.ts";
import { contactMessage } from "../../core/window/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { Fact } from "../parts/index.ts";
import type { FigureGap } from "./figure-gaps.ts";
import { figureGaps } from "./figure-gaps.ts";
import type { NextChange } from "./next-change.ts";
import { TurnBackWords } from "./turn-back-words.tsx";
import { WalkLight } from "./walk-light.tsx";

interface FiguresPanelProps {
  readonly state: WalkState;
  readonly now: Instant;
  readonly risk: Risk | null;
  readonly change: NextChange | null;
  /** Opens the panel in which readings are entered; `null` for a reader who may not enter anything. */
  readonly onReadings: (() => void) | null;
  /** Enters where day and night come from; `null` for whoever may not. */
  readonly onLight: ((light: RecordedLight) => void) | null;
  readonly onClose: () => void;
}

/** The figures of the bar in full: each with the others of its kind, and with what it comes from. */
export function FiguresPanel({ state, now, risk, change, onReadings, onLight, onClose }: FiguresPanelProps) {
  const { ledger, plan, forecast, pet } = state;
  const { light: source } = ledger;
  const light = source && lightFrom(source, ledger.petZero ?? ledger.opened.plannedStart ?? now);
  const limits = turnBackState(state);
  const { procedure } = ledger.inForce.outline;
  const limit = procedure.limits.elapsed;
  const contact = light && contactMessage(procedure, light);
  const outlook = outlookOf(
    limit ?? null,
    plan.timeline?.course.finish ?? null,
    forecast?.finish ?? null,
    risk,
  );
  return (
    <SidePanel title={words("panel/figures")} onClose={onClose}>
      <h3>{words("panel/clock")}</h3>
      <dl className="facts">
        <Fact name={words("follow/utc")}>{words("figures/utc", { at: now })}</Fact>
        {ledger.petZero !== null && (
          <Fact name={words("panel/pet-zero")}>{words("figures/utc", { at: ledger.petZero })}</Fact>
        )}
      </dl>
      <h3>{words("panel/finish-and-margin")}</h3>
      <table className="figures">
        <thead>
          <tr>
            <th scope="col">{words("panel/according-to")}</th>
            <th scope="col">{words("follow/finish")}</th>
            <th scope="col">{words("panel/margin")}</th>
          </tr>
        </thead>
        <tbody>
          <FinishRow name={words("panel/by-plan")} outcome={outlook.planned} />
          <FinishRow name={words("panel/by-likely")} outcome={outlook.forecast} />
          {outlook.half && <FinishRow name={words("panel/by-half")} outcome={outlook.half} />}
          {outlook.nineInTen && <FinishRow name={words("panel/by-nine")} outcome={outlook.nineInTen} />}
        </tbody>
      </table>
      <p className="hint">
        {limit === undefined ? words("panel/no-limit") : words("panel/limit-is", { limit })}{" "}
        {risk && words("panel/sampled", { samples: risk.samples })}
      </p>
      {pet !== null && (
        <>
          <h3>{words("panel/turn-back")}</h3>
          <TurnBackWords state={state} turn={limits} />
        </>
      )}
      {change && (
        <>
          <h3>{words("panel/windows-title")}</h3>
          <p>{words("panel/window-next", { window: change.title, when: change.words })}</p>
          {light && <p className="hint">{inWords(lightMessage(light))}</p>}
          {contact && <p className="hint">{inWords(contact)}</p>}
        </>
      )}
      {onLight && goesByLight(procedure) && (
        <WalkLight
          procedure={procedure}
          at={ledger.petZero ?? ledger.opened.plannedStart ?? now}
          inForce={source}
          onUse={onLight}
        />
      )}
      <GapList gaps={figureGaps(state, limits)} onReadings={onReadings} />
      <p className="hint">{words("follow/advises")}</p>
    </SidePanel>
  );
}

/** True for a procedure with windows whose times come from the light or from contact. */
const goesByLight = ({ windows }: Procedure) => windows.some(({ spans }) => spans === undefined);

/** What is not known, each with the way to set it or why it cannot be set. */
function GapList({
  gaps,
  onReadings,
}: {
  readonly gaps: readonly FigureGap[];
  readonly onReadings: (() => void) | null;
}) {
  if (gaps.length === 0) return null;
  return (
    <>
      <h3>{words("gap/title")}</h3>
      <ul className="plain-list">
        {gaps.map(({ of, text, isReading }) => (
          <li key={`${of} ${text.key}`} className="figure-gap">
            <p>{inWords(text)}</p>
            {isReading && onReadings && (
              <button type="button" className="plain-button" onClick={onReadings}>
                {words("gap/enter-reading")}
              </button>
            )}
            {isReading && !onReadings && <p className="hint">{words("gap/marker-enters")}</p>}
          </li>
        ))}
      </ul>
    </>
  );
}

function FinishRow({
  name,
  outcome: { finish, margin },
}: {
  readonly name: string;
  readonly outcome: Outcome;
}) {
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>{finish === null ? words("panel/none") : words("panel/at", { at: finish })}</td>
      <td>
        {margin === null
          ? words("panel/none")
          : words(margin < 0 ? "follow/over" : "follow/margin", { time: margin })}
      </td>
    </tr>
  );
}
