import type { Message, Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry, FactName } from "../log/index.ts";
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

/** A strike by its key. */
interface Strike {
  readonly key: string;
  /** Key of the entry it strikes. */
  readonly target: string;
}

/**
 * Returns those of the given strikes that have effect, in their order, which must be that of the log. A strike that is
 * itself struck has no effect, and neither has one that `mayStrike` refuses; it is asked once for each strike that is
 * not struck.
 */
export function standingStrikes<One extends Strike>(
  strikes: readonly One[],
  mayStrike: (strike: One) => boolean,
): One[] {
  const struck = new Set<string>();
  // Go backwards, so that it is already known for each strike whether a later one strikes it.
  const standing = strikes.toReversed().filter((strike) => {
    if (struck.has(strike.key) || !mayStrike(strike)) return false;
    struck.add(strike.target);
    return true;
  });
  return standing.reverse();
}

/** Returns why a strike may not strike its target; `null` when it may. */
function whyIdle(strike: Entry, target: Entry | undefined): Message | null {
  if (!target) return message("walk/strikes-nothing");
  if (compareEntries(target, strike) >= 0) return message("walk/strikes-later");
  return target.read.fact?.name === "walk.opened" ? message("walk/strikes-opening") : null;
}

/**
 * Works out which entries of a log are struck. A strike can only strike an entry that comes before it in the log
 * order. A strike that is itself struck has no effect. The opening of a walk cannot be struck. When two strikes name
 * the same entry, the first one counts. A strike under another walk's id, which `isOwn` refuses, strikes nothing.
 */
export function strikesOf(
  strikeEntries: readonly Entry[],
  find: (key: string) => Entry | undefined,
  isOwn: (entry: Entry) => boolean,
): Strikes {
  const idle = new Map<string, Message>();
  const strikes = strikeEntries.flatMap((entry) => {
    const { fact } = entry.read;
    return fact?.name === "entry.struck" ? [{ entry, key: keyOf(entry), target: keyOf({ wire: fact }) }] : [];
  });
  const standing = standingStrikes(strikes, ({ entry, key, target }) => {
    const why = isOwn(entry)
      ? whyIdle(entry, find(target))
      : message("walk/other-walk", { walk: entry.walk });
    if (why) idle.set(key, why);
    return why === null;
  });
  const struck = new Map<string, Entry>();
  for (const { entry, key, target } of standing) {
    if (struck.has(target)) idle.set(key, message("walk/already-struck"));
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

/** The reason that earlier versions wrote when somebody took an entry back right away. */
const UNDONE_REASON = "undone";

/** The name of a fact as keys of messages have it. */
type Dashed<Name extends string> = Name extends `${infer Of}.${infer What}` ? `${Of}-${What}` : Name;

const dashed = <Name extends string>(name: Name) => name.replace(".", "-") as Dashed<Name>;

/** What an entry is, by the name of its fact; `null` for one that is not known here. */
export const factMessage = (name: FactName | null): Message => message(`struck/${dashed(name ?? "unknown")}`);

/** Returns a sentence that says what a strike took back, by the name of the fact, and why. */
export function strikeText(name: FactName | null, strike: Entry): Message {
  const what = factMessage(name);
  const { fact } = strike.read;
  if (fact?.name === "entry.struck" && (fact.undone || fact.reason === UNDONE_REASON))
    return message("walk/taken-back", { what });
  const reason = strikeReason(strike);
  return reason ? message("walk/struck-because", { what, reason }) : message("walk/struck", { what });
}
