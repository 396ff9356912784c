import { createHash } from "node:crypto";
import type { Entry } from "../../core/log/index.ts";

/** Any text as a part of a NATS subject or a header: it contains no special characters, and the text can be recovered in full. */
export function toToken(text: string): string {
  // Code units, since a text from outside may hold half a surrogate pair, which UTF-8 cannot write.
  return Buffer.from(text, "utf16le").toString("base64url");
}

/** The text of a token. */
export function ofToken(token: string): string {
  return Buffer.from(token, "base64url").toString("utf16le");
}

/** A token of an entry's source and id that always has the same length. They cannot be recovered from it. */
export function keyToken({ wire: { source, id } }: Entry): string {
  return createHash("sha256")
    .update(JSON.stringify([source, id]))
    .digest("base64url");
}
