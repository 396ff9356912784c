import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import { compareEntries } from "../../../src/core/log/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { reviewDocument, reviewOf } from "../../../src/core/review/index.ts";
import { inMinutes } from "../../../src/core/units/index.ts";
import type { Folded } from "../../../src/core/walk/index.ts";
import {
  foldLog,
  forecastOf,
  idleAmendmentsOf,
  lastUndoable,
  newerEntriesOf,
  overruledOf,
  planInForce,
  progressOf,
  stateDocument,
  WalkFold,
  walkStateAt,
} from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { copyOf, entryFrom, LogWriter, minute } from "../log-writer.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

/** EV1: a (10), b (10), c (10), z; EV2: p (20), q (10, after b), z. */
const FILE = fileWith(
  [
    task("one", [
      step("a", "ev1", 10, { moves: [{ item: "bag", to: { crew: "ev1" } }] }),
      step("p", "ev2", 20),
      step("b", "ev1", 10, { records: [{ id: "torque" }] }),
    ]),
    task("two", [
      step("c", "ev1", 10),
      step("q", "ev2", 10, {
        after: ["b"],
        decide: { id: "bolt", ask: "Does it turn?", outcomes: ["free", "stuck"], expect: "free" },
      }),
    ]),
    task("spare", [step("extra", "ev2", 5)], { priority: "get-ahead" }),
    task("last", [step("z", ["ev1", "ev2"], 5)]),
  ],
  {
    format: "tetherline.procedure/2",
    limits: { elapsed: "PT60M" },
    places: [{ id: "lock", refuge: true }],
    items: [
      { id: "bag", start: { place: "lock" } },
      { id: "bar", start: { place: "lock" } },
    ],
    contingencies: [{ id: "jam", title: "Jam", tasks: [task("free", [step("pry", "ev1", 7)])] }],
    watches: [{ id: "glove", by: ["ev1"], do: "Look at the gloves", every: "PT10M", from: "a" }],
  },
);

const amended = (log: LogWriter, at: number, ...changes: Change[]) =>
  log.enter("plan.amended", { changes, reason: "late", needs: 2 }, at);

const planOfSteps = ({ inForce }: { inForce: { outline: { steps: readonly { step: { id: string } }[] } } }) =>
  inForce.outline.steps.map(({ step: { id } }) => id);

/** Everything that is shown of a log, as text. */
function shown(folded: Folded): string {
  const at = minute(25);
  const review = reviewOf(folded, at);
  return JSON.stringify([stateDocument(folded, at, inWords), review && reviewDocument(review, inWords)]);
}

