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
  /** Keys of all entries that any strike names, including entries that are not in the log. */
  readonly targets: ReadonlySet<string>;
}

interface Strike {
  readonly entry: Entry;
  /** Key of the entry it strikes. */
  readonly target: string;
}

/** Reads an entry as a strike; returns `null` for any other entry. */
function strikeOf(entry: Entry): Strike | null {
  const { fact } = entry.read;
  return fact?.name === "entry.struck" ? { entry, target: `${fact.source} ${fact.id}` } : null;
}

/**
 * Works out which entries of a log are struck. A strike can only strike an entry that comes before it in the log
 * order. A strike that is itself struck has no effect. The opening of a walk cannot be struck. When two strikes name
 * the same entry, the first one counts.
 */
export function strikesOf(
  strikeEntries: readonly Entry[],
  find: (key: string) => Entry | undefined,
): Strikes {
  const idle = new Map<string, Message>();
  const active: Strike[] = [];
  const undone = new Set<string>();
  const strikes = strikeEntries.flatMap((entry) => strikeOf(entry) ?? []);
  // Go backwards, so that it is already known for each strike whether a later one strikes it.
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

/**
 * Returns why an entry was struck: a message of this program, or the text that somebody wrote. The text is empty when
 * nobody wrote one.
 */
export function strikeReason({ read: { fact } }: Entry): Said {
  if (fact?.name !== "entry.struck") return "";
  return fact.undone ? message("walk/undone") : (fact.reason ?? "");
}
