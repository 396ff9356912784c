import fc from "fast-check";
import type { Change, ListName, ProcedureFile } from "../../src/core/procedure/index.ts";
import { inFormatOfItsKeys } from "../../src/core/procedure/index.ts";

type Task = ProcedureFile["tasks"][number];
type Step = Task["steps"][number];

/** Ids are drawn from so few that two files often hold the same ones. */
const IDS = {
  crew: ["ev1", "ev2", "iv", "ground"],
  places: ["hatch", "boom", "mast", "fin", "bay"],
  items: ["bag", "wrench", "lamp", "cap"],
  windows: ["day", "dark", "comm"],
  states: ["door", "power", "rest"],
  supplies: ["oxygen", "power"],
  watches: ["gloves", "gauge", "talk"],
  contingencies: ["tear", "lost", "stuck"],
  tasks: ["t1", "t2", "t3", "t4", "t5", "t6"],
  steps: ["a", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l"],
} as const;

/** An object without the fields that are left out. */
function present<Value extends object>(
  value: Value,
): { [Key in keyof Value]: Exclude<Value[Key], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, field]) => field !== undefined)) as never;
}

const maybe = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: undefined });
const minutes = fc.integer({ min: 1, max: 9 }).map((count) => `PT${count}M`);
const words = fc.constantFrom("Turn it", "Hold it", "Look at it", "Call “go”", "Tab\tand line\n");
const some = <Value>(values: readonly Value[], min = 0): fc.Arbitrary<Value[]> =>
  values.length === 0 ? fc.constant<Value[]>([]) : fc.shuffledSubarray([...values], { minLength: min });

/** Whole tasks, in the plan and in contingencies, over which all steps are dealt out. */
const shape = fc.record({
  steps: some(IDS.steps, 1),
  tasks: some(IDS.tasks, 1),
  contingencies: some(IDS.contingencies),
  dealt: fc.array(fc.nat(), { minLength: 20, maxLength: 20 }),
});

interface Known {
  readonly crew: readonly string[];
  readonly places: readonly string[];
  readonly items: readonly string[];
  readonly windows: readonly string[];
  readonly states: readonly string[];
}

/** The state `rest` belongs to a crew member or nobody; the others are on or off. */
const valuesOf = (state: string, { crew }: Known) => (state === "rest" ? ["free", ...crew] : ["on", "off"]);
const stateValues = (known: Known) =>
  some(known.states).chain((ids) =>
    fc
      .tuple(...ids.map((id) => fc.constantFrom(...valuesOf(id, known))))
      .map((values) => Object.fromEntries(ids.map((id, index) => [id, values[index]]))),
  );

const location = ({ crew, places }: Known) =>
  fc.oneof(
    fc.constantFrom(...crew).map((one) => ({ crew: one })),
    ...(crew.length > 1 ? [fc.constant({ crews: crew.slice(0, 2) })] : []),
    ...(places.length > 0 ? [fc.constantFrom(...places).map((one) => ({ place: one }))] : []),
  );

const placeOf = ({ places }: Known) =>
  places.length > 0 ? maybe(fc.constantFrom(...places)) : fc.constant(undefined);

function stepWith(id: string, known: Known, before: readonly string[]): fc.Arbitrary<Step> {
  const after = some(before).chain((named) =>
    fc.tuple(
      ...named.slice(0, 3).map((one) =>
        fc.oneof(
          fc.constant(one),
          minutes.map((lag) => ({ step: one, lag })),
          minutes.map((within) => ({ step: one, within })),
        ),
      ),
    ),
  );
  return fc
    .record({
      by: some(known.crew, 1),
      do: words,
      time: fc.oneof(minutes, fc.constant({ low: "PT1M", likely: "PT2M", high: "PT10M" })),
      alerts: maybe(fc.constantFrom([], [{ level: "caution" as const, text: "Sharp edge" }])),
      at: placeOf(known),
      anchor: placeOf(known),
      after: maybe(after),
      within: maybe(some(known.windows)),
      moves: maybe(
        some(known.items).chain((items) =>
          fc.tuple(...items.slice(0, 2).map((item) => location(known).map((to) => ({ item, to })))),
        ),
      ),
      records: maybe(fc.constantFrom([], [{ id: "turns", unit: "1", min: 1.5, max: 7 }])),
      confirm: maybe(fc.constantFrom(...known.crew).map((by) => ({ by, text: "Marks meet" }))),
      needs: maybe(stateValues(known)),
      sets: maybe(stateValues(known)),
      or: maybe(some(known.crew, 1).map((by) => [by, { by, time: "PT3M" }])),
      decide: maybe(fc.constant({ id: `on-${id}`, ask: "Does it?", outcomes: ["yes", "no"], expect: "yes" })),
    })
    .map((fields) => present({ id, ...fields }) as unknown as Step);
}