describe("an amendment", () => {
  it("[AMD1] changes the procedure in force at its place in the log, and the plan of record stays", () => {
    const log = LogWriter.started(FILE).done(["a", 10]);
    amended(log, 12, { add: step("b2", "ev1", 3), behind: "b" }, { drop: "c" }, { move: "z", behind: "q" });
    const { ledger } = log;
    expect(planOfSteps(ledger)).toEqual(["a", "p", "b", "b2", "q", "z", "extra"]);
    expect(ledger.opened.procedure.outline.steps.map(({ step: { id } }) => id)).toEqual([
      "a",
      "p",
      "b",
      "c",
      "q",
      "extra",
      "z",
    ]);
    expect(
      ledger.amendments.map(({ source, id, actor, reason, steps }) => [source, id, actor, reason, steps]),
    ).toEqual([
      [
        "/devices/iv-tablet",
        "0000000004",
        "iv",
        "late",
        [
          { step: "b2", how: "added" },
          { step: "z", how: "moved" },
          { step: "c", how: "dropped" },
        ],
      ],
    ]);
    expect(log.deviations).toEqual([{ kind: "amended", step: null, text: "The plan was amended: late" }]);
    log.done(["b", 20], ["b2", 23]);
    expect(progressOf(log.ledger, "b2" as never).status).toBe("done");
    expect(log.reasons).toEqual([]);
  });

  it("[AMD1] tells steps that it brought, reassigned and changed apart", () => {
    const log = LogWriter.started(FILE);
    amended(
      log,
      1,
      { bring: "jam", behind: "b" },
      { change: "c", set: { by: ["ev2"] } },
      { change: "q", set: { time: "PT12M" } },
    );
    expect(log.ledger.amendments[0]?.steps).toEqual([
      { step: "pry", how: "brought" },
      { step: "c", how: "reassigned" },
      { step: "q", how: "changed" },
    ]);
  });

  it("[AMD1] may come before the clock is started, and is then the plan that is begun", () => {
    const log = LogWriter.opened(FILE);
    amended(log, -5, { change: "p", set: { time: "PT1M" } }, { add: step("first", "ev2", 2), first: "one" });
    log.enter("clock.started", {}, 0);
    expect(log.ledger.lanes.map(({ next, status }) => [next, status])).toEqual([
      ["a", "waiting"],
      ["first", "waiting"],
      [null, "finished"],
    ]);
    expect(walkStateAt(log.ledger, minute(1)).lanes.map(({ behind }) => behind)).toEqual([0, 0, null]);
  });

  it("[AMD1] keeps the start of a step in work, and lets nothing new have begun before it", () => {
    const log = LogWriter.started(FILE).done(["a", 10]);
    // EV1 is at b since 10; EV2 is done at 15 and waits for b.
    log.done(["p", 15]);
    amended(
      log,
      18,
      { change: "b", set: { time: "PT15M", after: ["p"] } },
      { add: step("n", "ev2", 4), behind: "p" },
    );
    log.done(["b", 26], ["n", 27]);
    const starts = ["b", "n"].map((id) => progressOf(log.ledger, id as never).start);
    expect(starts).toEqual([minute(10), minute(18)]);
    expect(log.deviations.map(({ kind }) => kind)).toEqual(["amended"]);
  });

  it("[AMD1] lets a step that waited begin no sooner than what it waited for was dropped", () => {
    const log = LogWriter.started(FILE).done(["a", 10], ["p", 12]);
    amended(log, 18, { change: "q", unset: ["after"] });
    log.done(["q", 26]);
    expect(progressOf(log.ledger, "q" as never).start).toBe(minute(18));
  });

  it("[AMD2] is what behind is measured against: the rest planned anew from the state at its time", () => {
    const log = LogWriter.started(FILE).done(["a", 16]);
    expect(walkStateAt(log.ledger, minute(16)).lanes[0]?.behind).toBe(6 * 60_000);
    amended(log, 16, { add: step("b2", "ev1", 3), behind: "b" });
    const { ledger } = log;
    expect(walkStateAt(ledger, minute(16)).lanes[0]?.behind).toBe(0);
    expect(walkStateAt(ledger, minute(28)).lanes[0]?.behind).toBe(2 * 60_000);
    expect(planInForce(ledger)?.steps.get("b2" as never)?.finish).toBe(29 * 60_000);
    expect(walkStateAt(ledger, minute(28)).plan.timeline?.course.finish).toBe(35 * 60_000);
    const { before, after } = ledger.amendments[0]?.replanned ?? {};
    expect([before, after].map((course) => course && inMinutes(course.finish))).toEqual([41, 44]);
  });

  it("[OFF1] [AMD1] is taken back whole by undo", () => {
    const log = LogWriter.started(FILE).done(["a", 10]);
    amended(log, 12, { drop: "c" }, { add: step("n", "ev1", 1), behind: "b" });
    const last = lastUndoable(log.folded, "/devices/iv-tablet");
    expect(last?.map(({ read }) => read.fact?.name)).toEqual(["plan.amended"]);
    log.strike(0, 13).done(["n", 14]);
    expect(planOfSteps(log.ledger)).toEqual(["a", "p", "b", "c", "q", "extra", "z"]);
    expect(log.reasons).toEqual(['there is no step "n"']);
    expect(log.deviations.map(({ text }) => text)).toEqual(["Struck: an amendment of the plan"]);
  });

  it("[AMD4] is seen once by each device", () => {
    const log = LogWriter.started(FILE);
    amended(log, 1, { drop: "c" });
    const amendment = { source: "/devices/iv-tablet", id: "0000000003" };
    log.enter("amendment.seen", { amendment }, 2, { source: "/devices/ground", actor: "capcom" });
    log.enter("amendment.seen", { amendment }, 3, { source: "/devices/ground/memory-1", actor: "capcom" });
    log.enter("amendment.seen", { amendment: { ...amendment, id: "0000000002" } }, 3);
    log.enter("amendment.seen", { amendment }, 4);
    expect(log.ledger.amendmentsSeen.map(({ at, actor, source }) => [at, actor, source])).toEqual([
      [minute(2), "capcom", "/devices/ground"],
      [minute(4), "iv", "/devices/iv-tablet"],
    ]);
    expect(log.reasons).toEqual([
      "this device has already seen the amendment",
      "there is no such amendment, or it has no effect",
    ]);
  });
});

