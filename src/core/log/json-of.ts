/** The value of a JSON text; `undefined`, which no JSON text has as its value, when it is none. */
export function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}
