const STORED_AS = "tetherline.told";

/** How many are kept in mind: what was told long ago does not come up again. */
const MOST = 200;

/** Keys of what the reader of this device was told and has put away. */
export function toldKeys(): ReadonlySet<string> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(STORED_AS) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((key) => typeof key === "string") : []);
  } catch {
    return new Set();
  }
}

/** Keeps in mind that the reader was told; returns all keys. */
export function keepTold(key: string): ReadonlySet<string> {
  const keys = [...new Set([...toldKeys(), key])].slice(-MOST);
  try {
    localStorage.setItem(STORED_AS, JSON.stringify(keys));
  } catch {
    // Without a store it lasts for this visit.
  }
  return new Set(keys);
}