describe("entries of a newer version", () => {
  it("[AMD4] are told apart from others without effect", () => {
    const log = LogWriter.started(FILE).done(["unknown", 2]);
    const [last] = log.entries.slice(-1);
    const entries = [
      ...log.entries,
      entryFrom({ ...last?.wire, id: "a", type: "tetherline.source.sealed", data: {} }),
      entryFrom({ ...last?.wire, id: "b", data: { step: "a", needs: 3 } }),
    ];
    const newer = newerEntriesOf(foldLog(entries));
    expect(newer.map(({ id, reason }) => [id, inWords(reason)])).toEqual([
      ["a", '"tetherline.source.sealed" is not yet understood'],
      ["b", "a newer version of the program is needed to understand this tetherline.step.done"],
    ]);
    const struck = [
      entryFrom({
        ...last?.wire,
        hlc: "999999999999999-0000",
        type: "tetherline.entry.struck",
        id: "c",
        data: { source: last?.wire.source, id: "a" },
      }),
    ];
    expect(newerEntriesOf(foldLog([...entries, ...struck])).map(({ id }) => id)).toEqual(["b"]);
  });
});

describe("an amendment without effect", () => {
  const started = () => LogWriter.started(FILE).done(["a", 10]);

  it.each<[string, Change[], string]>([
    ["nothing", [], "it changes nothing"],
    [
      "what cannot be read",
      [{ drop: "c" }, { shuffle: "q" } as never],
      "its changes cannot be read: change 2 says none of add, drop, move",
    ],
    ["what is not there", [{ drop: "b" }, { drop: "x" }], 'change 2 cannot be made: step "x": there is none'],
    [
      "what leaves something dangling",
      [
        { drop: "bar", list: "items" },
        { change: "c", set: { moves: [{ item: "bar", to: { crew: "ev1" } }] } },
      ],
      "the procedure could not be used with it: ",
    ],
    [
      "a dropped step that is complete",
      [{ drop: "a" }],
      '"a" has begun or is complete, and cannot be taken out of the plan',
    ],
    [
      "a dropped step in work",
      [{ drop: "b" }],
      '"b" has begun or is complete, and cannot be taken out of the plan',
    ],
    [
      "a dropped task with one",
      [{ drop: "one", list: "tasks" }],
      '"a" has begun or is complete, and cannot be taken out of the plan',
    ],
    [
      "a renamed step in work",
      [{ rename: "b", to: "bb" }],
      '"b" has begun or is complete, and cannot be taken out of the plan',
    ],
    [
      "a moved step in work",
      [{ move: "b", behind: "c" }],
      '"b" has begun or is complete, and cannot be moved',
    ],
    [
      "one moved among its own",
      [{ move: "a", behind: "p" }],
      '"p" has begun or is complete, and cannot be moved',
    ],
    [
      "a step in work with others",
      [{ change: "b", set: { by: ["ev2"] } }],
      '"b" has begun, and keeps its performers, its place, its decision and what it moves',
    ],
    [
      "a complete step with another text",
      [{ change: "a", set: { do: "Else" } }],
      '"a" is complete, and cannot be changed',
    ],
    [
      "a step before what is in work",
      [{ add: step("n", "ev1", 1), behind: "a" }],
      '"n" would come before "b", which has begun or is complete, among the steps of EV1',
    ],
    [
      "a step moved before what is complete",
      [{ move: "c", first: "one" }],
      '"c" would come before "a", which has begun or is complete, among the steps of EV1',
    ],
    [
      "a ring",
      [{ change: "c", set: { after: ["z"] } }],
      "no order of the remaining steps is possible: Deadlock: these steps wait on each other for ever: ",
    ],
  ])("[WLK6] [AMD1] [LOG4] is %s", (_, changes, why) => {
    const log = started();
    amended(log, 12, ...changes);
    expect(log.reasons).toEqual([expect.stringContaining(why)]);
    expect(log.ledger.amendments).toEqual([]);
    expect(planOfSteps(log.ledger)).toEqual(["a", "p", "b", "c", "q", "extra", "z"]);
  });

  it("[WLK6] is one that takes out what entries of the walk name by themselves", () => {
    const log = started()
      .enter("item.moved", { item: "bar", to: { crew: "ev2" }, reason: "" }, 11)
      .enter("watch.kept", { watch: "glove", due: 600 }, 11)
      .enter("decision.taken", { decision: "bolt", outcome: "stuck" }, 11)
      .enter("record.taken", { step: "b", record: "torque", value: 7 }, 11);
    amended(log, 12, { drop: "bar", list: "items" });
    amended(log, 12, { drop: "glove", list: "watches" });
    amended(log, 12, { drop: "q" });
    amended(log, 12, {
      change: "q",
      set: { decide: { id: "bolt", ask: "?", outcomes: ["free"], expect: "free" } },
    });
    expect(log.reasons).toEqual([
      'entries of the walk name "bar", which must stay in the procedure',
      'entries of the walk name "glove", which must stay in the procedure',
      'entries of the walk tell of "q", so that it cannot be taken out of the plan; it can be skipped with a reason',
      'the decision "bolt" was taken, and must stay as it is',
    ]);
  });

  it("[WLK6] is one after the walk was closed", () => {
    const log = started().enter("walk.closed", { end: "aborted" }, 11);
    amended(log, 12, { drop: "c" });
    expect(log.reasons).toEqual(["the walk is closed"]);
  });

  it("[AMD1] is not one that re-times a step in work, or drops a get-ahead that nobody said was begun", () => {
    const log = LogWriter.started(FILE).done(["a", 10], ["p", 20], ["b", 21], ["q", 25]);
    amended(
      log,
      26,
      { change: "c", set: { time: "PT9M", do: "Do c with care" } },
      { drop: "spare", list: "tasks" },
    );
    expect(log.reasons).toEqual([]);
    expect(log.ledger.lanes[1]?.next).toBe("z");
  });

  it("[AMD5] is the later one of two at once that no longer applies, and the first counts", () => {
    const log = started();
    amended(log, 12, { drop: "c" });
    log.enter("plan.amended", { changes: [{ move: "c", behind: "z" }], reason: "" }, 12, {
      source: "/devices/ground",
      actor: "capcom",
    });
    expect(log.reasons).toEqual(['change 1 cannot be made: step "c": there is none']);
    expect(log.ledger.amendments.map(({ source }) => source)).toEqual(["/devices/iv-tablet"]);
    expect(idleAmendmentsOf(log.folded, "/devices/iv-tablet")).toEqual([]);
    const [idle, ...more] = idleAmendmentsOf(log.folded, "/devices/ground");
    expect(more).toEqual([]);
    expect(idle).toMatchObject({ id: "0000000001", at: minute(12), changes: [{ move: "c", behind: "z" }] });
    log.enter("entry.struck", { source: "/devices/ground", id: "0000000001" }, 13);
    expect(idleAmendmentsOf(log.folded, "/devices/ground")).toEqual([]);
  });

  it("[LOG4] makes a mark of a step that it took out one without effect, with the reason", () => {
    const log = started();
    amended(log, 12, { drop: "c" });
    log.done(["c", 13]).enter("note.made", { text: "No.", step: "c" }, 14);
    expect(log.reasons).toEqual([
      'an amendment took "c" out of the plan',
      'an amendment took "c" out of the plan',
    ]);
    expect(overruledOf(log.folded, "/devices/ground")).toEqual([]);
    expect(overruledOf(log.folded, "/devices/iv-tablet")).toEqual([
      { key: "/devices/iv-tablet 0000000005", step: "c", lost: "done", stands: "dropped", by: "iv" },
    ]);
  });
});

