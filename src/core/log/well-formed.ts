const HALF = /\p{Cs}/gu;

/** The same JSON value with every half of a character in its texts and keys replaced by U+FFFD; the value itself where there is none. */
export function wellFormed<Value>(value: Value): Value {
  return mended(value) as Value;
}

function mended(value: unknown): unknown {
  if (typeof value === "string") return value.replace(HALF, "\uFFFD");
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) {
    const parts = value.map(mended);
    return parts.some((part, index) => part !== value[index]) ? parts : value;
  }
  const before = Object.entries(value);
  const after = before.map(([key, part]) => [key.replace(HALF, "\uFFFD"), mended(part)] as const);
  const isSame = after.every(([key, part], index) => key === before[index]?.[0] && part === before[index][1]);
  return isSame ? value : Object.fromEntries(after);
}
