import { sha256 } from "@noble/hashes/sha2.js";
import { utf8ToBytes } from "@noble/hashes/utils.js";
import { base64urlOf } from "../seal/index.ts";

/** What names a revision in a library: SHA-256 over its text in UTF-8, in base64url without padding, 43 letters. */
export const revisionHash = (text: string): string => base64urlOf(sha256(utf8ToBytes(text)));