const CHANGES: readonly Change[] = [
  { add: step("n1", "ev1", 3), behind: "b" },
  { add: step("n2", ["ev1", "ev2"], 3), behind: "n1" },
  { drop: "c" },
  { drop: "spare", list: "tasks" },
  { move: "z", behind: "q" },
  { move: "q", behind: "z" },
  { change: "b", set: { time: "PT4M" } },
  { change: "q", set: { by: ["ev1"] } },
  { bring: "jam", behind: "c" },
  { rename: "q", to: "q2" },
  { change: "z", set: { after: ["q"] } },
  { add: step("n3", ["ev1", "ev2"], 1), first: "one" },
  { move: "c", first: "one" },
  { move: "p", behind: "z" },
  { change: "b", set: { after: ["p"] } },
  { change: "p", set: { notBefore: "PT9M" } },
  { drop: "a" },
];
const someChanges = fc.array(fc.constantFrom(...CHANGES), { minLength: 1, maxLength: 3 });

/** What two devices enter, some of it amendments. */
const entered = fc.array(
  fc.record({
    what: fc.oneof(
      { weight: 3, arbitrary: someChanges },
      {
        weight: 5,
        arbitrary: fc.constantFrom("a", "p", "b", "c", "q", "q2", "n1", "n2", "pry", "extra", "z"),
      },
      { weight: 1, arbitrary: fc.constant("strike" as const) },
      { weight: 1, arbitrary: fc.constant("reopen" as const) },
    ),
    device: fc.constantFrom("/devices/iv-tablet", "/devices/ground"),
    back: fc.nat({ max: 6 }),
  }),
  { minLength: 2, maxLength: 24 },
);

