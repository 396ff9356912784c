import type { Entry, Role } from "../log/index.ts";
import { deviceOf, ROLES, roleRefusal } from "../log/index.ts";
import type { Admission, HubWord } from "./hub-word.ts";
import { isHub, trustedHubs, vouchedKeys, wordOf } from "./hub-word.ts";
import type { Judging, SourceChain } from "./source-chain.ts";
import { sourceChain } from "./source-chain.ts";
import type { SealFinding } from "./verification.ts";

/** The chains of all sources. Hubs come first: the key of a device that does not name it is what a hub admitted it with. */
export function chainsOf(
  bySource: ReadonlyMap<string, readonly Entry[]>,
  trust: ReadonlySet<string>,
  judging: Judging,
) {
  const chains = new Map<string, SourceChain>();
  for (const [source, entries] of bySource) {
    if (isHub(source)) chains.set(source, sourceChain(source, entries, null, judging));
  }
  const hubs = [...chains.values()];
  const trusted = trustedHubs(hubs, trust);
  const isEvidence = evidence([...trust], trusted);
  const word = wordOf(hubs.filter(({ source }) => isEvidence(source)));
  for (const [source, entries] of bySource) {
    if (isHub(source)) continue;
    chains.set(source, sourceChain(source, entries, admittedKeys(source, word)?.at(-1) ?? null, judging));
  }
  return { chains, word, trusted };
}

/** Whose word counts: that of trusted hubs, or, where nobody is to be trusted, that of every hub. */
export const evidence = (trust: readonly string[], trusted: ReadonlySet<string>) => (source: string) =>
  trust.length === 0 || trusted.has(source);

/** As what a source was admitted last, or the device that it belongs to. */
export function admissionOf(source: string, word: HubWord): Admission | null {
  return admissionsOf(source, word).at(-1) ?? null;
}

/** The keys that a source was admitted with, or its device; `null` where it was admitted with none. */
function admittedKeys(source: string, word: HubWord): readonly string[] | null {
  const keys = admissionsOf(source, word).flatMap(({ key }) => key ?? []);
  return keys.length === 0 ? null : keys;
}

/** Whether a hub says that it took entries of a source without seals, so that there may have been none. */
function isTakenUnsealed(source: string, word: HubWord): boolean {
  return admissionsOf(source, word).some(({ key }) => key === null);
}

function admissionsOf(source: string, { admitted }: HubWord): readonly Admission[] {
  return admitted.get(source) ?? admitted.get(deviceOf(source)) ?? [];
}

/** What there is against the key of a source. */
export function keyFindings(
  chain: SourceChain,
  word: HubWord,
  trusted: ReadonlySet<string>,
): readonly SealFinding[] {
  const { source, key, entries, hasSeals } = chain;
  const known = isHub(source) ? vouchedKeys(source, word) : admittedKeys(source, word);
  if (known && !hasSeals && entries.length > 0 && !isTakenUnsealed(source, word))
    return [{ kind: "seals-stripped", source, number: null }];
  const found: SealFinding[] = [];
  // A seal that does not fit is said to be one.
  const unsealed = entries.find(
    ({ entry, isSealed }) => !isSealed && (key === null || entry.wire["seal"] === undefined),
  );
  if (known && key !== null && !known.includes(key)) found.push({ kind: "other-key", source, number: null });
  if (unsealed) found.push({ kind: "unsealed", source, number: unsealed.number });
  const isVouched = isHub(source) ? trusted.has(source) : trusted.size > 0 && known !== null;
  if (!isVouched && entries.length > 0) found.push({ kind: "nobody-vouches", source, number: null });
  const role = admissionOf(source, word)?.role;
  if (isRole(role)) {
    const beyond = entries.find(({ entry }) => roleRefusal(entry, role, deviceOf(source)) !== null);
    if (beyond) found.push({ kind: "other-role", source, number: beyond.number });
  }
  return found;
}

const isRole = (role: string | undefined): role is Role => ROLES.some((one) => one === role);
