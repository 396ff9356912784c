import { heldByMessage } from "../../core/course/index.ts";
import type { Handover, HandoverLane } from "../../core/review/index.ts";
import type { StepId } from "../../core/units/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { stepWords, TABLE_ROLES } from "../parts/index.ts";
import { placeName } from "./sheet-words.ts";
import { StrandMarks } from "./strand-marks.tsx";

/** Each crew member: where, what now, what was done last, and what begins next by the forecast. */
export function HandoverCrew({ handover }: { readonly handover: Handover }) {
  const { outline } = handover.state.ledger.inForce;
  const [state, last, then] = [
    words("handover/column-state"),
    words("handover/column-last"),
    words("handover/column-next"),
  ];
  return (
    <section>
      <h2>{words("handover/crew")}</h2>
      <table {...TABLE_ROLES.table} className="print-plain handover-crew rows-on-phone">
        <thead {...TABLE_ROLES.rows}>
          <tr {...TABLE_ROLES.row}>
            {[words("print/call-sign"), state, last, then].map((column) => (
              <th key={column} {...TABLE_ROLES.head} scope="col">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody {...TABLE_ROLES.rows}>
          {handover.lanes.map((one) => (
            <tr key={one.lane.crew} {...TABLE_ROLES.row}>
              <th {...TABLE_ROLES.rowHead} scope="row">
                <StrandMarks outline={outline} by={[one.lane.crew]} />
                <span className="print-remark">{placeName(outline, one.lane.place ?? undefined)}</span>
              </th>
              <td {...TABLE_ROLES.cell} data-column={state}>
                {nowWords(handover, one)}
              </td>
              <td {...TABLE_ROLES.cell} data-column={last}>
                {one.last === null
                  ? words("handover/nothing-done")
                  : words("handover/step-at", { step: nameOf(handover, one.last.step), at: one.last.finish })}
              </td>
              <td {...TABLE_ROLES.cell} data-column={then}>
                <Next handover={handover} next={one.next} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const nameOf = ({ state }: Handover, step: StepId): string => stepWords(state.ledger.inForce.outline, step);

function nowWords(handover: Handover, { lane, inWork }: HandoverLane): string {
  const { ledger } = handover.state;
  if (inWork !== null)
    return words("handover/works", { step: nameOf(handover, inWork.step), since: inWork.start });
  if (lane.status === "ready") return words("follow/ready");
  if (lane.status === "finished") return words("follow/finished");
  if (handover.state.phase === "closed") return words("follow/stopped");
  const heldBy = heldByMessage(ledger.inForce.outline, lane.waitingOn, ledger.petZero);
  return inWords(heldBy ?? message("follow/waits-for-start"));
}

function Next({ handover, next }: { readonly handover: Handover; readonly next: HandoverLane["next"] }) {
  if (next === null) return words("handover/no-forecast");
  if (next.length === 0) return words("handover/nothing-begins");
  return (
    <ul>
      {next.map(({ step, start }) => (
        <li key={step}>{words("handover/step-from", { from: start, step: nameOf(handover, step) })}</li>
      ))}
    </ul>
  );
}
