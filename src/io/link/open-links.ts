import type { Instant } from "../../core/units/index.ts";
import { isNativeShell } from "../device/index.ts";
import type { DeviceStore } from "../store/index.ts";
import { DeviceLinks } from "./device-links.ts";
import type { Fetch } from "./fetch-hub.ts";
import { hubReach } from "./hub-reach.ts";
import type { Locks } from "./leadership.ts";
import type { LinkKeeper } from "./link-keeper.ts";
import type { PageParts } from "./page-signals.ts";
import type { Channel } from "./status-channel.ts";
import { waited } from "./timers.ts";

/** What the links of a device are opened with. What is not given is taken from the platform, where it has it. */
export interface OpenLinksParts {
  readonly store: DeviceStore;
  /** The device's clock. */
  readonly now: () => Instant;
  /** The hub that serves the page, scheme, host and port; `null` in a native shell. */
  readonly home?: string | null;
  readonly fetch?: Fetch;
  readonly random?: () => number;
  readonly wait?: (ms: number, signal: AbortSignal) => Promise<void>;
  /** `null` for none: each page then links on its own. */
  readonly locks?: Locks | null;
  /** `null` for none: a page then knows only of what it links itself. */
  readonly channel?: Channel | null;
  readonly page?: PageParts | null;
}

const CHANNEL = "tetherline-links";

/** Keeps the walks of this device that were joined linked with the hub, for as long as the page is open. */
export function openLinks(parts: OpenLinksParts): LinkKeeper {
  const { store, now, fetch = (address, init) => globalThis.fetch(address, init) } = parts;
  const { random = Math.random, wait = waited } = parts;
  const { home = isNativeShell() ? null : window.location.origin } = parts;
  const { page = typeof window === "undefined" ? null : window } = parts;
  const { locks = globalThis.navigator?.locks ?? null } = parts;
  const { channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel(CHANNEL) } = parts;
  return new DeviceLinks({
    store,
    reach: hubReach({ home, fetch, wait }),
    now,
    time: { now, random, wait },
    locks,
    channel,
    page,
  });
}
