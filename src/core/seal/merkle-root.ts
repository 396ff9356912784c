import { sha256 } from "@noble/hashes/sha2.js";
import { concatBytes } from "@noble/hashes/utils.js";

const LEAF = Uint8Array.of(0);
const NODE = Uint8Array.of(1);

/** The Merkle tree hash of a list of entries, each as bytes (RFC 9162 §2.1.1). 32 bytes; that of an empty list is the hash of nothing. */
export const merkleRoot = (entries: readonly Uint8Array[]): Uint8Array => rootOfLeaves(entries.map(leafOf));

/** The hash of an entry as a leaf of the tree. */
export const leafOf = (entry: Uint8Array): Uint8Array => sha256(concatBytes(LEAF, entry));

/** The hash of two trees as one. */
export const nodeOf = (left: Uint8Array, right: Uint8Array): Uint8Array =>
  sha256(concatBytes(NODE, left, right));

/** The Merkle tree hash of leaves that are hashed already. */
export function rootOfLeaves(leaves: readonly Uint8Array[]): Uint8Array {
  if (leaves.length === 0) return sha256(new Uint8Array());
  // From left to right, with the roots of whole trees still to be joined, the largest first.
  const whole: { readonly size: number; readonly root: Uint8Array }[] = [];
  for (const leaf of leaves) {
    let tree = { size: 1, root: leaf };
    while (whole.at(-1)?.size === tree.size) tree = joined(whole.pop() ?? tree, tree);
    whole.push(tree);
  }
  return whole.reduceRight((right, left) => joined(left, right)).root;
}

function joined(
  left: { readonly size: number; readonly root: Uint8Array },
  right: { readonly size: number; readonly root: Uint8Array },
) {
  return { size: left.size + right.size, root: nodeOf(left.root, right.root) };
}
