import type { Entry } from "../../../src/core/log/index.ts";
import type { Outline } from "../../../src/core/procedure/index.ts";
import { outlineOf, parseProcedure } from "../../../src/core/procedure/index.ts";
import { nameOf, referenceLog, referenceTimes } from "./reference-log.ts";
import type { ReferenceDeviation } from "./reference-standing.ts";
import { ReferenceWalk } from "./reference-walk.ts";

/** What a log means, by the slow and obvious account. */
export interface Reference {
  readonly walk: ReferenceWalk | null;
  /** Source and id of every entry without effect, in the order of the log; conflicting ones last. */
  readonly ignored: readonly string[];
  readonly deviations: readonly ReferenceDeviation[];
  /** In the order in which they were entered. */
  readonly struck: readonly { key: string; at: number; struckAt: number }[];
  readonly lastAt: number | null;
}

/** Folds a set of entries in any order into what it means ([LOG3], [LOG4]). */
export function referenceOf(entries: readonly Entry[], { asEntered = false } = {}): Reference {
  const opening = referenceLog(entries, null).ordered.find(
    (entry) => entry.read.fact?.name === "walk.opened" && openedBy(entry, entry.read.fact.procedure) !== null,
  );
  const name = opening?.wire.subject ?? null;
  const { ordered, conflicting, struck, idle } = referenceLog(entries, name);
  const times = referenceTimes(ordered, { struck, walk: name });
  const timeOf = (entry: Entry) =>
    asEntered ? Date.parse(entry.wire.time) : (times.get(nameOf(entry)) ?? NaN);
  let walk: ReferenceWalk | null = null;
  const ignored: string[] = [];
  for (const entry of ordered) {
    const { fact } = entry.read;
    let hadEffect: boolean;
    if (struck.has(nameOf(entry))) continue;
    else if (fact?.name === "entry.struck") hadEffect = !idle.has(nameOf(entry));
    else if (!fact) hadEffect = false;
    else if (walk) hadEffect = walk.take(entry, fact, timeOf(entry));
    else {
      walk = fact.name === "walk.opened" ? openedBy(entry, fact.procedure) : null;
      hadEffect = walk !== null;
    }
    if (!hadEffect) ignored.push(nameOf(entry));
  }
  const strikes = [...struck].map(([key, strike]) => {
    const target = ordered.find((one) => nameOf(one) === key);
    const fact = target?.read.fact;
    const step: string | null = fact && "step" in fact ? (fact.step ?? null) : null;
    return { key, step, struckAt: timeOf(strike) };
  });
  return {
    walk,
    ignored: [...ignored, ...conflicting],
    deviations: [
      ...(walk?.deviations ?? []).map(({ kind, step, at }) => ({ kind, step, at })),
      ...strikes.map(({ step, struckAt }) => ({ kind: "struck", step, at: struckAt })),
    ],
    struck: ordered.flatMap((entry) =>
      strikes.flatMap(({ key, struckAt }) =>
        key === nameOf(entry) ? [{ key, at: timeOf(entry), struckAt }] : [],
      ),
    ),
    lastAt: ordered.length === 0 ? null : Math.max(...ordered.map(timeOf)),
  };
}

/** What was read of procedures, by their text, since reading one takes longer than folding a log. */
const outlines = new Map<string, Outline | null>();

function openedBy(entry: Entry, file: unknown): ReferenceWalk | null {
  const text = JSON.stringify(file);
  const { procedure } = outlines.has(text) ? { procedure: null } : parseProcedure(file);
  const outline = outlines.get(text) ?? (procedure && outlineOf(procedure));
  outlines.set(text, outline);
  return outline && new ReferenceWalk(entry.wire.subject, outline);
}
