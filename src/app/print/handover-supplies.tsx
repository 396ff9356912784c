import type { Handover } from "../../core/review/index.ts";
import type { SupplyState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { callsOf } from "../parts/index.ts";

/** Each supply with its last reading, how old that is, and when its redline is met by the forecast. */
export function HandoverSupplies({ handover: { supplies, state } }: { readonly handover: Handover }) {
  const { outline } = state.ledger.inForce;
  return (
    <section className="print-keep">
      <h2>{words("handover/supplies")}</h2>
      <table className="print-plain">
        <thead>
          <tr>
            <th scope="col">{words("print/supply-crew")}</th>
            <th scope="col">{words("handover/column-supply")}</th>
            <th scope="col">{words("handover/column-read")}</th>
            <th scope="col">{words("handover/column-redline")}</th>
          </tr>
        </thead>
        <tbody>
          {supplies.map(({ supply, forecast }) => (
            <tr key={`${supply.crew} ${supply.id}`}>
              <td>{callsOf(outline, [supply.crew])}</td>
              <th scope="row">{supply.label ?? supply.id}</th>
              <td>{readWords(supply.unit, forecast)}</td>
              <td>
                {forecast.redlineAt === null
                  ? words("handover/no-redline")
                  : words("handover/redline-at", { at: forecast.redlineAt })}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function readWords(unit: string, { last, age }: SupplyState["forecast"]): string {
  return last === null || age === null
    ? words("handover/never-read")
    : words("handover/read", { value: { value: last.value, unit }, age });
}
