import type { Plan } from "../plan/index.ts";
import { lightFrom } from "../plan/index.ts";
import type { Ledger } from "./ledger.ts";

/** From when on the procedure in force is planned, and by which light. */
export type LightInForce = Pick<Plan, "start" | "light">;

/**
 * Returns the start and the light by which what is in force is checked: by the source that is followed, which may have
 * been chosen in mid-walk. The light is `null` without a start or a source. The plan of record keeps those it was made with.
 */
export function lightInForce({
  opened,
  petZero,
  light,
}: Pick<Ledger, "opened" | "petZero" | "light">): LightInForce {
  const start = opened.plannedStart ?? petZero;
  return { start, light: light && start !== null ? lightFrom(light, start) : null };
}
