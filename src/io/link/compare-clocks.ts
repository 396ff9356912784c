import type { RoundTrip } from "../../core/link/index.ts";
import { clockOffsetOf, UnreachableError } from "../../core/link/index.ts";
import type { ClockOffset } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";

const TRIPS = 8;

/** After this long no further questions are asked, in ms: the answers so far must suffice. */
const LONG_ENOUGH = 10_000;

/** Asks another clock several times and resolves with its offset by the shortest round trip. Rejects when it never answered. */
export async function compareClocks(ask: () => Promise<Instant>, now: () => Instant): Promise<ClockOffset> {
  const trips: RoundTrip[] = [];
  const since = now();
  while (trips.length < TRIPS && now() - since < LONG_ENOUGH) {
    try {
      const sent = now();
      const said = await ask();
      trips.push({ sent, said, received: now() });
    } catch (error) {
      if (trips.length === 0) throw error;
      break;
    }
  }
  const offset = clockOffsetOf(trips);
  if (!offset) throw new UnreachableError(message("link/clock-was-set"));
  return offset;
}

/** The better of two comparisons: the later one, unless the earlier one was more exact and agrees with it. */
export function betterOf(earlier: ClockOffset | null, later: ClockOffset): ClockOffset {
  if (!earlier || later.error <= earlier.error) return later;
  return Math.abs(later.offset - earlier.offset) <= later.error + earlier.error ? earlier : later;
}
