import type { Finding, Outline, Supply, Watch } from "../../core/procedure/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { readingsOf } from "../../core/walk/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { callsOf, quantityWords, Worded } from "../parts/index.ts";
import { SiteFigure } from "../worksite/index.ts";
import { ItemChecklist } from "./item-checklist.tsx";
import type { PrintedPlan } from "./printed-plan.ts";
import { stationWords, stepName } from "./sheet-words.ts";
import { StrandMarks } from "./strand-marks.tsx";
import { watchDue } from "./watch-due.ts";

interface FrontMatterProps {
  readonly outline: Outline;
  readonly plan: PrintedPlan;
  readonly findings: readonly Finding[];
  /** The walk as it stands; `null` on a sheet that no walk has begun to fill. */
  readonly state: WalkState | null;
}

/** The part before the steps: crew, limits, map, findings, items, supplies, watches. */
export function FrontMatter({ outline, plan, findings, state }: FrontMatterProps) {
  const { items, supplies, watches } = outline.procedure;
  return (
    <>
      <CrewTable outline={outline} />
      <Limits outline={outline} plan={plan} />
      {plan.course && <SiteFigure course={plan.course} />}
      {findings.length > 0 && (
        <section>
          <h2>{words("print/findings")}</h2>
          <ul className="print-findings">
            {findings.map(({ level, code, pointer, message: said }) => (
              <li key={`${code} ${pointer} ${inWords(said)}`}>
                <b>{words(`print/level-${level}`)}</b> {inWords(said)}
              </li>
            ))}
          </ul>
        </section>
      )}
      {items.length > 0 && (
        <section>
          <h2>{words("print/items", { count: items.length })}</h2>
          <ItemChecklist outline={outline} />
        </section>
      )}
      {supplies.length > 0 && <SupplyTable outline={outline} state={state} />}
      {watches.length > 0 && (
        <section className="print-keep">
          <h2>{words("print/watches")}</h2>
          <ul className="print-watches">
            {watches.map((watch) => (
              <li key={watch.id}>
                <Worded message={watchMessage(outline, watch)} />
                <p className="print-due">
                  {watchDue(plan, watch).map((pet) => (
                    <span key={pet}>
                      <span className="print-box" /> {hourMinuteText(pet)}
                    </span>
                  ))}
                </p>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function watchMessage(outline: Outline, { by, do: action, every, from, until }: Watch): Message {
  const watch = { crew: callsOf(outline, by), do: action, time: every };
  if (from && until)
    return message("print/watch-from-until", {
      ...watch,
      from: stepName(outline, from),
      until: stepName(outline, until),
    });
  if (from) return message("print/watch-from", { ...watch, from: stepName(outline, from) });
  return until
    ? message("print/watch-until", { ...watch, until: stepName(outline, until) })
    : message("print/watch", watch);
}

/** Blanks to be filled in by hand. */
const BLANKS = {
  blank: () => <span className="print-blank" />,
  "wide-blank": () => <span className="print-blank print-blank-wide" />,
};

function CrewTable({ outline }: { readonly outline: Outline }) {
  return (
    <section className="print-keep">
      <h2>{words("print/crew")}</h2>
      <table className="print-plain">
        <thead>
          <tr>
            <th scope="col">{words("print/call-sign")}</th>
            <th scope="col">{words("print/where")}</th>
            <th scope="col">{words("print/name")}</th>
          </tr>
        </thead>
        <tbody>
          {outline.crew.map(({ id }) => (
            <tr key={id}>
              <th scope="row">
                <StrandMarks outline={outline} by={[id]} />
              </th>
              <td>{stationWords(outline, id)}</td>
              <td>
                <span className="print-blank print-blank-wide" />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="print-line print-signs">
        {(["print/date", "print/pet-zero", "print/followed-by"] as const).map((key) => (
          <span key={key}>
            <Worded message={message(key)} marks={BLANKS} />
          </span>
        ))}
      </p>
    </section>
  );
}

function Limits({ outline, plan }: { readonly outline: Outline; readonly plan: PrintedPlan }) {
  const limit = outline.procedure.limits.elapsed;
  const listed = outline.procedure.windows.flatMap((window) => {
    const spans = plan.windows.get(window.id);
    return spans && spans.length > 0 ? [{ window, spans }] : [];
  });
  return (
    <section className="print-keep">
      <h2>{words("print/times-and-limits")}</h2>
      <dl className="print-facts">
        <dt>{words("print/closed-by")}</dt>
        <dd>{limit === undefined ? words("print/no-limit-set") : words("print/at-pet", { pet: limit })}</dd>
        <dt>{words("print/planned-finish")}</dt>
        <dd>{finishWords(plan)}</dd>
        {listed.map(({ window, spans }) => (
          <div key={window.id} className="print-fact-pair">
            <dt>{window.label ?? window.id}</dt>
            <dd>
              {spans
                .map(({ from, to }) => `${hourMinuteText(from)}–${hourMinuteText(to)}`)
                .join(words("figures/between"))}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function finishWords({ course, margin }: PrintedPlan): string {
  if (!course) return words("print/not-planned");
  const pet = course.finish;
  if (margin === null) return words("print/finish-at", { pet });
  return words(margin >= 0 ? "print/before-limit" : "print/over-limit", { pet, time: margin });
}

/** How many readings after PET 0 a line has room for. */
const READINGS = 4;

/**
 * What a line of the readings is filled in with: the last reading up to PET 0, then the latest ones after it. Empty where
 * there is none, to be filled in by hand.
 */
function filledReadings(state: WalkState | null, supply: Supply): readonly string[] {
  const readings = state ? readingsOf(state.ledger, supply) : [];
  const before = readings.findLast(({ at }) => at <= 0);
  const later = readings.filter(({ at }) => at > 0).slice(-READINGS);
  return [
    before ? words("print/reading-before", { value: before.value }) : "",
    ...Array.from({ length: READINGS }, (_, place) => {
      const reading = later[place];
      return reading ? words("print/reading", { at: reading.at, value: reading.value }) : "";
    }),
  ];
}

function SupplyTable({ outline, state }: { readonly outline: Outline; readonly state: WalkState | null }) {
  const { supplies } = outline.procedure;
  return (
    <section className="print-keep">
      <h2>{words("print/supplies")}</h2>
      <table className="print-plain">
        <thead>
          <tr>
            <th scope="col">{words("print/supply-crew")}</th>
            <th scope="col">{words("print/supply")}</th>
            <th scope="col">{words("print/full")}</th>
            <th scope="col">{words("print/redline")}</th>
            <th scope="col">{words("print/per-hour")}</th>
            <th scope="col">{words("print/at-pet-zero")}</th>
            <th scope="col" colSpan={4}>
              {words("print/readings")}
            </th>
          </tr>
        </thead>
        <tbody>
          {supplies.map((supply) => {
            const { crew, id, label, unit, full, redline, perHour } = supply;
            const filled = filledReadings(state, supply);
            return (
              <tr key={`${crew} ${id}`}>
                <td>{callsOf(outline, [crew])}</td>
                <th scope="row">{label ?? id}</th>
                <td>{quantityWords({ value: full, unit })}</td>
                <td>
                  <b>{quantityWords({ value: redline, unit, limit: "min" })}</b>
                </td>
                <td>{quantityWords({ value: perHour, unit, isDifference: true })}</td>
                {["zero", "first", "second", "third", "fourth"].map((reading, place) => (
                  <td key={reading}>
                    <span className="print-blank print-blank-time">{filled[place]}</span>
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
