import { readFileSync } from "node:fs";
import { ed25519 } from "@noble/curves/ed25519.js";
import type { Entry, WireEntry } from "../../../src/core/log/index.ts";
import { readEntry } from "../../../src/core/log/index.ts";
import { base64urlOf } from "../../../src/core/seal/base64url.ts";
import { linkOf, priorOf, sealedBytes } from "../../../src/core/seal/link-of.ts";
import { tallyOf } from "../../../src/core/seal/tally.ts";

interface SealForm {
  readonly seeds: Readonly<Record<string, string>>;
  readonly entries: readonly { readonly entry: WireEntry; readonly link: string }[];
  readonly tally: {
    readonly entries: number;
    readonly held: Readonly<Record<string, string>>;
    readonly root: string;
    readonly order: string;
  };
  readonly code: string;
}

/** The form worked through independently; see tests/truth/SOURCES.md. */
export const FORM = JSON.parse(readFileSync("tests/truth/fixtures/seal-form.json", "utf8")) as SealForm;

const seedOf = (hex: string) => Uint8Array.from(hex.match(/../g) ?? [], (byte) => Number.parseInt(byte, 16));

export const IV = "/devices/a7k2mq9xwe";
export const GROUND = "/devices/t4c8zh2prn";
export const HUB = "/hubs/vehicle";

/** A key of the tests' own, by a byte that its seed repeats. */
export const keyOf = (byte: number) => new Uint8Array(32).fill(byte);

export const publicKey = (seed: Uint8Array): string => base64urlOf(ed25519.getPublicKey(seed));

/** The keys of the form's sources. */
export const seeds: Readonly<Record<string, Uint8Array>> = Object.fromEntries(
  Object.entries(FORM.seeds).map(([source, hex]) => [source, seedOf(hex)]),
);

export const HUB_KEY = publicKey(seeds[HUB] as Uint8Array);

/** The wire form of the independent log, each time anew, so that a test can spoil it. */
export const wires = (): Record<string, unknown>[] =>
  FORM.entries.map(({ entry }) => structuredClone(entry) as unknown as Record<string, unknown>);

/** Reads what a test made of the wire form. */
export function entriesOf(all: readonly Readonly<Record<string, unknown>>[]): Entry[] {
  return all.map((wire) => {
    const { entry } = readEntry(wire);
    if (!entry) throw new Error("no entry");
    return entry;
  });
}

/** The same entry with the seal that fits it. */
export function sealedBy(seed: Uint8Array, wire: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const { seal: _, ...statement } = wire;
  const link = linkOf(statement as unknown as WireEntry);
  if (!link) throw new Error("no link");
  return { ...statement, seal: base64urlOf(ed25519.sign(sealedBytes(link), seed)) };
}

/** Adds an entry to a log as its source would: with the next number, what it follows, a later stamp and a seal. */
export function withNext(
  log: readonly Record<string, unknown>[],
  source: string,
  type: string,
  data: unknown,
  seed: Uint8Array = seeds[source] as Uint8Array,
): Record<string, unknown>[] {
  const own = log.filter((wire) => wire["source"] === source);
  const last = own.at(-1);
  const id = String(own.length + 1).padStart(10, "0");
  const latest =
    log
      .map((wire) => String(wire["hlc"]))
      .sort()
      .at(-1) ?? "";
  const hlc = `${String(Number(latest.slice(0, 15)) + 1000).padStart(15, "0")}-0000`;
  const link = last && linkOf(last as unknown as WireEntry);
  const base = log[0] as Record<string, unknown>;
  const wire = {
    specversion: "1.0",
    id,
    source,
    type: `tetherline.${type}`,
    subject: base["subject"],
    time: "2031-04-02T09:30:00.000Z",
    recordedtime: "2031-04-02T09:30:00.000Z",
    sequence: id,
    hlc,
    actor: "iv",
    datacontenttype: "application/json",
    data,
    ...(link ? { prior: priorOf(link) } : { sealkey: publicKey(seed) }),
  };
  return [...log, sealedBy(seed, wire)];
}

/** Adds a checkpoint of all that is in a log. */
export function withCheckpoint(
  log: readonly Record<string, unknown>[],
  hub = HUB,
  seed?: Uint8Array,
): Record<string, unknown>[] {
  const linked = entriesOf(log).map((entry) => ({
    entry,
    number: Number(entry.wire.sequence),
    link: linkOf(entry.wire) as Uint8Array,
  }));
  return withNext(log, hub, "checkpoint.made", tallyOf(linked), seed ?? seeds[hub]);
}
