import { HubClient } from "../../core/link/index.ts";
import type { LinkRow } from "../store/index.ts";
import type { FetchHubParts } from "./fetch-hub.ts";
import { fetchHub, TABLET_MANNER } from "./fetch-hub.ts";

/** Which hubs this page can ask, and how. */
export interface HubReach {
  /** The hub that serves the page; `null` in a native shell, which may ask any hub and says who it is by tokens. */
  readonly home: string | null;
  /** The hub at an origin, asked with a token or, without one, as the browser's cookie says. */
  readonly at: (origin: string, token?: string | null) => HubClient;
}

/** What asking hubs takes. `home`: see {@link HubReach}. */
export type HubReachParts = Pick<FetchHubParts, "fetch" | "wait"> & Pick<HubReach, "home">;

/** The hubs that a page can ask. */
export function hubReach({ home, fetch, wait }: HubReachParts): HubReach {
  return {
    home,
    at: (origin, token = null) =>
      new HubClient({ ask: fetchHub({ fetch, origin, token, wait }), manner: TABLET_MANNER }),
  };
}

/** Whether the hub of a link can be asked from here: a browser has cookies of the one that serves its page alone. */
export function isInReach({ home }: HubReach, { origin }: Pick<LinkRow, "origin">): boolean {
  return home === null || origin === home;
}

/** The hub of a link. */
export function hubOf(reach: HubReach, { origin, token }: Pick<LinkRow, "origin" | "token">): HubClient {
  return reach.at(origin, token);
}
