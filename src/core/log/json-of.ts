/** The value of a JSON text; `undefined` when the text is not JSON (no JSON text has that value). */
export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
