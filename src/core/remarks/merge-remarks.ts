import { sameJson } from "../changes/index.ts";
import { inOrder } from "./read-remarks.ts";
import type { Remark } from "./remark.ts";

/** Sets of remarks as one. */
export interface MergedRemarks {
  /** Each once, by their times and then their ids; of those with one id that differ, none. */
  readonly remarks: readonly Remark[];
  /** Those that have an id in common and differ. */
  readonly conflicting: readonly Remark[];
}

/** Merges sets of remarks ([WRT10]); the order in which they come makes no difference. */
export function mergeRemarks(...sets: readonly (readonly Remark[])[]): MergedRemarks {
  const byId = new Map<string, Remark[]>();
  for (const remark of sets.flat()) {
    const known = byId.get(remark.id) ?? [];
    if (!known.some((one) => sameJson(one, remark))) byId.set(remark.id, [...known, remark]);
  }
  const all = [...byId.values()];
  return {
    remarks: inOrder(all.flatMap((one) => (one.length === 1 ? one : []))),
    conflicting: all
      .filter((one) => one.length > 1)
      .flat()
      .toSorted((a, b) => textOf(a).localeCompare(textOf(b), "en")),
  };
}

/** All that a remark says as one text, whatever the order of its keys. */
const textOf = ({ by, ...rest }: Remark): string =>
  JSON.stringify([by.name, by.role, Object.entries(rest).toSorted(([a], [b]) => a.localeCompare(b, "en"))]);
