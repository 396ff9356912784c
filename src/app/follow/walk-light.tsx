import type { RecordedLight } from "../../core/plan/index.ts";
import type { Procedure } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { LightField, useProcedureLight } from "../light/index.ts";

interface WalkLightProps {
  readonly procedure: Procedure;
  /** The instant of PET 0, or of the present moment while it is not known. */
  readonly at: Instant;
  /** What the walk goes by; `null` for nothing. */
  readonly inForce: RecordedLight | null;
  /** Enters that the walk goes by another source. */
  readonly onUse: (light: RecordedLight) => void;
}

/**
 * Lets a lead say where day and night of the walk come from, also in mid-walk: what is chosen on this device is shown
 * first, and counts for every device once it is entered.
 */
export function WalkLight({ procedure, at, inForce, onUse }: WalkLightProps) {
  const source = useProcedureLight(procedure.id);
  const { choice } = source;
  const isInForce = choice !== null && JSON.stringify(choice) === JSON.stringify(inForce);
  return (
    <details className="amend-section">
      <summary>{words("panel/light-of-walk")}</summary>
      <p className="hint">{words("panel/light-how")}</p>
      <LightField procedure={procedure} at={at} source={source} />
      {choice !== null && (
        <div className="panel-acts">
          <button type="button" className="main-button" disabled={isInForce} onClick={() => onUse(choice)}>
            {words("panel/light-use")}
          </button>
        </div>
      )}
      {isInForce && <p className="hint">{words("panel/light-in-force")}</p>}
    </details>
  );
}