const files = shape.chain(({ steps, tasks, contingencies, dealt }) =>
  fc
    .record({
      crew: some(IDS.crew, 1),
      places: some(IDS.places),
      items: some(IDS.items),
      windows: some(IDS.windows),
      states: some(IDS.states),
    })
    .chain((known) => {
      const taskOf = steps.map((_, index) => (dealt[index] ?? 0) % tasks.length);
      const homeOf = tasks.map((_, index) =>
        index === 0 ? 0 : (dealt[index + 12] ?? 0) % (contingencies.length + 1),
      );
      // A step may come only after steps of the plan, or of its own contingency, that no get-ahead holds.
      const beforeOf = (index: number) =>
        steps.filter((_, other) => {
          const home = homeOf[taskOf[other] ?? 0];
          return other < index && (home === 0 || home === homeOf[taskOf[index] ?? 0]);
        });
      const inPlan = steps.filter((_, index) => homeOf[taskOf[index] ?? 0] === 0);
      return fc
        .record({
          steps: fc.tuple(...steps.map((id, index) => stepWith(id, known, beforeOf(index)))),
          titles: fc.array(words, { minLength: 10, maxLength: 10 }),
          closeout: fc.array(maybe(fc.boolean()), { minLength: 6, maxLength: 6 }),
          ...listsOf(known, inPlan),
        })
        .map(({ steps: written, titles, closeout, ...lists }) => {
          const holding = (home: number): Task[] =>
            tasks.flatMap((id, index) =>
              homeOf[index] === home
                ? (present({
                    id,
                    title: titles[index],
                    closeout: closeout[index],
                    steps: written.filter((_, at) => taskOf[at] === index),
                  }) as Task)
                : [],
            );
          const whole = contingencies.map((id, index) => ({
            id,
            title: titles[index + 6] ?? id,
            tasks: holding(index + 1),
          }));
          const file = present({
            format: "tetherline.procedure/1",
            id: "trial",
            ...lists,
            tasks: holding(0),
            contingencies: whole.length === 0 && titles.length % 2 === 0 ? lists.contingencies : whole,
          }) as unknown as ProcedureFile;
          return inFormatOfItsKeys(file);
        });
    }),
);

