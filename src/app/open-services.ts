import "./no-eval.ts";
import { systemClock } from "../io/clock/index.ts";
import { openLinks } from "../io/link/index.ts";
import { openStore } from "../io/store/index.ts";
import type { Services } from "./session/index.ts";

/** Opens the store of this device and its links with hubs. Never rejects for a reason of the browser's. */
export async function openServices(): Promise<Services> {
  const store = await openStore({ now: systemClock });
  return { store, links: openLinks({ store, now: systemClock }), now: systemClock };
}
