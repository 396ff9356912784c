const STORED_AS = "tetherline.follower";

/** Who uses this device, as last chosen; `null` when nobody chose, or the store is denied. */
export function storedFollower(): string | null {
  try {
    return localStorage.getItem(STORED_AS);
  } catch {
    return null;
  }
}

/** Keeps who uses this device for the next walk. */
export function storeFollower(follower: string): void {
  try {
    localStorage.setItem(STORED_AS, follower);
  } catch {
    // Without a store the choice lasts for this visit.
  }
}
