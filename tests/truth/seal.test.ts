import { readFileSync } from "node:fs";
import { ed25519 } from "@noble/curves/ed25519.js";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, hexToBytes, utf8ToBytes } from "@noble/hashes/utils.js";
import { describe, expect, it } from "vitest";
import { canonicalText } from "../../src/core/log/index.ts";
import { base64urlOf, bytesOf } from "../../src/core/seal/base64url.ts";
import { inclusionPaths, rootByPath } from "../../src/core/seal/inclusion.ts";
import { linkOf, priorOf } from "../../src/core/seal/link-of.ts";
import { leafOf, merkleRoot } from "../../src/core/seal/merkle-root.ts";
import { sealFits, sealKeyOf } from "../../src/core/seal/seal-fits.ts";
import { tallyOf } from "../../src/core/seal/tally.ts";
import { voiceCode } from "../../src/core/seal/voice-code.ts";
import { entriesOf, FORM, wires } from "../core/seal/sealed-log.ts";

interface Case {
  readonly id: string;
  // biome-ignore lint/suspicious/noExplicitAny: each kind of case has its own form.
  readonly data: any;
  // biome-ignore lint/suspicious/noExplicitAny: see above.
  readonly expected: any;
}

const { cases } = JSON.parse(readFileSync("tests/truth/fixtures/seal.json", "utf8")) as {
  readonly cases: readonly Case[];
};
const named = (id: string): Case => {
  const found = cases.find((one) => one.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};

describe("canonical JSON (RFC 8785)", () => {
  it.each(["jcs-values", "jcs-structures", "jcs-arrays", "jcs-weird"])("[SEL1] %s", (id) => {
    const { data, expected } = named(id);
    expect(canonicalText(JSON.parse(data.jsonText))).toBe(expected.canonical);
  });

  it("[SEL1] writes numbers as appendix B does", () => {
    const { data, expected } = named("jcs-numbers");
    const texts = data.ieee754Hex.map((hex: string) =>
      canonicalText(new DataView(hexToBytes(hex).buffer).getFloat64(0)),
    );
    expect(texts).toEqual(expected.text);
  });

  it("[SEL1] has no form for a text with a lone surrogate", () => {
    const wire = { ...FORM.entries[0]?.entry, data: { text: "\ud800" } };
    expect(canonicalText(wire)).toBeNull();
    expect(linkOf(wire as never)).toBeNull();
  });
});

describe("SHA-256 (FIPS 180-4) and Ed25519 (RFC 8032)", () => {
  it("[SEL2] hashes the published texts", () => {
    const { data, expected } = named("sha256-fips");
    expect(data.utf8.map((text: string) => bytesToHex(sha256(utf8ToBytes(text))))).toEqual(expected.sha256);
  });

  it.each(["ed25519-1", "ed25519-2"])("[SEL2] %s", (id) => {
    const { data, expected } = named(id);
    const [message, key] = [hexToBytes(data.message), hexToBytes(expected.publicKey)];
    expect(bytesToHex(ed25519.getPublicKey(hexToBytes(data.seed)))).toBe(expected.publicKey);
    expect(ed25519.verify(hexToBytes(expected.signature), message, key, { zip215: false })).toBe(true);
  });

  it("[SEL2] refuses a seal that was turned into another one (S ≥ L)", () => {
    for (const one of named("ed25519-s-plus-order").data) {
      const [seal, message, key] = [one.signature, one.message, one.publicKey] as [string, string, string];
      expect(ed25519.verify(hexToBytes(seal), hexToBytes(message), hexToBytes(key), { zip215: false })).toBe(
        false,
      );
    }
  });

  it("[SEL2] refuses all keys of low order, in all their writings", () => {
    const { publicKeys } = named("ed25519-low-order-keys").data;
    expect(publicKeys).toHaveLength(14);
    for (const hex of publicKeys) expect(sealKeyOf(base64urlOf(hexToBytes(hex))), hex).toBeNull();
  });

  it("[SEL4] writes keys as RFC 8037 does", () => {
    const { x } = named("jws-ed25519").data.jwk;
    expect(base64urlOf(bytesOf(x, 32) ?? new Uint8Array())).toBe(x);
    expect(sealKeyOf(x)).not.toBeNull();
    expect(bytesOf(`${x}=`, 32)).toBeNull();
    expect(bytesOf(x.slice(1), 32)).toBeNull();
  });
});

describe("Merkle trees (RFC 9162 §2.1, RFC 6962)", () => {
  it("[SEL5] has the published roots", () => {
    const { data, expected } = named("merkle-roots");
    const leaves = data.leaves.map(hexToBytes);
    const roots = data.sizes.map((size: number) => bytesToHex(merkleRoot(leaves.slice(0, size))));
    expect(roots).toEqual(expected.roots);
  });

  it("[SEL5] has the published root of nothing, and hashes of leaves", () => {
    const { data, expected } = named("merkle-hashes");
    expect(bytesToHex(merkleRoot([]))).toBe(expected.emptyRoot);
    expect(data.leaf.map((leaf: string) => bytesToHex(merkleRoot([utf8ToBytes(leaf)])))).toEqual(
      expected.leafHashes,
    );
  });
});

describe("inclusion proofs (RFC 9162 §2.1.3, RFC 6962)", () => {
  it("[SEL5] are the published ones, and lead to the published roots", () => {
    const { data, expected } = named("merkle-paths");
    const leaves: Uint8Array[] = data.leaves.map(hexToBytes).map(leafOf);
    const roots = named("merkle-roots");
    for (const [index, { leaf, size }] of data.asked.entries()) {
      const path = inclusionPaths(leaves.slice(0, size))(leaf);
      expect(path.map(bytesToHex)).toEqual(expected.paths[index]);
      const root = rootByPath(leaves[leaf] ?? new Uint8Array(), { place: leaf, size }, path);
      expect(root && bytesToHex(root)).toBe(roots.expected.roots[roots.data.sizes.indexOf(size)]);
    }
  });
});

describe("the form of the log, worked through by another program", () => {
  it("[SEL2] [SEL5] [SEL6] has its links, seals, tally and code", () => {
    const entries = entriesOf(wires());
    const links = entries.map(({ wire }) => linkOf(wire) ?? new Uint8Array());
    expect(links.map(bytesToHex)).toEqual(FORM.entries.map(({ link }) => link));
    const keys = new Map(
      entries.flatMap(({ wire }) => (wire["sealkey"] ? [[wire.source, sealKeyOf(wire["sealkey"])]] : [])),
    );
    const linked = entries.map((entry, index) => ({
      entry,
      number: Number(entry.wire.sequence),
      link: links[index] ?? new Uint8Array(),
    }));
    for (const { entry, number, link } of linked) {
      const key = keys.get(entry.wire.source);
      expect(key && sealFits(link, entry.wire["seal"], key), `${entry.wire.source} ${number}`).toBe(true);
      const before = linked.find(
        (one) => one.entry.wire.source === entry.wire.source && one.number === number - 1,
      );
      expect(entry.wire["prior"]).toBe(before && priorOf(before.link));
    }
    const tally = tallyOf(linked.slice(0, FORM.tally.entries));
    expect(tally).toEqual(FORM.tally);
    expect(voiceCode(entries[0]?.walk as never, tally)).toBe(FORM.code);
  });
});
