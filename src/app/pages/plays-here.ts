import { deviceOf, mayLead, maySurprise } from "../../core/log/index.ts";
import type { Folded } from "../../core/walk/index.ts";
import type { LinkStatus } from "../../io/link/index.ts";

/** True when the crew of a rehearsal is simulated on this device: where it was opened, or where nobody else follows. */
export function playsHere({ entries }: Folded, { kind, device }: LinkStatus): boolean {
  const opening = entries.find(({ read }) => read.fact?.name === "walk.opened");
  return kind === "alone" || opening === undefined || deviceOf(opening.wire.source) === device;
}

/**
 * True where surprises may be fired in a rehearsal: on the tablet of a trainer, and on the one that plays the crew, which has them
 * anyway, unless it only marks or watches ([TRN2]).
 */
export function mayFire(folded: Folded, link: LinkStatus): boolean {
  const { role } = link;
  if (folded.ledger?.opened.mode !== "rehearsal") return false;
  if (role !== null && maySurprise(role)) return true;
  return playsHere(folded, link) && (role === null || mayLead(role));
}
