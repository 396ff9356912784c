import type { Entry } from "../log/index.ts";
import { base64urlOf } from "./base64url.ts";
import { priorOf } from "./link-of.ts";
import type { SealFits } from "./seal-fits.ts";

interface Linked {
  readonly entry: Entry;
  readonly number: number;
  readonly link: Uint8Array | null;
}

/**
 * The entries of one source whose statement a seal stands for: those of each run of sealed entries, each following the one before it, whose last seal
 * fits. That seal is over a statement that names the link before it, and so on back, so that one look a run tells what every look would tell of the
 * statements. A seal that was spoiled by itself, within a run, is not seen.
 */
export function carriedSeals(linked: readonly Linked[], key: Uint8Array, fits: SealFits): ReadonlySet<Entry> {
  const byNumber = new Map<number, Linked[]>();
  for (const one of linked) {
    const at = byNumber.get(one.number) ?? [];
    byNumber.set(one.number, at);
    at.push(one);
  }
  const carried = new Set<Entry>();
  let run: Linked[] = [];
  let last: Linked | null = null;
  const close = () => {
    const number = last?.number;
    const isSealed = run.some(
      ({ entry, number: own, link }) => own === number && link && fits(link, entry.wire["seal"], key),
    );
    if (isSealed) for (const { entry } of run) carried.add(entry);
    run = [];
    last = null;
  };
  for (const number of [...byNumber.keys()].sort((a, b) => a - b)) {
    const at = byNumber.get(number) ?? [];
    const one = soleStatement(at);
    if (!one || !continues(one, last)) close();
    if (one) {
      run.push(...at);
      last = one;
    }
  }
  close();
  return carried;
}

/** The statement of a number, where there is one only and every writing of it has a seal; else `null`. */
function soleStatement(at: readonly Linked[]): Linked | null {
  const [first] = at;
  if (!first?.link) return null;
  if (at.length === 1) return first.entry.wire["seal"] === undefined ? null : first;
  const name = base64urlOf(first.link);
  const isSole = at.every(
    ({ entry, link }) => entry.wire["seal"] !== undefined && link !== null && base64urlOf(link) === name,
  );
  return isSole ? first : null;
}

const continues = ({ entry, number }: Linked, before: Linked | null): boolean =>
  before?.link != null && number === before.number + 1 && entry.wire["prior"] === priorOf(before.link);
