import type { Entry } from "../log/index.ts";
import type { SourceChain } from "./source-chain.ts";

/** What hubs say of sources, each in an entry with a seal that fits. */
export interface HubWord {
  /** By source the keys, names and roles it was admitted with. */
  readonly admitted: ReadonlyMap<string, readonly Admission[]>;
  /** The name of each hub, as it says itself. */
  readonly named: ReadonlyMap<string, string>;
  /** By hub the keys that other hubs vouch for. */
  readonly vouched: ReadonlyMap<string, readonly string[]>;
}

/** As what a hub admitted a source. */
export interface Admission {
  /** `null` for a device that proved none. */
  readonly key: string | null;
  readonly name: string;
  readonly role: string;
}

/** Only such sources can be hubs. */
export const isHub = (source: string): boolean => source.startsWith("/hubs/");

/** Whether an entry tells what a hub held. */
export const isCheckpoint = ({ wire }: Entry): boolean => wire.type === "tetherline.checkpoint.made";

const text = (value: unknown): string => (typeof value === "string" ? value : "");

/** The hub that a source belongs to: `/hubs/x` of `/hubs/x` and of what it has below it; other sources are their own. */
export const hubOf = (source: string): string => /^\/hubs\/[^/]+/.exec(source)?.[0] ?? source;

/** The keys that hubs vouch for as those of a hub's source, by itself or by the hub it belongs to; `null` where none does. */
export function vouchedKeys(source: string, { vouched }: Pick<HubWord, "vouched">): readonly string[] | null {
  const keys = [...(vouched.get(source) ?? []), ...(vouched.get(hubOf(source)) ?? [])];
  return keys.length === 0 ? null : keys;
}

/** What these hubs say, in entries that are sealed. */
export function wordOf(hubs: readonly SourceChain[]): HubWord {
  const admitted = new Map<string, Admission[]>();
  const vouched = new Map<string, string[]>();
  const named = new Map<string, string>();
  for (const { entry, isSealed } of hubs.flatMap(({ entries }) => entries)) {
    if (!isSealed) continue;
    const said = (entry.wire.data ?? {}) as Readonly<Record<string, unknown>>;
    const source = text(said["source"]);
    if (entry.wire.type === "tetherline.device.admitted") {
      const one = { key: text(said["key"]) || null, name: text(said["name"]), role: text(said["role"]) };
      admitted.set(source, [...(admitted.get(source) ?? []), one]);
    }
    if (entry.wire.type === "tetherline.hub.named") named.set(entry.wire.source, text(said["name"]));
    if (entry.wire.type === "tetherline.hub.vouched") {
      vouched.set(source, [...(vouched.get(source) ?? []), text(said["key"])]);
    }
  }
  return { admitted, named, vouched };
}

/** The hubs with a trusted key, and those that they vouch for, and so on. */
export function trustedHubs(hubs: readonly SourceChain[], trust: ReadonlySet<string>): ReadonlySet<string> {
  const trusted = new Set<string>();
  for (;;) {
    const known = trusted.size;
    const word = wordOf(hubs.filter(({ source }) => trusted.has(source)));
    for (const { source, key, entries } of hubs) {
      const isVouched = key !== null && (trust.has(key) || vouchedKeys(source, word)?.includes(key));
      if (isVouched && entries.some(({ isSealed }) => isSealed)) trusted.add(source);
    }
    if (trusted.size === known) return trusted;
  }
}
