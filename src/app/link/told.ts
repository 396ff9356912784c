const STORED_AS = "tetherline.told";

/** The number of keys that are remembered. What was told long ago does not come up again. */
const MOST = 200;

/** The keys of the notices that the reader of this device has dismissed. */
export function toldKeys(): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(STORED_AS) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((key) => typeof key === "string") : []);
  } catch {
    return new Set();
  }
}

/** Remembers that the reader dismissed a notice; returns all keys. */
export function keepTold(key: string): ReadonlySet<string> {
  const keys = [...new Set([...toldKeys(), key])].slice(-MOST);
  try {
    localStorage.setItem(STORED_AS, JSON.stringify(keys));
  } catch {
    // Without a store the key is remembered for this visit.
  }
  return new Set(keys);
}