function listsOf(known: Known, inPlan: readonly string[]) {
  const listed = <Value>(values: readonly Value[]) =>
    values.length > 0 ? fc.constant([...values]) : fc.constantFrom<[] | undefined>(undefined, []);
  const each = <Value>(ids: readonly string[], make: (id: string) => fc.Arbitrary<Value>) =>
    ids.length === 0 ? listed<Value>([]) : (fc.tuple(...ids.map(make)) as fc.Arbitrary<Value[]>);
  const pairs = known.places.flatMap((from, index) =>
    known.places.slice(index + 1).map((to): [string, string] => [from, to]),
  );
  const label = maybe(words);
  const stepOf = inPlan.length > 0 ? maybe(fc.constantFrom(...inPlan)) : fc.constant(undefined);
  return {
    $schema: maybe(fc.constant("./procedure.schema.json")),
    title: words,
    revision: maybe(fc.constantFrom("A", "B", "C")),
    summary: label,
    setting: maybe(fc.constantFrom("orbit" as const, "pool" as const)),
    limits: maybe(fc.constantFrom({}, { elapsed: "PT2H" }, { elapsed: "PT3H" })),
    crew: each(known.crew, (id) =>
      fc
        .record({
          call: words,
          station: fc.constantFrom("outside" as const, "inside" as const),
          start: placeOf(known),
        })
        .map((fields) => present({ id, ...fields })),
    ),
    places: each(known.places, (id) =>
      fc
        .record({ label, x: maybe(fc.integer({ min: -9, max: 9 })), refuge: maybe(fc.boolean()) })
        .map((fields) => present({ id, ...fields })),
    ),
    routes: some(pairs).chain((chosen) =>
      chosen.length === 0
        ? fc.constantFrom<[] | undefined>(undefined, [])
        : fc.tuple(
            ...chosen.map(([from, to]) =>
              fc
                .record({
                  turned: fc.boolean(),
                  length: fc.integer({ min: 1, max: 9 }),
                  time: maybe(minutes),
                  needs: maybe(stateValues(known)),
                })
                .map(({ turned, ...fields }) =>
                  present({ between: turned ? [to, from] : [from, to], ...fields }),
                ),
            ),
          ),
    ),
    items: each(known.items, (id) =>
      fc
        .record({ label, start: location(known), end: maybe(location(known)) })
        .map((fields) => present({ id, ...fields })),
    ),
    windows: each(known.windows, (id) =>
      fc
        .record({ label, spans: fc.constantFrom([], [{ from: "PT1M", to: "PT5M" }]) })
        .map((fields) => present({ id, kind: "listed" as const, ...fields })),
    ),
    states: each(known.states, (id) =>
      fc.record({ label, start: fc.constantFrom(...valuesOf(id, known)) }).map((fields) =>
        present({
          id,
          values: id === "rest" ? ("crew" as const) : ["on", "off"],
          end: fields.start,
          ...fields,
        }),
      ),
    ),
    supplies: some(known.crew.flatMap((crew) => IDS.supplies.map((id) => ({ crew, id })))).chain((chosen) =>
      chosen.length === 0
        ? fc.constantFrom<[] | undefined>(undefined, [])
        : fc.tuple(
            ...chosen.map((one) =>
              fc
                .record({ full: fc.integer({ min: 50, max: 99 }), perHour: fc.integer({ min: 1, max: 9 }) })
                .map((fields) => ({ ...one, unit: "kPa", redline: 5, ...fields })),
            ),
          ),
    ),
    watches: some(IDS.watches).chain((ids) =>
      each(ids, (id) =>
        fc
          .record({ by: some(known.crew, 1), do: words, from: stepOf, until: stepOf, every: minutes })
          .map((fields) => present({ id, ...fields })),
      ),
    ),
    contingencies: fc.constantFrom<[] | undefined>(undefined, []),
    language: maybe(fc.constantFrom("en", "sv")),
    words: wordsIn,
  };
}

/** Keys of words: ids of several lists, some with their list in front, the head, and what no file has. */
const WORDS_KEYS = [
  ".",
  "a",
  "b",
  "steps c",
  "on-a",
  "t1",
  "tear",
  "ev1",
  "hatch",
  "places boom",
  "bag",
  "power",
  "ev1 oxygen",
  "gloves",
  "nothing",
] as const;

const texts = fc
  .record({
    do: maybe(words),
    label: maybe(words),
    title: maybe(words),
    confirm: maybe(words),
    alerts: maybe(fc.constantFrom([], ["Kant"], [null, "Kant"])),
  })
  .map(present);

const wordsIn = maybe(
  fc.dictionary(
    fc.constantFrom("fr", "ar", "pt-BR"),
    fc.dictionary(
      fc.constantFrom(...WORDS_KEYS),
      fc.tuple(texts, maybe(texts)).map(([own, of]) => present({ ...own, of })),
      { maxKeys: 5, noNullPrototype: true },
    ),
    { maxKeys: 2, noNullPrototype: true },
  ),
);

/** Procedures that parse, with members in every list and with lists left out or empty; two of them share most of their ids. */
export const procedureFiles: fc.Arbitrary<ProcedureFile> = files;

/** A procedure file and a copy in which keys stand in another order: the same procedure. */
export function withKeysTurned<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(withKeysTurned) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .toReversed()
      .map(([key, child]) => [key, withKeysTurned(child)]),
  ) as Value;
}

