import type { ClockOffset, RoundTrip } from "../../core/log/index.ts";
import { clockOffset, hubClockSchema } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { HubRequests } from "./hub-requests.ts";
import { ask } from "./hub-requests.ts";

/** Of so many round trips the shortest counts. */
const TRIPS = 8;

/** How far a hub's clock is ahead of this device's; rejects when the hub cannot be asked. */
export async function readHubClock(hub: HubRequests, now: () => Instant): Promise<ClockOffset | null> {
  const trips: RoundTrip[] = [];
  for (let trip = 0; trip < TRIPS; trip += 1) {
    const sent = now();
    const response = await ask(hub, "/api/clock");
    const received = now();
    const read = hubClockSchema.safeParse(await response.json());
    if (read.success) trips.push({ sent, received, said: read.data.now });
  }
  return clockOffset(trips);
}
