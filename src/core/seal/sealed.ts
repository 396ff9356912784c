import type { Entry, WireEntry } from "../log/index.ts";
import { linkOf, sealedBytes } from "./link-of.ts";

/** Who seals: the secret key of a source, or what signs with it. */
export interface Sealer {
  /** 32 raw bytes in base64url. */
  readonly publicKey: string;
  /** An Ed25519 signature (RFC 8032): 64 bytes in base64url. */
  sign(bytes: Uint8Array): Promise<string>;
}

/** What the seal of an entry is made over; `null` for an entry without a canonical form. */
export function toBeSealed(wire: WireEntry): Uint8Array | null {
  const link = linkOf(wire);
  return link && sealedBytes(link);
}

/** The same entry with its seal ([SEL2]); `null` for an entry without a canonical form. Rejects as the sealer does. */
export async function sealed(entry: Entry, sealer: Sealer): Promise<Entry | null> {
  const bytes = toBeSealed(entry.wire);
  return bytes && { ...entry, wire: { ...entry.wire, seal: await sealer.sign(bytes) } };
}