type Entered = typeof entered extends fc.Arbitrary<infer What> ? What : never;

function logOf(all: Entered, isIn: (amendment: number) => boolean = () => true): LogWriter {
  const log = LogWriter.started(FILE);
  let amendments = 0;
  for (const [index, { what, device, back }] of all.entries()) {
    const at = 1 + index * 1.5;
    const from = { source: device };
    const target = log.entries.at(-1 - back);
    if (what === "strike") {
      const { source, id } = target?.wire ?? { source: "", id: "" };
      log.enter("entry.struck", { source, id }, at, from);
    } else if (what === "reopen") log.enter("step.reopened", { step: "a", reason: "" }, at, from);
    else if (typeof what === "string") log.enter("step.done", { step: what }, at, from);
    else {
      if (isIn(amendments)) log.enter("plan.amended", { changes: what, reason: "" }, at, from);
      amendments += 1;
    }
  }
  return log;
}

describe("amendments in any log", { timeout: 120_000 }, () => {
  test.prop([entered, fc.infiniteStream(fc.nat())], { numRuns: 120 })(
    "[LOG3] [AMD1] give the same state in any order of arrival, read in between or not",
    (all, numbers) => {
      const { entries } = logOf(all);
      const whole = foldLog([...entries].sort(compareEntries));
      const fold = new WalkFold();
      const arriving = entries
        .map((entry) => ({ entry, turn: numbers.next().value ?? 0 }))
        .sort((a, b) => a.turn - b.turn);
      for (const { entry, turn } of arriving) {
        fold.add([turn % 2 === 0 ? entry : copyOf(entry)]);
        if (turn % 7 === 0) shown(fold.folded);
      }
      expect(fold.folded.ignored).toEqual(whole.ignored);
      expect(shown(fold.folded)).toBe(shown(whole));
    },
  );

  test.prop([entered], { numRuns: 120 })(
    "[WLK6] [AMD1] leave what was complete or in work before them where and as it was",
    (all) => {
      const { entries } = logOf(all);
      const fold = new WalkFold();
      for (const entry of entries) {
        const before = fold.folded.ledger;
        fold.add([entry]);
        const after = fold.folded.ledger;
        if (entry.read.fact?.name !== "plan.amended" || !before || !after) continue;
        const had = walkStateAt(before, entry.at).forecast?.steps;
        const has = walkStateAt(after, entry.at).forecast?.steps;
        for (const [id, { stage, start }] of had ?? []) {
          const isOnlyUp = before.inForce.outline.step(id)?.getAhead && stage === "in-work";
          if (stage === "planned" || isOnlyUp) continue;
          expect(has?.get(id)).toMatchObject({ stage, start });
          const [was, is] = [before, after].map(({ inForce }) => inForce.outline.step(id));
          expect(is?.step).toMatchObject({ by: was?.step.by, moves: was?.step.moves });
          expect(is?.task.id).toBe(was?.task.id);
        }
      }
    },
  );

  test.prop([entered], { numRuns: 120 })(
    "[LOG2] [AMD1] that are struck are as if they had never been made",
    (all) => {
      const log = logOf(all.filter(({ what }) => what !== "strike"));
      const amendments = log.entries.filter(({ read }) => read.fact?.name === "plan.amended");
      const without = foldLog(log.entries.filter((entry) => !amendments.includes(entry)));
      for (const { wire } of amendments)
        log.enter("entry.struck", { source: wire.source, id: wire.id }, 60, { source: "/devices/ground" });
      const { ledger, ignored } = log.folded;
      expect(ignored).toEqual(without.ignored);
      expect(planOfSteps(ledger ?? log.ledger)).toEqual(without.ledger && planOfSteps(without.ledger));
      expect(ledger && stateDocument(log.folded, minute(60), inWords)?.lanes).toEqual(
        stateDocument(without, minute(60), inWords)?.lanes,
      );
    },
  );

  test.prop([someChanges], { numRuns: 120 })(
    "[AMD2] before anything is begun give the plan of a procedure that was written so",
    (changes) => {
      const log = LogWriter.opened(FILE);
      amended(log, 0, ...changes);
      const { file } = applyChanges(FILE, changes);
      fc.pre(file !== null && log.folded.ignored.length === 0);
      const written = LogWriter.opened(file as ProcedureFile);
      const timesOf = ({ ledger }: LogWriter) =>
        [...(forecastOf(ledger, minute(0))?.steps ?? [])].map(([id, { start, finish }]) => [
          id,
          start,
          finish,
        ]);
      expect(timesOf(log)).toEqual(timesOf(written));
      log.enter("clock.started", {}, 0);
      written.enter("clock.started", {}, 0);
      expect(timesOf(log)).toEqual(timesOf(written));
      expect([...(planInForce(log.ledger)?.steps ?? [])]).toEqual([
        ...(planInForce(written.ledger)?.steps ?? []),
      ]);
    },
  );
});
