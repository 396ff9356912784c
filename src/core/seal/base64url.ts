/** Bytes as base64url without padding (RFC 4648 §5). */
export function base64urlOf(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes))
    .replaceAll("+", "-")
    .replaceAll("/", "_")
    .replaceAll("=", "");
}

/** The bytes of a base64url text of exactly `length` bytes; `null` for anything else, spare bits that are not zero included. */
export function bytesOf(text: unknown, length: number): Uint8Array | null {
  if (typeof text !== "string" || !/^[\w-]*$/.test(text)) return null;
  if (text.length !== Math.ceil((length * 4) / 3)) return null;
  const raw = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
  const bytes = new Uint8Array(length);
  for (let index = 0; index < length; index += 1) bytes[index] = raw.charCodeAt(index);
  // Only the last letters can have bits to spare: those of the bytes behind the last three that four letters stand for.
  const left = length % 3;
  const isSpare = left > 0 && !text.endsWith(base64urlOf(bytes.subarray(length - left)));
  return isSpare ? null : bytes;
}
