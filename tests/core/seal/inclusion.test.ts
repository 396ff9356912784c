import { fc, it } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { inclusionPaths, rootByPath } from "../../../src/core/seal/inclusion.ts";
import { leafOf, rootOfLeaves } from "../../../src/core/seal/merkle-root.ts";

const tree = fc
  .integer({ min: 1, max: 70 })
  .chain((size) => fc.record({ size: fc.constant(size), place: fc.nat(size - 1), other: fc.nat(size - 1) }))
  .map(({ size, ...rest }) => ({
    ...rest,
    size,
    leaves: Array.from({ length: size }, (_, index) => leafOf(Uint8Array.of(index))),
  }));

const leafAt = (leaves: readonly Uint8Array[], place: number) => leaves[place] ?? new Uint8Array();

describe("inclusion proofs", () => {
  it.prop([tree])(
    "[SEL5] lead from every leaf of every tree to its root, and from no other place or leaf",
    ({ leaves, size, place, other }) => {
      const path = inclusionPaths(leaves)(place);
      expect(rootByPath(leafAt(leaves, place), { place, size }, path)).toEqual(rootOfLeaves(leaves));
      if (other === place) return;
      expect(rootByPath(leafAt(leaves, place), { place: other, size }, path)).not.toEqual(
        rootOfLeaves(leaves),
      );
      expect(rootByPath(leafAt(leaves, other), { place, size }, path)).not.toEqual(rootOfLeaves(leaves));
    },
  );

  it.prop([tree])(
    "[SEL5] that are longer or shorter than the tree asks for lead nowhere",
    ({ leaves, size, place }) => {
      const path = inclusionPaths(leaves)(place);
      expect(
        rootByPath(leafAt(leaves, place), { place, size }, [...path, leafOf(new Uint8Array())]),
      ).toBeNull();
      if (path.length > 0) {
        expect(rootByPath(leafAt(leaves, place), { place, size }, path.slice(1))).toBeNull();
      }
      expect(rootByPath(leafAt(leaves, place), { place: size, size }, path)).toBeNull();
    },
  );
});
