/**
 * The SHA-256 digest of a text in UTF-8, as `sha-256:` and 64 hexadecimal digits; `null` where the browser makes none, as on a page
 * that is not served securely.
 */
export async function textDigest(
  text: string,
  subtle: Pick<SubtleCrypto, "digest"> | undefined = globalThis.crypto?.subtle,
): Promise<string | null> {
  if (!subtle) return null;
  const digest = new Uint8Array(await subtle.digest("SHA-256", new TextEncoder().encode(text)));
  return `sha-256:${Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("")}`;
}
