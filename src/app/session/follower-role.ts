const STORED_AS = "tetherline.follower";

/** Who uses this device, as last chosen; `null` when nobody has chosen or the store is not available. */
export function storedFollower(): string | null {
  try {
    return localStorage.getItem(STORED_AS);
  } catch {
    return null;
  }
}

/** Stores who uses this device, for later walks. */
export function storeFollower(follower: string): void {
  try {
    localStorage.setItem(STORED_AS, follower);
  } catch {
    // Without a store the choice lasts for this visit.
  }
}
