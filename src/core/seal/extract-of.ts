import type { Entry } from "../log/index.ts";
import { compareEntries, deviceOf } from "../log/index.ts";
import type { Checkpoint } from "./checkpoint.ts";
import { checkpointIn, heldAgainst } from "./checkpoint.ts";
import type { Extract } from "./extract.ts";
import { isCheckpoint, isHub } from "./hub-word.ts";
import { inclusionPaths } from "./inclusion.ts";
import { leafOf } from "./merkle-root.ts";
import { placesIn } from "./places.ts";
import type { SourceChain } from "./source-chain.ts";
import { chainsOf } from "./source-keys.ts";
import type { LinkedEntry } from "./tally.ts";
import { byPlace, tallying } from "./tally.ts";
import { bySourceOf } from "./walk-of.ts";

/** An extract, or why there is none: nothing was chosen, no checkpoint fits the log, or it did not hold some of what was chosen. */
export type ExtractMade =
  | {
      readonly kind: "made";
      readonly extract: Extract;
      /** How many entries were chosen, and how many the checkpoint held that were left out. */
      readonly chosen: number;
      readonly leftOut: number;
    }
  | { readonly kind: "nothing-chosen" | "no-checkpoint" }
  | { readonly kind: "behind"; readonly count: number };

/**
 * The extract of a log that has the chosen entries in full. Beside them it has what they are verified by: the last checkpoint that fits the log, what its hub
 * says of their devices, and where hubs name their keys. Everything else is left out; `prior`, and the hashes of a proof, say nothing of what was left out
 * but let a guess be tested.
 */
export function extractOf(entries: readonly Entry[], isChosen: (entry: Entry) => boolean): ExtractMade {
  const log = bySourceOf(entries);
  if (!log) return { kind: "nothing-chosen" };
  const { chains } = chainsOf(log.bySource, new Set(), { isQuick: true });
  const all = [...chains.values()].flatMap((chain) => chain.entries);
  const chosen = all.filter(({ entry }) => isChosen(entry));
  if (chosen.length === 0) return { kind: "nothing-chosen" };
  const last = lastFitting(chains);
  if (!last) return { kind: "no-checkpoint" };
  const placeOf = placesIn(last.checkpoint);
  const place = ({ entry, number }: LinkedEntry) => placeOf(entry.wire.source, number);
  const behind = chosen.filter((one) => place(one) === null && one !== last.made);
  if (behind.length > 0) return { kind: "behind", count: behind.length };
  const sources = new Set(chosen.map(({ entry }) => entry.wire.source));
  const kept = all.filter((one) => chosen.includes(one) || one === last.made || isNeeded(one.entry, sources));
  const pathAt = inclusionPaths(last.under.map(({ link }) => leafOf(link)));
  return {
    kind: "made",
    extract: {
      walk: log.walk,
      checkpoint: { source: last.made.entry.wire.source, number: last.made.number },
      entries: kept
        .toSorted((a, b) => compareEntries(a.entry, b.entry))
        .map((one) => {
          const at = place(one);
          return { entry: one.entry, path: at === null ? null : pathAt(at) };
        }),
    },
    chosen: chosen.length,
    leftOut: last.checkpoint.entries - kept.filter((one) => place(one) !== null).length,
  };
}

/** What the hubs have to say of the sources, and of one another. */
function isNeeded({ wire }: Entry, sources: ReadonlySet<string>): boolean {
  if (!isHub(wire.source)) return false;
  if (wire["sealkey"] !== undefined) return true;
  if (/^tetherline\.hub\.(named|vouched)$/.test(wire.type)) return true;
  const said = (wire.data ?? {}) as Readonly<Record<string, unknown>>;
  return (
    wire.type === "tetherline.device.admitted" &&
    [...sources].some((one) => [one, deviceOf(one)].includes(String(said["source"])))
  );
}

interface Fitting {
  readonly made: LinkedEntry;
  readonly checkpoint: Checkpoint;
  /** What it held, as the leaves of its tree stand. */
  readonly under: readonly LinkedEntry[];
}

/** The last checkpoint of any hub that the log still has all of. */
function lastFitting(chains: ReadonlyMap<string, SourceChain>): Fitting | null {
  const all = [...chains.values()].flatMap((chain) => chain.entries);
  const byName = new Map(all.map((one) => [`${one.entry.wire.source} ${one.number}`, one]));
  const log = {
    entryAt: (source: string, number: number) => byName.get(`${source} ${number}`) ?? null,
    tallyOf: tallying(all),
  };
  const made = all
    .filter(({ entry, isSealed }) => isSealed && isHub(entry.wire.source) && isCheckpoint(entry))
    .toSorted((a, b) => compareEntries(b.entry, a.entry));
  for (const one of made) {
    const checkpoint = checkpointIn(one.entry.wire.data);
    const answer = checkpoint && heldAgainst(checkpoint, log);
    if (checkpoint && answer?.state === "fits") {
      return { made: one, checkpoint, under: answer.under.toSorted(byPlace) };
    }
  }
  return null;
}
