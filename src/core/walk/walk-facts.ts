import { message } from "../../words/index.ts";
import { crewHolding, moved } from "../custody/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { deviceOf } from "../log/index.ts";
import type { Location } from "../procedure/index.ts";
import { ofSeconds } from "../units/index.ts";
import type { Applied } from "./applied.ts";
import { applied, ignored } from "./applied.ts";
import { lanesBegun, lanesRewound } from "./lane-progress.ts";
import type { EnteredSurprise, Ledger } from "./ledger.ts";
import { noStep } from "./no-step.ts";
import { outsideOf } from "./outside-crew.ts";
import { RefusedCommandError } from "./refused-command-error.ts";
import { walkScenarioOf } from "./scenario-cache.ts";
import { settledBy, settledOf } from "./settled-decision.ts";
import type { WalkCommand } from "./walk-machine.ts";
import { phaseAfter, REOPENINGS } from "./walk-machine.ts";
import { walkWindows } from "./walk-windows.ts";

/** The value of a state that is held by a crew member, while nobody holds it. */
const FREE = "free";

type FactNamed<Name extends Fact["name"]> = Extract<Fact, { name: Name }>;

/**
 * Returns the ledger with the change and with the phase after the command. Throws a {@link RefusedCommandError} when
 * the phase refuses the command; callers must check that first.
 */
function commanded(ledger: Ledger, command: WalkCommand, change: Partial<Ledger>): Applied {
  const phase = phaseAfter(ledger.phase, command);
  if (phase === null) throw new RefusedCommandError(`a walk that is ${ledger.phase} cannot ${command}`);
  return applied({ ...ledger, ...change, phase });
}

/** `clock.started`: the time of the entry becomes PET 0. */
export function clockStarted(ledger: Ledger, entry: Entry): Applied {
  return commanded(ledger, "start", {
    petZero: entry.at,
    windows: walkWindows(ledger, entry.at),
    lanes: lanesBegun(ledger),
  });
}

/** `hold.called`: a hold begins at the time of the entry. */
export function holdCalled(ledger: Ledger, entry: Entry, fact: FactNamed<"hold.called">): Applied {
  return commanded(ledger, "hold", {
    holds: [
      ...ledger.holds,
      { from: entry.at, until: null, reason: fact.reason ?? "", actor: entry.wire.actor ?? null },
    ],
  });
}

/** `hold.lifted`: the hold in force ends at the time of the entry. */
export function holdLifted(ledger: Ledger, entry: Entry): Applied {
  return commanded(ledger, "lift", { holds: endHold(ledger, entry) });
}

/**
 * `walk.closed`: closes the walk, and ends the hold in force if there is one. A walk that is called complete while
 * somebody is not known to be at a refuge is closed all the same, and that is a deviation ([OFF5]).
 */
export function walkClosed(ledger: Ledger, entry: Entry, fact: FactNamed<"walk.closed">): Applied {
  const { phase, deviations } = ledger;
  if (phase === "closed") throw new RefusedCommandError("a walk that is closed cannot close");
  const outside = fact.end === "complete" ? outsideOf(ledger) : [];
  const crew = outside.map((one) => ledger.inForce.outline.crewMember(one.crew)?.call ?? one.crew);
  const text = message("walk/closed-outside", { crew });
  return commanded(ledger, "close", {
    closed: {
      at: entry.at,
      end: fact.end,
      reason: fact.reason ?? "",
      stuck: fact.stuck ?? false,
      before: phase,
    },
    holds: endHold(ledger, entry),
    deviations:
      crew.length === 0
        ? deviations
        : [...deviations, { kind: "closed-outside", step: null, record: null, text, at: entry.at }],
  });
}

/**
 * `walk.reopened`: the closed walk goes on as it was, and its PET as if it had not been closed ([OFF5]). A hold that
 * the closing ended is in force again.
 */
export function walkReopened(ledger: Ledger, entry: Entry, fact: FactNamed<"walk.reopened">): Applied {
  const { closed, holds } = ledger;
  if (!closed) return ignored(message("walk/not-closed"));
  const reopened = { at: entry.at, actor: entry.wire.actor ?? null, reason: fact.reason, closed };
  const last = holds.length - 1;
  return commanded(ledger, REOPENINGS[closed.before], {
    closed: null,
    reopenings: [...ledger.reopenings, reopened],
    holds:
      closed.before === "held"
        ? holds.map((hold, index) => (index === last ? { ...hold, until: null } : hold))
        : holds,
  });
}

function endHold(ledger: Ledger, { at }: Entry): Ledger["holds"] {
  return ledger.holds.map((hold) =>
    hold.until === null ? { ...hold, until: at > hold.from ? at : hold.from } : hold,
  );
}

/**
 * `decision.taken`: the steps of its branches become active or inactive. A later entry can change the outcome, unless the lead
 * settled it ([WLK5]).
 */
