import type { Message, Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry } from "../log/index.ts";
import { compareEntries, keyOf } from "../log/index.ts";

/** Which entries are struck, and which strikes have no effect. */
export interface Strikes {
  /** Key of each struck entry → the strike that counts. */
  readonly struck: ReadonlyMap<string, Entry>;
  /** Key of each strike without effect → why. */
  readonly idle: ReadonlyMap<string, Message>;
  /** Keys of all entries that any strike names, whether they are in the log or not. */
  readonly targets: ReadonlySet<string>;
}

interface Strike {
  readonly entry: Entry;
  /** Key of the entry it strikes. */
  readonly target: string;
}

/** The strike an entry is; `null` when it is none. */
function strikeOf(entry: Entry): Strike | null {
  const { fact } = entry.read;
  return fact?.name === "entry.struck" ? { entry, target: `${fact.source} ${fact.id}` } : null;
}

/**
 * Which entries of a log are struck. A strike may only strike what stands before it in the order; a strike that is
 * itself struck has no effect; the opening of the walk cannot be struck; of two strikes of one entry the first counts.
 */
export function strikesOf(
  strikeEntries: readonly Entry[],
  find: (key: string) => Entry | undefined,
): Strikes {
  const idle = new Map<string, Message>();
  const active: Strike[] = [];
  const undone = new Set<string>();
  const strikes = strikeEntries.flatMap((entry) => strikeOf(entry) ?? []);
  // From the last to the first, so that whether a strike is itself struck is known when its turn comes.
  for (const strike of strikes.toReversed()) {
    const key = keyOf(strike.entry);
    if (undone.has(key)) continue;
    const target = find(strike.target);
    if (!target) idle.set(key, message("walk/strikes-nothing"));
    else if (compareEntries(target, strike.entry) >= 0) idle.set(key, message("walk/strikes-later"));
    else if (target.read.fact?.name === "walk.opened") idle.set(key, message("walk/strikes-opening"));
    else {
      active.unshift(strike);
      undone.add(strike.target);
    }
  }
  const struck = new Map<string, Entry>();
  for (const { entry, target } of active) {
    if (struck.has(target)) idle.set(keyOf(entry), message("walk/already-struck"));
    else struck.set(target, entry);
  }
  return { struck, idle, targets: new Set(strikes.map(({ target }) => target)) };
}

/** Why an entry was struck: a message of ours, or what somebody wrote, which is empty when nobody did. */
export function strikeReason({ read: { fact } }: Entry): Said {
  if (fact?.name !== "entry.struck") return "";
  return fact.undone ? message("walk/undone") : (fact.reason ?? "");
}
