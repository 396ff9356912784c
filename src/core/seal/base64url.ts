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
  const bytes = Uint8Array.from(atob(text.replaceAll("-", "+").replaceAll("_", "/")), (letter) =>
    letter.charCodeAt(0),
  );
  return base64urlOf(bytes) === text ? bytes : null;
}
