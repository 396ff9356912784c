import type { Entry } from "../log/index.ts";
import { base64urlOf } from "./base64url.ts";
import { carriedSeals } from "./carried-seals.ts";
import { linkOf, priorOf } from "./link-of.ts";
import type { SealFits } from "./seal-fits.ts";
import { sealFits, sealKeyOf } from "./seal-fits.ts";
import type { LinkedEntry } from "./tally.ts";
import type { SealFinding, SealFindingKind } from "./verification.ts";

/** How an entry stands to the key of its source. */
type Standing = "sealed" | "unsealed" | "unknown" | "bad";

interface Judged {
  readonly entry: Entry;
  readonly number: number;
  /** `null` for an entry without a canonical form. */
  readonly link: Uint8Array | null;
  readonly standing: Standing;
}

/** The entries of one source, held against its own key and against one another. */
export interface SourceChain {
  readonly source: string;
  /** The key in base64url; `null` where none is known. */
  readonly key: string | null;
  /** One entry for each number, in rising order: of several the one with a seal that fits. */
  readonly entries: readonly (LinkedEntry & { readonly isSealed: boolean })[];
  readonly findings: readonly SealFinding[];
  /** Whether any entry carries a seal, one that fits or not. */
  readonly hasSeals: boolean;
  /** The numbers under which two histories are. */
  readonly forks: ReadonlySet<number>;
}

/** How seals are looked at. */
export interface Judging {
  /** True for one look a run, which is what {@link carriedSeals} tells. */
  readonly isQuick: boolean;
  /** Called for each entry when its seal was looked at, or need not be. */
  readonly onJudged?: () => void;
  /** A faster account of seals than {@link sealFits}. */
  readonly fits?: SealFits;
  /** The link of an entry, where it was worked out before. */
  readonly linkOf?: typeof linkOf;
}

/** The number of an entry in the sequence of its source. */
export const numberOf = ({ wire }: Entry): number => Number(wire.sequence);

/**
 * Holds the entries of one source and walk against the key that the first sealed one names; where none does, against `admitted`, the key that a hub
 * admitted the source with.
 */
export function sourceChain(
  source: string,
  entries: readonly Entry[],
  admitted: string | null,
  { isQuick, onJudged, fits = sealFits, linkOf: linkFor = linkOf }: Judging,
): SourceChain {
  const findings: SealFinding[] = [];
  const find = (kind: SealFindingKind, number: number | null) => findings.push({ kind, source, number });
  const named = entries.filter(({ wire }) => wire["sealkey"] !== undefined);
  const keys = new Set(named.map(({ wire }) => String(wire["sealkey"])));
  const first = named.reduce<Entry | null>(
    (least, entry) => (least === null || numberOf(entry) < numberOf(least) ? entry : least),
    null,
  );
  const written = first ? String(first.wire["sealkey"]) : admitted;
  const key = written === null ? null : sealKeyOf(written);
  if (first && (keys.size > 1 || key === null)) find("other-key", numberOf(first));
  const linked = entries.map((entry) => ({ entry, number: numberOf(entry), link: linkFor(entry.wire) }));
  const carried = isQuick && key ? carriedSeals(linked, key, fits) : NONE;
  const judged = new Map<number, Judged[]>();
  for (const { entry, number, link } of linked) {
    const at = judged.get(number) ?? [];
    judged.set(number, at);
    at.push({
      entry,
      number,
      link,
      standing: carried.has(entry) ? "sealed" : standingOf(entry, link, key, fits),
    });
    onJudged?.();
  }
  // An id that stands under two numbers is one entry and a forgery of it, and no number is lower than 1.
  const numbers = new Map<string, number>();
  for (const entry of entries) {
    const number = numberOf(entry);
    const other = numbers.get(entry.wire.id);
    if (other !== undefined && other !== number) find("forged-twin", number);
    numbers.set(entry.wire.id, number);
    if (number < 1) find("does-not-follow", number);
  }
  const forks = new Set<number>();
  const chain: Judged[] = [];
  for (const number of [...judged.keys()].sort((a, b) => a - b)) {
    const twins = statementsOf(judged.get(number) ?? []);
    const kept = chosenOf(twins, chain.at(-1));
    const sealed = twins.filter(({ standing }) => standing === "sealed").length;
    if (sealed > 1) {
      forks.add(number);
      find("two-histories", number);
    } else if (twins.length > 1) find(key === null ? "unsealed" : "forged-twin", number);
    if (kept.standing === "bad") find("seal-does-not-fit", number);
    const before = chain.at(-1);
    const expected = before ? before.number + 1 : 1;
    if (number > expected) find("missing", expected);
    else if (before?.link && !follows(kept, before.link)) {
      find(
        kept.standing === "sealed" && before.standing === "sealed" ? "two-histories" : "does-not-follow",
        number,
      );
    }
    chain.push(kept);
  }
  return {
    source,
    key: key && base64urlOf(key),
    entries: chain.flatMap(({ entry, number, link, standing }) =>
      link ? { entry, number, link, isSealed: standing === "sealed" } : [],
    ),
    findings,
    hasSeals: entries.some(({ wire }) => wire["seal"] !== undefined),
    forks,
  };
}

const NONE: ReadonlySet<Entry> = new Set();

function standingOf(
  { wire }: Entry,
  link: Uint8Array | null,
  key: Uint8Array | null,
  fits: SealFits,
): Standing {
  if (wire["seal"] === undefined) return link ? "unsealed" : "bad";
  if (!link) return "bad";
  if (!key) return "unknown";
  return fits(link, wire["seal"], key) ? "sealed" : "bad";
}

const BEST: readonly Standing[] = ["sealed", "unsealed", "unknown", "bad"];

/** Of entries that are one statement the one with the best seal ([SEL8]); different statements stay apart. */
function statementsOf(judged: readonly Judged[]): readonly Judged[] {
  if (judged.length === 1) return judged;
  const byLink = new Map<string, Judged>();
  for (const one of judged) {
    const name = one.link ? base64urlOf(one.link) : "";
    const other = byLink.get(name);
    if (!other || BEST.indexOf(one.standing) < BEST.indexOf(other.standing)) byLink.set(name, one);
  }
  return [...byLink.values()];
}

/** Of different entries of one number the one that is sealed and follows the entry before it. */
function chosenOf(twins: readonly Judged[], before: Judged | undefined): Judged {
  const [best] = twins.toSorted(
    (a, b) =>
      BEST.indexOf(a.standing) - BEST.indexOf(b.standing) ||
      Number(!follows(a, before?.link ?? null)) - Number(!follows(b, before?.link ?? null)),
  );
  if (!best) throw new RangeError("a number without an entry");
  return best;
}

/** Whether an entry says that it follows the one before it. An entry that was not sealed may say nothing, as those of old logs. */
function follows({ entry: { wire }, standing }: Judged, before: Uint8Array | null): boolean {
  if (!before) return true;
  const prior = wire["prior"];
  // The first entry that is sealed names the key, and may come behind others that are not.
  if (prior === undefined) return standing !== "sealed" || wire["sealkey"] !== undefined;
  return prior === priorOf(before);
}