/** Deep-frozen: a change in place throws. */
export function frozen<Value>(value: Value): Value {
  if (typeof value === "object" && value !== null) {
    Object.freeze(value);
    for (const child of Object.values(value)) frozen(child);
  }
  return value;
}

const named = (list: ListName) => (list === "steps" ? {} : { list });
const FLAT = ["crew", "places", "items", "windows", "watches", "states"] as const;

const stepIds = fc.constantFrom(...IDS.steps);
const taskIds = fc.constantFrom(...IDS.tasks);
const flat = fc
  .constantFrom(...FLAT)
  .chain((list) => fc.constantFrom(...IDS[list]).map((id) => ({ list, id })));
const anyMember: fc.Arbitrary<{ list: ListName; id: string }> = fc.oneof(
  stepIds.map((id) => ({ list: "steps" as const, id })),
  taskIds.map((id) => ({ list: "tasks" as const, id })),
  fc.constantFrom(...IDS.contingencies).map((id) => ({ list: "contingencies" as const, id })),
  flat,
);
const place = (list: ListName, id: string): fc.Arbitrary<{ behind: string } | { first: string | true }> => {
  const behind = fc
    .constantFrom(...(IDS[list as keyof typeof IDS] ?? [id]))
    .map((one) => ({ behind: one as string }));
  const first: fc.Arbitrary<string | true> =
    list === "steps"
      ? taskIds
      : list === "tasks"
        ? fc.constantFrom<string | true>(true, ...IDS.contingencies)
        : fc.constant(true as const);
  return fc.oneof(
    behind,
    first.map((one) => ({ first: one })),
  );
};

/** A change of any form; whether it can be applied to a file is another matter. */
export const anyChange: fc.Arbitrary<Change> = fc.oneof(
  anyMember.map(({ list, id }): Change => ({ drop: id, ...named(list) })),
  anyMember.chain(({ list, id }) =>
    place(list, id).map((where): Change => ({ move: id, ...named(list), ...where })),
  ),
  fc
    .tuple(fc.constantFrom("fr", "ar"), fc.constantFrom(...WORDS_KEYS), words)
    .chain(([language, key, text]) =>
      fc.constantFrom<Change>(
        { add: { id: `${language} ${key}`, do: text, "of do": "Turn it" }, list: "words", first: true },
        { change: `${language} ${key}`, list: "words", set: { do: text, "of do": "Hold it" } },
        { change: `${language} ${key}`, list: "words", set: { label: text }, unset: ["of do"] },
        { drop: `${language} ${key}`, list: "words" },
      ),
    ),
  stepIds.chain((id) =>
    place("steps", id).map(
      (where): Change => ({ add: { id, by: ["ev1"], do: "Do it", time: "PT1M" }, ...where }),
    ),
  ),
  taskIds.chain((id) =>
    fc.tuple(place("tasks", id), stepIds).map(
      ([where, step]): Change => ({
        add: { id, title: "New", steps: [{ id: step, by: ["ev1"], do: "Do it", time: "PT1M" }] },
        list: "tasks",
        ...where,
      }),
    ),
  ),
  fc
    .tuple(stepIds, minutes)
    .map(([id, time]): Change => ({ change: id, set: { time, do: "Else" }, unset: ["after"] })),
  flat.map(
    ({ list, id }): Change => ({ change: id, list, set: { label: "Other" }, unset: ["spans", "refuge"] }),
  ),
  fc
    .tuple(anyMember, fc.constantFrom("new-1", "new-2", "a", "ev1", "hatch"))
    .map(([{ list, id }, to]): Change => ({ rename: id, ...named(list), to })),
  fc
    .tuple(fc.constantFrom(...IDS.contingencies), stepIds)
    .map(([bring, behind]): Change => ({ bring, behind })),
  fc.constantFrom<Change>(
    { head: { title: "Other", limits: { elapsed: "PT4H" } } },
    { head: {}, unset: ["revision", "summary", "limits"] },
    { head: { revision: "D" }, unset: ["places"] },
    { drop: "hatch boom", list: "routes" },
    { rename: "ev1 oxygen", list: "supplies", to: "air" },
    { change: "ev1 oxygen", list: "supplies", set: { full: 7 } },
  ),
);
