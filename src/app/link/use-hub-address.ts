import { useState } from "react";
import type { JoinOutcome } from "../../io/link/index.ts";
import { message } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { type HubAddress, lastHub, readHubAddress } from "./hub-address.ts";

/** What a form needs to ask a hub that has to be named first. */
export interface HubAsked {
  /** Whether the form has to ask which hub. */
  readonly isNeeded: boolean;
  readonly address: string;
  readonly setAddress: (address: string) => void;
  /** The address as read; `null` for none. */
  readonly read: HubAddress | null;
  /** Asks the named hub, or the one that serves the page, and keeps the address once it let this device in. */
  readonly asking: (ask: (hub: { readonly hub?: string }) => Promise<JoinOutcome>) => Promise<JoinOutcome>;
}

/** The hub that a form asks: where none serves the page, the one whose address is typed, at first the one joined last. */
export function useHubAddress(): HubAsked {
  const { links } = useServices();
  const isNeeded = links.home === null;
  const [address, setAddress] = useState(lastHub.current);
  const read = isNeeded ? readHubAddress(address) : null;
  const asking: HubAsked["asking"] = async (ask) => {
    if (!isNeeded) return ask({});
    if (!read) return { kind: "refused", words: message("link/not-an-address") };
    const outcome = await ask({ hub: read.origin });
    if (outcome.kind === "joined") lastHub.choose(read.origin);
    return outcome;
  };
  return { isNeeded, address, setAddress, read, asking };
}