export function decisionTaken(ledger: Ledger, entry: Entry, fact: FactNamed<"decision.taken">): Applied {
  const { outline } = ledger.inForce;
  const made = outline.decision(fact.decision);
  if (!made) return ignored(message("walk/no-decision", { decision: fact.decision }));
  if (!made.decision.outcomes.includes(fact.outcome)) {
    return ignored(message("walk/no-outcome", { outcome: fact.outcome, decision: fact.decision }));
  }
  if (!ledger.network.activity.active[made.madeBy.index]) {
    return ignored(message("walk/decider-not-performed", { step: made.madeBy.step.id }));
  }
  const was = ledger.outcomes.get(fact.decision) ?? null;
  const settled = settledOf(ledger, fact.decision);
  if (settled && !fact.settles && fact.outcome !== was) {
    return ignored(message("walk/decision-settled", { outcome: settled.outcome }));
  }
  if (was === fact.outcome) {
    return fact.settles && !settled
      ? applied(settledBy(ledger, entry, fact))
      : ignored(message("walk/already-decided"));
  }
  const outcomes = new Map(ledger.outcomes).set(fact.decision, fact.outcome);
  const decidedAt = new Map(ledger.decidedAt).set(fact.decision, entry.at);
  const { decision, outcome } = fact;
  const decisions = [
    ...ledger.decisions,
    {
      at: entry.at,
      actor: entry.wire.actor ?? null,
      device: deviceOf(entry.wire.source),
      decision,
      outcome,
      was,
    },
  ];
  const next = { ...ledger, outcomes, decidedAt, decisions, ...walkScenarioOf(outline, outcomes) };
  const taken = { ...next, lanes: lanesRewound(next, next.steps) };
  return applied(fact.settles ? settledBy(taken, entry, fact) : taken);
}

/** `item.moved`: an item was found at a different location from the one that the steps imply. */
export function itemMoved(ledger: Ledger, entry: Entry, fact: FactNamed<"item.moved">): Applied {
  const { outline } = ledger.inForce;
  if (!outline.item(fact.item)) return ignored(message("walk/no-item", { item: fact.item }));
  if (!isKnown(ledger, fact.to)) return ignored(message("walk/moved-nowhere"));
  const custody = moved(ledger.custody, fact.item, fact.to);
  if (!custody) return ignored(message("walk/inside-itself", { item: fact.item }));
  return applied({
    ...ledger,
    custody,
    moves: ledger.moves.and({
      at: entry.at,
      item: fact.item,
      to: fact.to,
      step: null,
      actor: entry.wire.actor ?? null,
      reason: fact.reason,
    }),
  });
}

function isKnown({ inForce: { outline } }: Ledger, location: Location): boolean {
  if ("place" in location) return outline.place(location.place) !== null;
  if ("item" in location) return outline.item(location.item) !== null;
  return crewHolding(location).every((crew) => outline.crewMember(crew) !== null);
}

/** `state.set`: a state was found to have another value than the steps imply. */
export function stateSet(ledger: Ledger, entry: Entry, fact: FactNamed<"state.set">): Applied {
  const { outline } = ledger.inForce;
  const state = outline.procedure.states.find(({ id }) => id === fact.state);
  if (!state) return ignored(message("walk/no-state", { state: fact.state }));
  const { values } = state;
  const isValue =
    values === "crew" ? fact.value === FREE || outline.lane(fact.value) >= 0 : values.includes(fact.value);
  if (!isValue) return ignored(message("walk/no-state-value", { state: fact.state, value: fact.value }));
  const { reason, value } = fact;
  const one = { at: entry.at, actor: entry.wire.actor ?? null, state: state.id, value, reason };
  return applied({ ...ledger, stateSettings: [...ledger.stateSettings, one] });
}

/** `supply.read`: stores a reading of a supply. */
export function supplyRead(ledger: Ledger, entry: Entry, fact: FactNamed<"supply.read">): Applied {
  const { supplies } = ledger.inForce.outline.procedure;
  if (!supplies.some(({ crew, id }) => crew === fact.crew && id === fact.supply)) {
    return ignored(message("walk/no-supply", { crew: fact.crew, supply: fact.supply }));
  }
  const reading = { at: entry.at, crew: fact.crew, supply: fact.supply, value: fact.value };
  return applied({ ...ledger, readings: ledger.readings.and(reading) });
}

/** `note.made`: stores a note on a step or on the walk. */
export function noteMade(ledger: Ledger, entry: Entry, fact: FactNamed<"note.made">): Applied {
  if (fact.step !== undefined && !ledger.inForce.outline.step(fact.step))
    return ignored(noStep(ledger, fact.step));
  const note = { at: entry.at, actor: entry.wire.actor ?? null, text: fact.text, step: fact.step ?? null };
  return applied({ ...ledger, notes: ledger.notes.and(note) });
}

/** `watch.kept`: stores that a watch was kept. */
export function watchKept(ledger: Ledger, entry: Entry, fact: FactNamed<"watch.kept">): Applied {
  const { watches } = ledger.inForce.outline.procedure;
  if (!watches.some(({ id }) => id === fact.watch))
    return ignored(message("walk/no-watch", { watch: fact.watch }));
  return applied({
    ...ledger,
    keptWatches: ledger.keptWatches.and({ at: entry.at, watch: fact.watch, due: ofSeconds(fact.due) }),
  });
}

/**
 * `surprise.laid` and `surprise.fired`: stores a surprise as it is written, which changes nothing else: what it brings about is
 * entered as what the crew did ([TRN1]). A walk that is no rehearsal takes none, and neither does one that is closed.
 */
export function surpriseEntered(
  ledger: Ledger,
  entry: Entry,
  fact: FactNamed<"surprise.laid" | "surprise.fired">,
): Applied {
  if (ledger.opened.mode !== "rehearsal") return ignored(message("walk/surprise-in-live"));
  if (ledger.phase === "closed") return ignored(message("walk/is-closed"));
  const entered: EnteredSurprise = {
    at: entry.at,
    actor: entry.wire.actor ?? null,
    isFired: fact.name === "surprise.fired",
    obscured: fact.surprise,
  };
  return applied({ ...ledger, surprises: ledger.surprises.and(entered) });
}
