import type { WalkId } from "../../core/units/index.ts";
import type { StoredEntry } from "./engine.ts";

/** Reads the entries of a walk behind an offset: at least `least` of them where there are so many, and perhaps more. */
export type ReadOn = (walk: WalkId, after: number, least: number) => Promise<readonly StoredEntry[]>;

/** Entries of a walk that follow one another. */
interface Stretch {
  readonly walk: WalkId;
  /** The stretch is the gapless range of offsets (`after`, last], so `after` itself is not in it. */
  readonly after: number;
  readonly last: number;
  readonly kept: readonly StoredEntry[];
}

/** The most stretches that are remembered. */
const MOST_STRETCHES = 8;

/**
 * Returns a function that reads entries page by page from a source where each request is slow, but extra entries cost
 * little. Entries read beyond a page are kept for the next one, since entries never change. A page has at most `limit`
 * entries.
 */
export function readAhead(
  readOn: ReadOn,
): (walk: WalkId, after: number, limit: number) => ReturnType<ReadOn> {
  let stretches: readonly Stretch[] = [];
  const underWay = new Map<string, ReturnType<ReadOn>>();

  /** Identical requests that come while one is under way share its answer. */
  const readOnce: ReadOn = async (walk, after, least) => {
    const key = `${after} ${least} ${walk}`;
    const earlier = await underWay.get(key);
    // The shared answer may lack entries that arrived before this request.
    if (earlier && earlier.length >= least) return earlier;
    const since = underWay.get(key);
    if (since) return since;
    const reading = readOn(walk, after, least).finally(() => underWay.delete(key));
    underWay.set(key, reading);
    return reading;
  };

  return async (walk, after, limit) => {
    const page: StoredEntry[] = [];
    for (let from = after; page.length < limit; ) {
      const known = stretches.find((one) => one.walk === walk && one.after <= from && from < one.last);
      const least = limit - page.length;
      const kept = known
        ? known.kept.filter(({ offset }) => offset > from)
        : await readOnce(walk, from, least);
      const last = kept.at(-1);
      if (!last) break;
      if (!known && kept.length > least) {
        stretches = [...stretches, { walk, after: from, last: last.offset, kept }].slice(-MOST_STRETCHES);
      }
      page.push(...kept.slice(0, least));
      if (!known) break;
      from = last.offset;
    }
    return page;
  };
}
