import type { Message, Said } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { keyOf } from "../log/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Duration, Instant } from "../units/index.ts";
import { between } from "../units/index.ts";
import type { Folded, Ledger } from "../walk/index.ts";
import type { Surprise } from "./surprises-file.ts";

/** An entry by which somebody took a surprise up: they saw its alert, said something, or did something about it. */
export interface SurpriseSign {
  readonly at: Duration;
  /** Who entered it; `null` when the entry names nobody. */
  readonly actor: string | null;
  readonly what: Message;
  /** What they gave as a reason or wrote; empty for nothing. */
  readonly said: Said;
}

/** What a surprise is about, by id. */
interface Concern {
  readonly steps: ReadonlySet<string>;
  /** Ids of items, supplies and decisions, which its alerts name. */
  readonly things: ReadonlySet<string>;
}

function concernOf({ does }: Surprise, outline: Outline): Concern {
  const stepsBy = (isMeant: (step: Outline["steps"][number]["step"]) => boolean) =>
    new Set<string>(outline.steps.flatMap(({ step }) => (isMeant(step) ? [step.id] : [])));
  const nothing = new Set<string>();
  switch (does.kind) {
    case "stretch":
    case "record":
      return { steps: new Set([does.step]), things: nothing };
    case "missing":
      return {
        steps: stepsBy(({ moves }) => moves.some(({ item }) => item === does.item)),
        things: new Set([does.item]),
      };
    case "silent":
      return { steps: stepsBy(({ by }) => by.includes(does.crew)), things: nothing };
    case "contact": {
      const outside = outline.crew.filter(({ station }) => station === "outside").map(({ id }) => id);
      return { steps: stepsBy(({ by }) => by.some((crew) => outside.includes(crew))), things: nothing };
    }
    case "supply":
      return { steps: nothing, things: new Set([does.supply, "turn-back"]) };
    case "decision": {
      const made = outline.decision(does.decision)?.madeBy.step.id;
      return { steps: new Set(made === undefined ? [] : [made]), things: new Set([does.decision]) };
    }
  }
}

/**
 * The entries from when a surprise came until `until` by which somebody took it up, in order. What a played crew enters by itself
 * is none; nor is an entry about something else, or one that was struck or had no effect ([TRN3]).
 */
export function signsOf(
  surprise: Surprise,
  folded: Folded,
  ledger: Ledger,
  span: { readonly from: Instant; readonly until: Instant },
): readonly SurpriseSign[] {
  const concern = concernOf(surprise, ledger.inForce.outline);
  const idle = new Set(folded.ignored.map(({ source, id }) => keyOf({ wire: { source, id } })));
  const petZero = ledger.petZero ?? ledger.opened.at;
  let isFirstValue = surprise.does.kind === "record";
  return folded.entries.flatMap((entry): SurpriseSign[] => {
    const at = folded.timeOf(entry);
    const key = keyOf(entry);
    if (at < span.from || at > span.until || folded.struck.has(key) || idle.has(key)) return [];
    const { fact } = entry.read;
    if (!fact) return [];
    if (isFirstValue && takesRecord(surprise, fact)) {
      isFirstValue = false;
      return [];
    }
    const sign = signIn(surprise, concern, fact, entry);
    return sign === null ? [] : [{ ...sign, at: between(petZero, at), actor: entry.wire.actor ?? null }];
  });
}

const takesRecord = ({ does }: Surprise, fact: Fact): boolean =>
  does.kind === "record" &&
  fact.name === "record.taken" &&
  fact.step === does.step &&
  fact.record === does.record;

const sign = (what: Message, said: Said = ""): Pick<SurpriseSign, "what" | "said"> => ({ what, said });

function signIn(
  surprise: Surprise,
  { steps, things }: Concern,
  fact: Fact,
  { wire }: Entry,
): Pick<SurpriseSign, "what" | "said"> | null {
  const { does } = surprise;
  switch (fact.name) {
    case "alert.seen": {
      const named = fact.alert.split(" ");
      const isAbout = named.some((part) => steps.has(part) || things.has(part));
      const isOther = does.kind === "supply" && named[0] === "supply" && !named.includes(does.crew);
      return isAbout && !isOther ? sign(message("surprise/did-see-alert")) : null;
    }
    case "note.made": {
      const isCrews = does.kind === "missing" && fact.text === does.says;
      const isAbout = fact.step === undefined || steps.has(fact.step);
      return isAbout && !isCrews ? sign(message("surprise/did-note"), fact.text) : null;
    }
    case "hold.called":
      return sign(message("surprise/did-hold"), fact.reason ?? "");
    case "plan.amended":
      return sign(message("surprise/did-amend"), fact.reason);
    case "walk.closed":
      return fact.end === "complete" ? null : sign(message("surprise/did-end"), fact.reason ?? "");
    case "step.skipped":
      return steps.has(fact.step) && !fact.leftOut ? sign(message("surprise/did-skip"), fact.reason) : null;
    case "step.reopened":
      return steps.has(fact.step) ? sign(message("surprise/did-reopen"), fact.reason) : null;
    case "record.taken":
      return takesRecord(surprise, fact)
        ? sign(message("surprise/did-record", { value: String(fact.value) }))
        : null;
    case "item.moved":
      return things.has(fact.item) ? sign(message("surprise/did-move"), fact.reason) : null;
    case "supply.read":
      return does.kind === "supply" &&
        fact.crew === does.crew &&
        fact.supply === does.supply &&
        // The played crew reads its own supplies.
        wire.actor !== does.crew
        ? sign(message("surprise/did-read", { value: String(fact.value) }))
        : null;
    case "decision.taken":
      return does.kind === "decision" && fact.decision === does.decision && fact.outcome !== does.outcome
        ? sign(message("surprise/did-decide", { outcome: fact.outcome }))
        : null;
    default:
      return null;
  }
}
