import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { custodyAtStart } from "../custody/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import { AS_EXPECTED, outlineOf, parseProcedure } from "../procedure/index.ts";
import type { Applied } from "./applied.ts";
import { ignored } from "./applied.ts";
import { GrowingList } from "./growing-list.ts";
import type { LaidOutProcedure } from "./laid-out-procedure.ts";
import type { Ledger, OpenedWalk } from "./ledger.ts";
import { UNTOUCHED } from "./ledger.ts";
import { walkScenarioOf } from "./scenario-cache.ts";
import { StepTable } from "./step-table.ts";
import { walkWindows } from "./walk-windows.ts";

type OpenedFact = Extract<Fact, { name: "walk.opened" }>;

const read = new WeakMap<object, LaidOutProcedure | Message>();

/**
 * Reads the procedure in an entry, or returns the reason why it cannot be read. The result is cached per entry, so
 * that folding again from the start does not parse again.
 */
function procedureOf(value: unknown): LaidOutProcedure | Message {
  const known = typeof value === "object" && value !== null ? read.get(value) : undefined;
  if (known !== undefined) return known;
  const { procedure, file, findings } = parseProcedure(value);
  const found =
    procedure && file
      ? { file, outline: outlineOf(procedure) }
      : (findings[0]?.message ?? message("walk/empty-procedure"));
  if (typeof value === "object" && value !== null) read.set(value, found);
  return found;
}

/** Returns the ledger of a walk that has just been opened. The entry is ignored when its procedure cannot be read. */
export function openWalk(entry: Entry, fact: OpenedFact): Applied {
  const procedure = procedureOf(fact.procedure);
  if ("key" in procedure) return ignored(message("walk/unusable-procedure", { why: procedure }));
  const { outline } = procedure;
  const opened: OpenedWalk = {
    walk: entry.walk,
    at: entry.at,
    procedure,
    mode: fact.mode,
    plannedStart: fact.plannedStart,
    light: fact.light ?? null,
    names: new Map(Object.entries(fact.names ?? {})),
  };
  const scenario = walkScenarioOf(outline, AS_EXPECTED);
  const firstOf = (lane: number) => outline.steps[scenario.network.lanes[lane]?.[0] ?? -1]?.step.id ?? null;
  const ledger: Ledger = {
    opened,
    inForce: procedure,
    light: opened.light,
    amendments: [],
    amendmentsSeen: [],
    notBegunBefore: new Map(),
    phase: "prepared",
    petZero: null,
    closed: null,
    reopenings: [],
    outcomes: AS_EXPECTED,
    decidedAt: new Map(),
    ...scenario,
    windows: walkWindows({ light: opened.light, inForce: procedure }, fact.plannedStart),
    steps: StepTable.filled(
      outline.steps.map(({ step }) => step.id),
      UNTOUCHED,
    ),
    lanes: outline.crew.map((_, lane) => ({ next: firstOf(lane), free: null, status: "ready" })),
    custody: custodyAtStart(outline.procedure),
    decisions: [],
    settled: new Map(),
    moves: GrowingList.of(),
    holds: [],
    notes: GrowingList.of(),
    keptWatches: GrowingList.of(),
    readings: GrowingList.of(),
    stateSettings: [],
    alerts: { raised: [], seen: [] },
    surprises: GrowingList.of(),
    deviations: [],
  };
  return { ledger, ignored: null };
}
