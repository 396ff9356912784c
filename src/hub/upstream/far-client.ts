import type { AskHub, Cursor, FarSide, HubManner, Joined, Prover } from "../../core/link/index.ts";
import { HubClient, hubFarSide, pushInParts } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import { message } from "../../words/index.ts";

/** What a link asks of another hub. Every promise rejects as those of a {@link FarSide} do. */
export interface FarClient {
  /** All walks that there are, for its owner's code. */
  walks(code: string, signal: AbortSignal): Promise<readonly WalkId[]>;
  /** Asks to be let into a walk, or with `null` into the one of the invitation. */
  join(code: string, walk: WalkId | null, who: RelayName, signal: AbortSignal): Promise<Joined>;
  /** A walk, for a token of it. */
  side(walk: WalkId, token: string): FarSide;
  /** Says how far this hub has read. */
  seen(walk: WalkId, token: string, cursor: Cursor, signal: AbortSignal): Promise<void>;
}

/** How this hub is called over there. */
export interface RelayName {
  readonly device: string;
  readonly name: string;
  readonly prover: Prover;
}

/** Statuses that say that what was sent is wrong, and will be wrong again. */
const UNACCEPTABLE: ReadonlySet<number> = new Set([400, 413, 415, 422]);

const NO_HUB = message("far/unknown-hub");
const LOST = message("far/connection-lost");

/** How a hub speaks of another one on its console. */
const CONSOLE_MANNER: HubManner = {
  failed: (status) => message("far/answered", { status }),
  brokenOff: LOST,
  notJson: NO_HUB,
  unknown: NO_HUB,
  noStream: NO_HUB,
  streamLost: LOST,
  isRefusal: (status) => UNACCEPTABLE.has(status),
};

/** Another hub, asked over the network in the role of a relay. */
export function farClient(ask: AskHub): FarClient {
  const hub = new HubClient({ ask, manner: CONSOLE_MANNER });
  // A hub of an earlier version has nothing at the address of challenges.
  const isRefusal: HubManner["isRefusal"] = (status) => status === 404 || UNACCEPTABLE.has(status);
  const joining = new HubClient({ ask, manner: { ...CONSOLE_MANNER, isRefusal } });
  return {
    walks: async (credential, signal) => (await hub.walks({ credential, signal })).map(({ walk }) => walk),
    join: (code, walk, { prover, ...who }, signal) =>
      joining.join(
        { code, ...who, role: "relay", use: "bearer", ...(walk === null ? {} : { walk }) },
        { prover, signal },
      ),
    side: (walk, credential) => pushInParts(hubFarSide(hub, walk, { credential })),
    seen: (walk, credential, cursor, signal) => hub.present(walk, cursor, { credential, signal }),
  };
}
