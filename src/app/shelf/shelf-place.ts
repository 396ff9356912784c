let place = 0;

/** Keeps how far down the shelf was read when it was left, in px. */
export function keepShelfPlace(top: number): void {
  place = top;
}

/** How far down the shelf was read when the first screen was left, in px: once, for the shelf that takes its place. */
export function takeShelfPlace(): number {
  const kept = place;
  place = 0;
  return kept;
}
