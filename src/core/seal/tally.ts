import { sha256 } from "@noble/hashes/sha2.js";
import { concatBytes } from "@noble/hashes/utils.js";
import type { Entry, PlaceInOrder } from "../log/index.ts";
import { compareEntries } from "../log/index.ts";
import { base64urlOf } from "./base64url.ts";
import { leafOf, rootOfLeaves } from "./merkle-root.ts";
import { rangesText } from "./number-ranges.ts";

/** An entry with its link and its number in the sequence of its source. */
export interface LinkedEntry extends LinkedPlace {
  readonly entry: Entry;
}

/** What a tally needs of an entry: where it stands, and its link. */
export interface LinkedPlace {
  readonly entry: PlaceInOrder;
  readonly number: number;
  readonly link: Uint8Array;
}

/** What entries come to, so that two sites can tell whether they hold the same ([SEL5]). */
export interface Tally {
  readonly entries: number;
  /** For each source the numbers that are held, as ranges. */
  readonly held: Readonly<Record<string, string>>;
  /** The Merkle root over the links by source and number, in base64url. */
  readonly root: string;
  /** SHA-256 over the links in the order of the log, in base64url. */
  readonly order: string;
}

const asText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** By source and number, as the leaves of the tree stand. */
export const byPlace = (a: LinkedPlace, b: LinkedPlace): number =>
  asText(a.entry.wire.source, b.entry.wire.source) || a.number - b.number;

/** What entries come to, of which no two may have one source and number. */
export const tallyOf = (linked: readonly LinkedPlace[]): Tally => tallying(linked)(new Set(linked));

/** Tallies of parts of a log, which is sorted and hashed once for all of them. No two entries may have one source and number. */
export function tallying(all: readonly LinkedPlace[]): (part: ReadonlySet<LinkedPlace>) => Tally {
  const byNumber = all.toSorted(byPlace).map((one) => ({ one, leaf: leafOf(one.link) }));
  const inOrder = all.toSorted((a, b) => compareEntries(a.entry, b.entry));
  return (part) => {
    const leaves = byNumber.filter(({ one }) => part.has(one));
    const numbers = new Map<string, number[]>();
    for (const { one } of leaves) {
      const { source } = one.entry.wire;
      const held = numbers.get(source) ?? [];
      numbers.set(source, held);
      held.push(one.number);
    }
    const links = inOrder.filter((one) => part.has(one)).map(({ link }) => link);
    return {
      entries: leaves.length,
      held: Object.fromEntries([...numbers].map(([source, held]) => [source, rangesText(held)])),
      root: base64urlOf(rootOfLeaves(leaves.map(({ leaf }) => leaf))),
      order: base64urlOf(sha256(concatBytes(...links))),
    };
  };
}
