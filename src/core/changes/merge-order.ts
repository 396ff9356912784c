/** The order of the members that come together in one holder, as each side has them; a side may lack some of them. */
export interface OrderSides {
  readonly base: readonly string[];
  readonly ours: readonly string[];
  readonly theirs: readonly string[];
}

/** One order out of two, or the members round which the wishes of the sides lead in a ring. */
export type MergedOrder =
  | { readonly order: readonly string[]; readonly ring: null }
  | { readonly order: null; readonly ring: readonly string[] };

const placesIn = (entries: readonly string[], order: readonly string[]): Int32Array => {
  const places = new Map(order.map((entry, place) => [entry, place]));
  return Int32Array.from(entries, (entry) => places.get(entry) ?? -1);
};

const STANDS_BEFORE = 1;
/** Both answers at once: one side has a pair one way, the other the other way, and the base does not say. */
const BOTH = 2;

/** {@link STANDS_BEFORE} when a stands before b, −1 when behind it, 0 when they do not stand in one order. */
const pairIn = (places: Int32Array, a: number, b: number): number => {
  const [first = -1, second = -1] = [places[a], places[b]];
  return first < 0 || second < 0 ? 0 : first < second ? STANDS_BEFORE : -STANDS_BEFORE;
};

/**
 * Merges the order of `members` pair by pair ([CHG5]): a pair that one side turned round is turned, any other stands as in the base, and
 * a pair that only one side has stands as it has it. Members that no side has together keep the runs they stand in, the run with the
 * lesser id first, so that the answer is the same whichever side is ours. O(n²) in the number of members.
 */
export function mergedOrder(members: readonly string[], sides: OrderSides): MergedOrder {
  const whole = wholeOrder(members, sides);
  if (whole) return { order: whole, ring: null };
  const entries = members.toSorted();
  const wish = wishesOf(entries, sides);
  const indices = entries.map((_, index) => index);
  const leadsTo = (a: number, b: number) => a !== b && [STANDS_BEFORE, BOTH].includes(wish(a, b));
  const missing = indices.map((b) => indices.filter((a) => leadsTo(a, b)).length);
  const left = new Set(indices);
  const ready = new Set(indices.filter((index) => missing[index] === 0));
  const places = [placesIn(entries, sides.ours), placesIn(entries, sides.theirs)];
  const order: number[] = [];
  while (ready.size > 0) {
    const next = nextOf(ready, order.at(-1) ?? -1, places);
    ready.delete(next);
    left.delete(next);
    order.push(next);
    for (const index of left) {
      if (!leadsTo(next, index)) continue;
      missing[index] = (missing[index] ?? 0) - 1;
      if (missing[index] === 0) ready.add(index);
    }
  }
  const named = (found: readonly number[]) => found.flatMap((index) => entries[index] ?? []);
  return left.size === 0
    ? { order: named(order), ring: null }
    : { order: null, ring: named(ringOf(left, leadsTo)) };
}

/** All members in the order of one side; those that it lacks stand behind what they follow on another side, or first. */
export function orderAfter(
  members: readonly string[],
  chosen: readonly string[],
  { ours, theirs, base }: OrderSides,
): readonly string[] {
  const wanted = new Set(members);
  const order = chosen.filter((member) => wanted.has(member));
  for (const side of [ours, theirs, base]) {
    for (const [place, member] of side.entries()) {
      if (!wanted.has(member) || order.includes(member)) continue;
      const before = side.slice(0, place).findLast((one) => order.includes(one));
      order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, member);
    }
  }
  return order;
}

/** How a pair of members is to stand: 0 when no side has them together. */
function wishesOf(entries: readonly string[], sides: OrderSides): (a: number, b: number) => number {
  const base = placesIn(entries, sides.base);
  const ours = placesIn(entries, sides.ours);
  const theirs = placesIn(entries, sides.theirs);
  return (a, b) => {
    const [before, our, their] = [pairIn(base, a, b), pairIn(ours, a, b), pairIn(theirs, a, b)];
    if (our === 0 || our === their) return their;
    if (their === 0) return our;
    // The two sides differ, so that exactly one of them turned what the base has.
    return before === 0 ? BOTH : -before;
  };
}

const isWithin = (part: readonly string[], whole: readonly string[]): boolean => {
  let at = 0;
  for (const entry of whole) if (entry === part[at]) at += 1;
  return at === part.length;
};

/** The order of one side where it decides every pair: it has all members, and the other turned none round. */
function wholeOrder(members: readonly string[], { base, ours, theirs }: OrderSides): string[] | null {
  const together = new Set(members);
  const [our, their] = [ours, theirs].map((order) => order.filter((entry) => together.has(entry)));
  if (!our || !their) return null;
  if (our.length === members.length && (isWithin(their, our) || isWithin(their, base))) return our;
  return their.length === members.length && (isWithin(our, their) || isWithin(our, base)) ? their : null;
}

/** Of the members that may come next, one that stands right behind the last on some side, else the one with the least id. */
function nextOf(ready: ReadonlySet<number>, last: number, sides: readonly Int32Array[]): number {
  const least = (candidates: Iterable<number>) => Math.min(...candidates);
  const following = [...ready].filter((index) =>
    sides.some((places) => {
      const [place = -1, before = -1] = [places[index], places[last]];
      return before >= 0 && place === before + 1;
    }),
  );
  return least(following.length > 0 ? following : ready);
}

/** The members in a ring or between two rings: what remains after removing every member that leads to no ring. */
function ringOf(stuck: ReadonlySet<number>, leadsTo: (a: number, b: number) => boolean): number[] {
  const left = new Set(stuck);
  for (let size = -1; size !== left.size; ) {
    size = left.size;
    for (const index of left) if (![...left].some((other) => leadsTo(index, other))) left.delete(index);
  }
  return [...left];
}
