import type { Plan } from "../../core/plan/index.ts";
import type { Finding, Outline } from "../../core/procedure/index.ts";
import { hourMinuteText, lengthText } from "../../core/units/index.ts";
import { callsOf, unitText } from "../parts/index.ts";
import { ItemChecklist } from "./item-checklist.tsx";
import { stationWords, stepName } from "./sheet-words.ts";
import { StrandMarks } from "./strand-marks.tsx";
import { watchDue } from "./watch-due.ts";

interface FrontMatterProps {
  readonly outline: Outline;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
}

/** What comes before the steps: crew, limits, findings, items, supplies, watches. */
export function FrontMatter({ outline, plan, findings }: FrontMatterProps) {
  const { items, supplies, watches } = outline.procedure;
  return (
    <>
      <CrewTable outline={outline} />
      <Limits outline={outline} plan={plan} />
      {findings.length > 0 && (
        <section>
          <h2>Findings when printed</h2>
          <ul className="print-findings">
            {findings.map(({ level, code, pointer, message }) => (
              <li key={`${code} ${pointer} ${message}`}>
                <b>{level}:</b> {message}
              </li>
            ))}
          </ul>
        </section>
      )}
      {items.length > 0 && (
        <section>
          <h2>Items: {items.length} to count</h2>
          <ItemChecklist outline={outline} />
        </section>
      )}
      {supplies.length > 0 && <SupplyTable outline={outline} />}
      {watches.length > 0 && (
        <section className="print-keep">
          <h2>Watches</h2>
          <ul className="print-watches">
            {watches.map((watch) => (
              <li key={watch.id}>
                <b>{callsOf(outline, watch.by)}:</b> {watch.do}, every {lengthText(watch.every)}
                {watch.from && `, from ${stepName(outline, watch.from)}`}
                {watch.until && ` until ${stepName(outline, watch.until)}`}
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

function CrewTable({ outline }: { readonly outline: Outline }) {
  return (
    <section className="print-keep">
      <h2>Crew</h2>
      <table className="print-plain">
        <thead>
          <tr>
            <th scope="col">Call sign</th>
            <th scope="col">Where</th>
            <th scope="col">Name</th>
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
        <span>
          Date <span className="print-blank" />
        </span>
        <span>
          PET 0 at <span className="print-blank" /> UTC
        </span>
        <span>
          Followed by <span className="print-blank print-blank-wide" />
        </span>
      </p>
    </section>
  );
}

function Limits({ outline, plan }: { readonly outline: Outline; readonly plan: Plan }) {
  const limit = outline.procedure.limits.elapsed;
  const listed = outline.procedure.windows.flatMap((window) => {
    const spans = plan.windows.get(window.id);
    return spans && spans.length > 0 ? [{ window, spans }] : [];
  });
  return (
    <section className="print-keep">
      <h2>Times and limits</h2>
      <dl className="print-facts">
        <dt>Closed by</dt>
        <dd>{limit === undefined ? "no limit set" : `PET ${hourMinuteText(limit)}`}</dd>
        <dt>Planned finish</dt>
        <dd>
          {plan.timeline ? `PET ${hourMinuteText(plan.timeline.course.finish)}` : "not planned"}
          {plan.margin !== null &&
            (plan.margin >= 0
              ? `, ${lengthText(plan.margin)} before the limit`
              : `, ${lengthText(plan.margin)} over the limit`)}
        </dd>
        {listed.map(({ window, spans }) => (
          <div key={window.id} className="print-fact-pair">
            <dt>{window.label ?? window.id}</dt>
            <dd>{spans.map(({ from, to }) => `${hourMinuteText(from)}–${hourMinuteText(to)}`).join(", ")}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function SupplyTable({ outline }: { readonly outline: Outline }) {
  const { supplies } = outline.procedure;
  return (
    <section className="print-keep">
      <h2>Supplies</h2>
      <table className="print-plain">
        <thead>
          <tr>
            <th scope="col">Crew</th>
            <th scope="col">Supply</th>
            <th scope="col">Full</th>
            <th scope="col">Redline</th>
            <th scope="col">Use per hour</th>
            <th scope="col">At PET 0</th>
            <th scope="col" colSpan={4}>
              Readings (PET and value)
            </th>
          </tr>
        </thead>
        <tbody>
          {supplies.map(({ crew, id, label, unit, full, redline, perHour }) => (
            <tr key={`${crew} ${id}`}>
              <td>{callsOf(outline, [crew])}</td>
              <th scope="row">{label ?? id}</th>
              <td>
                {full} {unitText(unit)}
              </td>
              <td>
                <b>
                  {redline} {unitText(unit)}
                </b>
              </td>
              <td>
                {perHour} {unitText(unit)}
              </td>
              {["zero", "first", "second", "third", "fourth"].map((reading) => (
                <td key={reading}>
                  <span className="print-blank print-blank-time" />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
