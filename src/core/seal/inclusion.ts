import { nodeOf, rootOfLeaves } from "./merkle-root.ts";

/** The largest power of two below a number of leaves from 2 on: where a tree is divided. */
function dividedAt(size: number): number {
  let at = 1;
  while (at * 2 < size) at *= 2;
  return at;
}

/**
 * The inclusion proofs of leaves that are hashed already (RFC 9162 §2.1.3.1): for the place of a leaf, from 0, the hashes that lead from it to the root, the
 * nearest first. What is hashed for one is kept for the next.
 */
export function inclusionPaths(leaves: readonly Uint8Array[]): (place: number) => readonly Uint8Array[] {
  const roots = new Map<string, Uint8Array>();
  const rootOf = (from: number, to: number): Uint8Array => {
    const name = `${from}-${to}`;
    const known = roots.get(name) ?? rootOfLeaves(leaves.slice(from, to));
    roots.set(name, known);
    return known;
  };
  const pathOf = (place: number, from: number, to: number): readonly Uint8Array[] => {
    if (to - from <= 1) return [];
    const middle = from + dividedAt(to - from);
    return place < middle
      ? [...pathOf(place, from, middle), rootOf(middle, to)]
      : [...pathOf(place, middle, to), rootOf(from, middle)];
  };
  return (place) => {
    if (!Number.isInteger(place) || place < 0 || place >= leaves.length) throw new RangeError("no such leaf");
    return pathOf(place, 0, leaves.length);
  };
}

/**
 * The root that an inclusion proof leads to from the hash of a leaf at a place, from 0, in a tree of `size` leaves (RFC 9162 §2.1.3.2). `null` for a path that is
 * longer or shorter than such a tree asks for.
 */
export function rootByPath(
  leaf: Uint8Array,
  { place, size }: { readonly place: number; readonly size: number },
  path: readonly Uint8Array[],
): Uint8Array | null {
  if (place < 0 || place >= size) return null;
  let [at, last, root] = [place, size - 1, leaf];
  for (const hash of path) {
    if (last === 0) return null;
    if (at % 2 === 1 || at === last) {
      root = nodeOf(hash, root);
      while (at % 2 === 0 && at !== 0) [at, last] = [Math.floor(at / 2), Math.floor(last / 2)];
    } else root = nodeOf(root, hash);
    [at, last] = [Math.floor(at / 2), Math.floor(last / 2)];
  }
  return last === 0 ? root : null;
}
