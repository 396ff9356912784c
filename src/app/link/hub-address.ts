import { StoredChoice } from "../session/index.ts";

/** Where a hub is, and the code of the link when one was given. */
export interface HubAddress {
  /** Scheme, host and port. */
  readonly origin: string;
  readonly code: string | null;
}

/** The hub that was joined last from this device, where no hub serves the app. */
export const lastHub = new StoredChoice<string>("tetherline.hub-address", "");

const JOIN_LINK = /^\/join\/([^/]+)\/?$/;

/**
 * Reads what was typed or pasted as the address of a hub: `https://host:port`, with or without the scheme, or the whole
 * link of an invitation. `null` when it is none, or could not be asked from a native shell: its page came over TLS, so that
 * it asks over TLS alone, but for hubs on the device itself.
 */
export function readHubAddress(text: string): HubAddress | null {
  const typed = text.trim();
  const whole = /^[a-z][a-z0-9+.-]*:\/\//i.test(typed) ? typed : `https://${typed}`;
  if (!URL.canParse(whole)) return null;
  const { protocol, hostname, origin, pathname, username, password } = new URL(whole);
  const isHere = hostname === "localhost" || hostname === "127.0.0.1";
  if (protocol !== "https:" && !(protocol === "http:" && isHere)) return null;
  if (hostname === "" || username !== "" || password !== "") return null;
  const [, code] = JOIN_LINK.exec(pathname) ?? [];
  if (code === undefined && pathname !== "/") return null;
  return { origin, code: code ?? null };
}
