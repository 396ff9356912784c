import type { WalkId } from "../../core/units/index.ts";
import type { StoredEntry } from "./engine.ts";

/** Reads the entries of a walk behind an offset: at least `least` of them where there are so many, and perhaps more. */
export type ReadOn = (walk: WalkId, after: number, least: number) => Promise<readonly StoredEntry[]>;

/** Entries of a walk that follow one another. */
interface Stretch {
  readonly walk: WalkId;
  /** It begins behind this offset and ends with that one, and leaves nothing out between. */
  readonly after: number;
  readonly last: number;
  readonly kept: readonly StoredEntry[];
}

/** So many stretches are remembered. */
const MOST_STRETCHES = 8;

/**
 * Gives out entries by pages from a source that takes long to ask, but hardly longer for more entries: what was read
 * beyond a page is remembered for the next one, since entries never change. A page has never more than `limit`
 * entries. /
 */
export function readAhead(
  readOn: ReadOn,
): (walk: WalkId, after: number, limit: number) => ReturnType<ReadOn> {
  let stretches: readonly Stretch[] = [];
  const underWay = new Map<string, ReturnType<ReadOn>>();

  /** Whoever asks for the same meanwhile waits for the same. */
  const readOnce: ReadOn = async (walk, after, least) => {
    const key = `${after} ${least} ${walk}`;
    const earlier = await underWay.get(key);
    // It may leave out what was there when it was asked for this time.
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
