/** Where another hub is. */
export interface FarAddress {
  /** `https://host:port`. */
  readonly origin: string;
  /**
   * SHA-256 of its certificate or of the authority that made it, 64 hexadecimal digits in capitals: nothing else about
   * the certificate is checked. `null` means the usual checks.
   */
  readonly fingerprint: string | null;
}

const FINGERPRINT = /^(?:sha256=)?((?:[0-9A-F]{2}:?){31}[0-9A-F]{2})$/i;

/** Reads `http(s)://host:port[#fingerprint]`; `null` when it is none. */
export function readFarAddress(text: string): FarAddress | null {
  const url = URL.canParse(text) ? new URL(text) : null;
  if (
    !url ||
    !/^https?:$/.test(url.protocol) ||
    url.pathname !== "/" ||
    url.search !== "" ||
    url.username !== ""
  ) {
    return null;
  }
  if (url.hash === "") return { origin: url.origin, fingerprint: null };
  const [, digits] = FINGERPRINT.exec(url.hash.slice(1)) ?? [];
  if (digits === undefined || url.protocol !== "https:") return null;
  return { origin: url.origin, fingerprint: digits.replaceAll(":", "").toUpperCase() };
}
