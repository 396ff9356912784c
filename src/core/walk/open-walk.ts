import { inWords } from "../../words/index.ts";
import { custodyAtStart } from "../custody/index.ts";
import type { Entry, Fact } from "../log/index.ts";
import type { Procedure, ProcedureFile } from "../procedure/index.ts";
import { AS_EXPECTED, outlineOf, parseProcedure } from "../procedure/index.ts";
import type { Applied } from "./applied.ts";
import { ignored } from "./applied.ts";
import type { Ledger, Opened } from "./ledger.ts";
import { UNTOUCHED } from "./ledger.ts";
import { walkScenarioOf } from "./scenario-cache.ts";
import { walkWindows } from "./walk-windows.ts";

type OpenedFact = Extract<Fact, { name: "walk.opened" }>;

const parsed = new WeakMap<object, ReturnType<typeof parseProcedure>>();

/** Reads the procedure an entry carries, once per entry: folding again from the start must not cost a parse. */
function procedureOf(value: unknown): { procedure: Procedure; file: ProcedureFile } | string {
  const read = (typeof value === "object" && value !== null && parsed.get(value)) || parseProcedure(value);
  if (typeof value === "object" && value !== null) parsed.set(value, read);
  const { procedure, file, findings } = read;
  return procedure && file ? { procedure, file } : findings[0] ? inWords(findings[0].message) : "it is empty";
}

/** The ledger of a walk that has just been opened; ignored when the procedure in the entry cannot be read. */
export function openWalk(entry: Entry, fact: OpenedFact): Applied {
  const read = procedureOf(fact.procedure);
  if (typeof read === "string") return ignored(`its procedure cannot be used: ${read}`);
  const outline = outlineOf(read.procedure);
  const opened: Opened = {
    walk: entry.walk,
    at: entry.at,
    file: read.file,
    outline,
    mode: fact.mode,
    plannedStart: fact.plannedStart,
    light: fact.light ?? null,
    names: new Map(Object.entries(fact.names ?? {})),
  };
  const ledger: Ledger = {
    opened,
    phase: "prepared",
    petZero: null,
    closed: null,
    outcomes: AS_EXPECTED,
    decidedAt: new Map(),
    ...walkScenarioOf(outline, AS_EXPECTED),
    windows: walkWindows(opened, fact.plannedStart),
    steps: outline.steps.map(() => UNTOUCHED),
    lanes: outline.crew.map(() => ({ next: 0, free: null, status: "ready" })),
    custody: custodyAtStart(read.procedure),
    moves: [],
    holds: [],
    notes: [],
    readings: [],
    deviations: [],
  };
  return { ledger, ignored: null };
}
