/** The most numbers that ranges may hold: far above any walk, and few enough to be counted. */
const MOST_NUMBERS = 10_000_000;

/** Numbers from 1 as ranges, such as `1-56,58`, in rising order. */
export function rangesText(numbers: readonly number[]): string {
  const ranges: [first: number, last: number][] = [];
  for (const number of numbers.toSorted((a, b) => a - b)) {
    const range = ranges.at(-1);
    if (range && number <= range[1] + 1) range[1] = number;
    else ranges.push([number, number]);
  }
  return ranges.map(([first, last]) => (first === last ? `${first}` : `${first}-${last}`)).join(",");
}

/** The ranges of a text such as `1-56,58`, ends included; `null` when it is none, does not rise, or holds too many numbers. */
export function rangesIn(text: unknown): readonly (readonly [first: number, last: number])[] | null {
  if (
    typeof text !== "string" ||
    !/^[1-9]\d{0,15}(-[1-9]\d{0,15})?(,[1-9]\d{0,15}(-[1-9]\d{0,15})?)*$/.test(text)
  ) {
    return null;
  }
  const ranges = text.split(",").map((range) => {
    const [first = 0, last = first] = range.split("-").map(Number);
    return [first, last] as const;
  });
  const rises = ranges.every(
    ([first, last], index) => first <= last && first > (ranges[index - 1]?.[1] ?? 0),
  );
  const count = ranges.reduce((sum, [first, last]) => sum + last - first + 1, 0);
  return rises && count <= MOST_NUMBERS ? ranges : null;
}
