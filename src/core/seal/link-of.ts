import { sha256 } from "@noble/hashes/sha2.js";
import { concatBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import type { WireEntry } from "../log/index.ts";
import { canonicalText, statementOf } from "../log/index.ts";
import { base64urlOf } from "./base64url.ts";

/** How many bytes of a link the next entry of the source carries as `prior`. */
const PRIOR_BYTES = 16;

/**
 * The link of an entry ([SEL2]): SHA-256 over `tetherline entry 1`, a line feed and the statement as canonical JSON (RFC 8785). 32 bytes; `null` for an
 * entry that has no canonical form, because a text in it is no well-formed Unicode.
 */
export function linkOf(wire: WireEntry): Uint8Array | null {
  const form = canonicalText(statementOf(wire));
  return form === null ? null : sha256(utf8ToBytes(["tetherline entry 1", form].join("\n")));
}

/** What a seal is made over: `tetherline seal 1`, a line feed and the link. */
export const sealedBytes = (link: Uint8Array): Uint8Array =>
  concatBytes(utf8ToBytes(["tetherline seal 1", ""].join("\n")), link);

/** What the next entry of a source says of the one with this link. */
export const priorOf = (link: Uint8Array): string => base64urlOf(link.subarray(0, PRIOR_BYTES));
