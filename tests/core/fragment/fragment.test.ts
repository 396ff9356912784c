import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { applyChanges } from "../../../src/core/changes/index.ts";
import type { BlankValues, Fragment } from "../../../src/core/fragment/index.ts";
import {
  FRAGMENT_FORMAT,
  FRAGMENT_LIMITS,
  filledIn,
  fragmentOffers,
  readFragment,
} from "../../../src/core/fragment/index.ts";
import type { Change, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { FORMAT, parseProcedure } from "../../../src/core/procedure/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const RAW = {
  format: FRAGMENT_FORMAT,
  id: "look",
  title: "Look at it",
  revision: "A",
  blanks: [
    { id: "who", kind: "crew", label: "Who looks" },
    { id: "place", kind: "place", label: "Where" },
    { id: "thing", kind: "item", label: "At what" },
    { id: "long", kind: "time", label: "How long", usual: "PT2M" },
  ],
  steps: [
    { id: "a", by: [{ blank: "who" }], do: "Tell {who} of {thing}", time: "PT1M", at: { blank: "place" } },
    {
      id: "look",
      by: [{ blank: "who" }],
      do: "Look at {thing}",
      time: { blank: "long" },
      after: [{ step: "a", lag: "PT1M" }],
      decide: { id: "sound", ask: "Is it?", outcomes: ["yes", "no"], expect: "yes" },
    },
    { id: "say", by: [{ blank: "who" }], do: "Say so", time: "PT1M", after: ["look"], when: { sound: "no" } },
  ],
};

const text = (more: object = {}) => JSON.stringify({ ...RAW, ...more });

function fragment(more: object = {}): Fragment {
  const read = readFragment(text(more));
  if (!read.fragment)
    throw new Error(read.findings.map((one) => `${one.pointer} ${inWords(one.message)}`).join());
  return read.fragment;
}

const FILE = fileWith(
  [task("one", [step("a", "ev1", 3), step("b", "ev2", 3)]), task("two", [step("c", "ev1", 3)])],
  {
    format: FORMAT,
    places: [{ id: "hatch", label: "Hatch" }, { id: "boom" }],
    items: [{ id: "lamp", label: "Lamp", start: { place: "hatch" } }],
  },
);

const VALUES: BlankValues = {
  who: { crew: "ev2" },
  place: { place: "hatch" },
  thing: { item: "lamp" },
  long: { time: "PT4M" },
};

function applied(file: ProcedureFile, changes: readonly Change[]): ProcedureFile {
  const { file: next, problem } = applyChanges(file, changes);
  if (!next) throw new Error(JSON.stringify(problem));
  return next;
}

function put(file = FILE, from = fragment(), values = VALUES): ProcedureFile {
  const { changes, problem } = filledIn(from, file, values, { behindStep: "b" });
  if (!changes) throw new Error(inWords(problem));
  return applied(file, changes);
}

const ids = (file: ProcedureFile) => file.tasks.map(({ steps }) => steps.map(({ id }) => id).join(" "));
const stepIn = (file: ProcedureFile, id: string) =>
  file.tasks.flatMap(({ steps }) => steps).find((one) => one.id === id);

describe("the text of a fragment", () => {
  it.each(["move-and-re-anchor", "hand-over", "come-in"])(
    "[WRT9] %s of our own reads without a finding",
    (name) => {
      const read = readFragment(readFileSync(`procedures/${name}.fragment.json`, "utf8"));
      expect(read.findings).toEqual([]);
      expect(read.fragment?.id).toBe(name);
    },
  );

  const pointers = (more: object) => {
    const { fragment: read, findings } = readFragment(text(more));
    expect(read).toBeNull();
    return findings.map(({ pointer }) => pointer);
  };
  const withStep = (more: object) => ({ steps: [{ ...RAW.steps[0], ...more }] });

  it("[WRT9] what is wrong is told at its place", () => {
    expect(pointers({ format: "tetherline.fragment/9" })).toEqual(["/format"]);
    expect(pointers({ revision: undefined })).toEqual(["/revision"]);
    expect(pointers({ blanks: [...RAW.blanks, RAW.blanks[0]] })).toEqual(["/blanks/4/id"]);
    expect(pointers(withStep({ do: "Ask {nobody}" }))).toEqual(["/steps/0/do"]);
    expect(pointers(withStep({ do: "For {long}" }))).toEqual(["/steps/0/do"]);
    expect(pointers(withStep({ at: { blank: "nowhere" } }))).toContain("/steps/0/at");
    expect(pointers(withStep({ by: [{ blank: "place" }] }))).toEqual(["/steps/0/by/0"]);
    expect(pointers(withStep({ at: "hatch" }))).toEqual(["/steps/0/at"]);
    expect(pointers(withStep({ wheer: 1 }))).toEqual(["/steps/0/wheer"]);
    expect(pointers(withStep({ after: ["z"] }))).toEqual(["/steps/0/after/0"]);
    expect(readFragment("{").findings).toHaveLength(1);
    expect(readFragment("null").fragment).toBeNull();
  });

  it("[WRT9] has at most 200 steps and 40 blanks", () => {
    const steps = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ ...RAW.steps[0], id: `s-${at}` }));
    expect(fragment({ steps: steps(FRAGMENT_LIMITS.steps) }).steps).toHaveLength(200);
    expect(pointers({ steps: steps(FRAGMENT_LIMITS.steps + 1) })).toEqual(["/steps"]);
    const blanks = Array.from({ length: 41 }, (_, at) => ({ id: `b-${at}`, kind: "crew", label: "x" }));
    expect(pointers({ blanks })).toContain("/blanks");
  });

  test.prop([fc.string()])("[WRT9] never fails to be read", (any) => {
    expect(readFragment(any).fragment).toBeNull();
  });
});

describe("a fragment that is put in", () => {
  it("[WRT9] has its blanks filled, free ids, and remembers where it came from", () => {
    const file = put();
    expect(ids(file)).toEqual(["a b a-2 look say", "c"]);
    expect(stepIn(file, "a-2")).toMatchObject({ by: ["ev2"], do: "Tell EV2 of Lamp", at: "hatch" });
    expect(stepIn(file, "look")).toMatchObject({ time: "PT4M", after: [{ step: "a-2", lag: "PT1M" }] });
    expect(stepIn(file, "look")?.from).toEqual({
      fragment: "look",
      revision: "A",
      use: "look",
      part: "look",
      blanks: VALUES,
    });
    expect(parseProcedure(file).findings).toEqual([]);
  });

  it("[WRT9] twice is told apart, decisions included", () => {
    const twice = put(put());
    expect(ids(twice)).toEqual(["a b a-3 look-2 say-2 a-2 look say", "c"]);
    expect(stepIn(twice, "look-2")?.decide?.id).toBe("sound-2");
    expect(stepIn(twice, "say-2")?.when).toEqual({ "sound-2": "no" });
    expect(stepIn(twice, "look-2")?.from?.use).toBe("look-2");
    expect(parseProcedure(twice).findings).toEqual([]);
  });

  it("[WRT9] may be a task of its own", () => {
    const { changes } = filledIn(fragment(), FILE, VALUES, { behindTask: "one" });
    const file = applied(FILE, changes ?? []);
    expect(file.tasks.map(({ id, title }) => `${id} ${title}`)).toEqual([
      "one Task one",
      "look Look at it",
      "two Task two",
    ]);
    expect(parseProcedure(file).findings).toEqual([]);
  });

  it("[WRT9] is not put in while a blank is empty, of another kind, or filled with what is not there", () => {
    const problem = (values: BlankValues, place = { behindStep: "b" }) => {
      const filled = filledIn(fragment(), FILE, values, place);
      return filled.problem && inWords(filled.problem);
    };
    const { who, ...rest } = VALUES;
    expect(problem(rest)).toBe("“Who looks” is still to be filled.");
    expect(problem({ ...VALUES, who: { place: "hatch" } })).toBe("“Who looks” is still to be filled.");
    expect(problem({ ...VALUES, who: { crew: "gone" } })).toContain("is not in this procedure");
    expect(problem(VALUES, { behindStep: "nowhere" })).toContain("The place where");
    expect(problem({ ...VALUES, who: who ?? { crew: "ev1" } })).toBeNull();
  });

  it("[WRT9] [CHG1] keeps knowing its crew, places and items when they are renamed", () => {
    const renamed = applied(put(), [
      { rename: "ev2", list: "crew", to: "ev4" },
      { rename: "hatch", list: "places", to: "door" },
      { rename: "lamp", list: "items", to: "torch" },
    ]);
    expect(stepIn(renamed, "look")?.from?.blanks).toEqual({
      ...VALUES,
      who: { crew: "ev4" },
      place: { place: "door" },
      thing: { item: "torch" },
    });
  });
});

describe("another revision of a fragment", () => {
  const A = fragment();
  const B = fragment({
    revision: "B",
    steps: [
      RAW.steps[0],
      { ...RAW.steps[1], do: "Look hard at {thing}" },
      { id: "more", by: [{ blank: "who" }], do: "Look once more", time: "PT1M", after: ["look"] },
    ],
  });

  it("[WRT9] is offered as changes that keep what the author changed since", () => {
    const file = applied(put(), [{ change: "look", set: { time: "PT9M" } }]);
    const [offer] = fragmentOffers(file, B, [A]);
    expect(offer).toMatchObject({ use: "look", revision: "A", isBlind: false, conflicts: [], problem: null });
    const next = applied(file, offer?.changes ?? []);
    expect(ids(next)).toEqual(["a b a-2 look more", "c"]);
    expect(stepIn(next, "look")).toMatchObject({
      do: "Look hard at Lamp",
      time: "PT9M",
      from: { revision: "B" },
    });
    expect(fragmentOffers(next, B, [A])).toEqual([]);
    expect(parseProcedure(next).findings).toEqual([]);
  });

  it("[WRT9] [CHG5] is not offered where both changed the same, and says what", () => {
    const file = applied(put(), [{ change: "look", set: { do: "Stare at it" } }]);
    const [offer] = fragmentOffers(file, B, [A]);
    expect(offer?.changes).toBeNull();
    expect(offer?.conflicts).toMatchObject([{ list: "steps", id: "look", field: "do", ours: "Stare at it" }]);
  });

  it("[WRT9] says that it would undo the author's changes where the older revision is not known", () => {
    const file = applied(put(), [{ change: "look", set: { time: "PT9M" } }]);
    const [offer] = fragmentOffers(file, B, []);
    expect(offer?.isBlind).toBe(true);
    expect(stepIn(applied(file, offer?.changes ?? []), "look")?.time).toBe("PT4M");
  });

  it("[WRT9] has a new first step before the one that was first", () => {
    const first = { id: "first", by: [{ blank: "who" }], do: "Wait", time: "PT1M" };
    const next = fragment({ revision: "B", steps: [first, ...RAW.steps] });
    const [offer] = fragmentOffers(put(), next, [A]);
    expect(ids(applied(put(), offer?.changes ?? []))).toEqual(["a b first a-2 look say", "c"]);
  });

  it("[WRT9] leaves out what the author dropped", () => {
    const file = applied(put(), [{ drop: "a-2" }]);
    const [offer] = fragmentOffers(file, B, [A]);
    expect(ids(applied(file, offer?.changes ?? []))).toEqual(["a b look more", "c"]);
  });

  it("[WRT9] waits for a blank that is new, and takes a usual time for one", () => {
    const blank = { id: "helper", kind: "crew", label: "Who helps" };
    const [offer] = fragmentOffers(put(), fragment({ revision: "B", blanks: [...RAW.blanks, blank] }), [A]);
    expect(offer?.problem && inWords(offer.problem)).toBe("“Who helps” is still to be filled.");
    const time = { id: "rest", kind: "time", label: "Rest", usual: "PT3M" };
    const [other] = fragmentOffers(put(), fragment({ revision: "B", blanks: [...RAW.blanks, time] }), [A]);
    expect(other?.problem).toBeNull();
  });

  it("[WRT9] is offered for each use, and for none of the same revision or another fragment", () => {
    const twice = put(put());
    expect(
      fragmentOffers(twice, B, [A])
        .map(({ use }) => use)
        .toSorted(),
    ).toEqual(["look", "look-2"]);
    expect(fragmentOffers(twice, A, [A])).toEqual([]);
    expect(fragmentOffers(twice, fragment({ id: "another", revision: "B" }), [A])).toEqual([]);
  });

  test.prop([
    fc.subarray(["a-2", "look", "say"]),
    fc.subarray(["a", "look", "say"], { minLength: 1 }),
    fc.boolean(),
  ])(
    "[WRT9] comes to a procedure whose ids are all its own, whatever was dropped on either side",
    (dropped, left, isKnown) => {
      const file = dropped.reduce((one, id) => applied(one, [{ drop: id }]), put());
      const steps = RAW.steps
        .filter(({ id }) => left.includes(id))
        .map(({ after: _after, when: _when, ...rest }: Record<string, unknown>) => rest);
      for (const offer of fragmentOffers(file, fragment({ revision: "B", steps }), isKnown ? [A] : [])) {
        const next = applied(file, offer.changes ?? []);
        const all = next.tasks.flatMap((one) => one.steps.map(({ id }) => id));
        expect(new Set(all).size).toBe(all.length);
        expect(all).toEqual(expect.arrayContaining(["a", "b", "c"]));
      }
    },
  );
});

const TASKS = [
  { id: "one", title: "Look with {who}", brief: "Slowly", steps: [RAW.steps[0], RAW.steps[1]] },
  { id: "say-so", title: "Say so", closeout: true, steps: [RAW.steps[2]] },
];
const OF_TASKS = { steps: undefined, tasks: TASKS };

describe("a fragment of tasks", () => {
  const pointers = (more: object) => readFragment(text(more)).findings.map(({ pointer }) => pointer);
  const tasks = (more: object) => ({ ...OF_TASKS, tasks: [TASKS[0], { ...TASKS[1], ...more }] });

  it("[WRT9] is read, and what is wrong is told at its place", () => {
    expect(fragment(OF_TASKS).tasks).toHaveLength(2);
    const neither = readFragment(text({ steps: undefined })).findings;
    expect(neither.map((one) => inWords(one.message))).toEqual(["It holds either steps or tasks."]);
    expect(pointers({ tasks: TASKS })).toEqual([""]);
    expect(pointers({ ...OF_TASKS, tasks: [] })).toEqual(["/tasks"]);
    expect(pointers(tasks({ id: "one" }))).toEqual(["/tasks/1/id"]);
    expect(pointers(tasks({ title: "{nobody}" }))).toEqual(["/tasks/1/title"]);
    expect(pointers(tasks({ priority: "whenever" }))).toEqual(["/tasks/1/priority"]);
    expect(pointers(tasks({ colour: "red" }))).toEqual(["/tasks/1"]);
    expect(pointers(tasks({ steps: [{ ...RAW.steps[2], at: "hatch" }] }))).toEqual(["/tasks/1/steps/0/at"]);
    expect(pointers(tasks({ steps: [RAW.steps[0]] }))).toEqual(["/tasks/1/steps/0/id"]);
    expect(pointers(tasks({ steps: [] }))).toEqual(["/tasks/1/steps"]);
  });

  it("[WRT9] has at most 200 steps over all of them", () => {
    const many = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ ...RAW.steps[0], id: `s-${at}` }));
    expect(fragment(tasks({ steps: many(198) })).tasks).toHaveLength(2);
    expect(pointers(tasks({ steps: many(199) }))).toEqual(["/tasks"]);
  });

  const behindTask = (file = FILE, from = fragment(OF_TASKS)) => {
    const { changes, problem } = filledIn(from, file, VALUES, { behindTask: "one" });
    if (!changes) throw new Error(inWords(problem));
    return applied(file, changes);
  };
  const heads = (file: ProcedureFile) => file.tasks.map(({ id, title }) => `${id}: ${title}`);

  it("[WRT9] goes behind a task, with free ids, and each step remembers its task", () => {
    const file = behindTask();
    expect(heads(file)).toEqual(["one: Task one", "one-2: Look with EV2", "say-so: Say so", "two: Task two"]);
    expect(ids(file)).toEqual(["a b", "a-2 look", "say", "c"]);
    expect(file.tasks[1]).toMatchObject({ brief: "Slowly" });
    expect(file.tasks[1]).not.toHaveProperty("closeout");
    expect(file.tasks[2]).toMatchObject({ closeout: true });
    expect(stepIn(file, "say")?.from).toMatchObject({ part: "say", task: "say-so", use: "look" });
    expect(stepIn(file, "say")?.after).toEqual(["look"]);
    expect(parseProcedure(file).findings).toEqual([]);
    const twice = behindTask(file);
    expect(heads(twice)).toHaveLength(6);
    expect(parseProcedure(twice).findings).toEqual([]);
  });

  it("[WRT9] does not go behind a step", () => {
    const { changes, problem } = filledIn(fragment(OF_TASKS), FILE, VALUES, { behindStep: "b" });
    expect(changes).toBeNull();
    expect(problem && inWords(problem)).toBe("A fragment of tasks goes behind a task.");
  });

  const A = fragment(OF_TASKS);
  const MORE = { id: "more", by: [{ blank: "who" }], do: "Look once more", time: "PT1M", after: ["look"] };
  const offered = (file: ProcedureFile, next: object, known: readonly Fragment[] = [A]) =>
    fragmentOffers(file, fragment({ ...OF_TASKS, revision: "B", ...next }), known)[0];
  const taken = (file: ProcedureFile, next: object, known?: readonly Fragment[]) =>
    applied(file, offered(file, next, known)?.changes ?? []);

  it("[WRT9] [CHG5] is brought to another revision with its tasks, and what the author changed stays", () => {
    const file = applied(behindTask(), [
      { change: "one-2", list: "tasks", set: { title: "Look around" } },
      { change: "look", set: { time: "PT9M" } },
    ]);
    const next = taken(file, {
      tasks: [
        { ...TASKS[0], brief: "Very slowly" },
        { id: "two", title: "Once more", steps: [MORE] },
        TASKS[1],
      ],
    });
    expect(heads(next)).toEqual([
      "one: Task one",
      "one-2: Look around",
      "two-2: Once more",
      "say-so: Say so",
      "two: Task two",
    ]);
    expect(next.tasks[1]?.brief).toBe("Very slowly");
    expect(stepIn(next, "look")?.time).toBe("PT9M");
    expect(stepIn(next, "more")?.from).toMatchObject({ revision: "B", task: "two" });
    expect(parseProcedure(next).findings).toEqual([]);
    expect(offered(next, {})).toBeUndefined();
  });

  it("[WRT9] [CHG5] is not offered where both renamed a task, and says so", () => {
    const file = applied(behindTask(), [{ change: "one-2", list: "tasks", set: { title: "Look around" } }]);
    const offer = offered(file, { tasks: [{ ...TASKS[0], title: "Look hard" }, TASKS[1]] });
    expect(offer?.changes).toBeNull();
    expect(offer?.conflicts).toMatchObject([{ list: "tasks", id: "one-2", field: "title" }]);
  });

  it("[WRT9] lets go of a task that the fragment has no more, but for what its author put there", () => {
    const without = { tasks: [TASKS[0]] };
    expect(heads(taken(behindTask(), without))).toEqual([
      "one: Task one",
      "one-2: Look with EV2",
      "two: Task two",
    ]);
    const file = applied(behindTask(), [{ add: step("own", "ev1", 3), behind: "say" }]);
    expect(ids(taken(file, without))).toEqual(["a b", "a-2 look", "own", "c"]);
  });

  it("[WRT9] leaves out a task that the author dropped, and what would come after its steps", () => {
    const file = applied(behindTask(), [{ drop: "one-2", list: "tasks" }]);
    const next = taken(file, { tasks: [TASKS[0], { ...TASKS[1], steps: [RAW.steps[2], MORE] }] });
    expect(ids(next)).toEqual(["a b", "say more", "c"]);
    expect(stepIn(next, "more")?.after).toEqual([]);
    expect(parseProcedure(next).findings.map(({ pointer }) => pointer)).toEqual([
      "/tasks/1/steps/0/when/sound",
    ]);
  });

  it("[WRT9] moves a step that changed its task, unless its author has moved it", () => {
    const changed = {
      tasks: [
        { ...TASKS[0], steps: [RAW.steps[0]] },
        { ...TASKS[1], steps: [RAW.steps[1], RAW.steps[2]] },
      ],
    };
    const next = taken(behindTask(), changed);
    expect(ids(next)).toEqual(["a b", "a-2", "look say", "c"]);
    expect(parseProcedure(next).findings).toEqual([]);
    const file = applied(behindTask(), [{ move: "look", behind: "b" }]);
    expect(ids(taken(file, changed))).toEqual(["a b look", "a-2", "say", "c"]);
  });

  it("[WRT9] may come of a fragment of steps, whose own task then goes", () => {
    const { changes } = filledIn(fragment(), FILE, VALUES, { behindTask: "one" });
    const next = taken(applied(FILE, changes ?? []), {}, [fragment()]);
    expect(ids(next)).toEqual(["a b", "a-2 look", "say", "c"]);
    expect(parseProcedure(next).findings).toEqual([]);
  });

  test.prop([
    fc.subarray(["a-2", "look", "say"]),
    fc.array(fc.subarray(["a", "look", "say"]), { minLength: 1, maxLength: 3 }),
    fc.boolean(),
  ])(
    "[WRT9] comes to a procedure that names nothing that is not there, whatever was dropped and moved to other tasks",
    (chosen, groups, isKnown) => {
      // The decision of one that is dropped goes with it, and so must what hangs on that.
      const dropped = chosen.includes("look") ? [...new Set([...chosen, "say"])] : chosen;
      const file = dropped.reduce((one, id) => applied(one, [{ drop: id }]), behindTask());
      const seen = new Set<string>();
      const next = groups.flatMap((group, at) => {
        const steps = RAW.steps.filter(({ id }) => group.includes(id) && !seen.has(id));
        for (const { id } of steps) seen.add(id);
        const plain = steps.map(({ after: _after, when: _when, ...rest }: Record<string, unknown>) => rest);
        return plain.length > 0
          ? [{ id: ["one", "say-so", "third"][at], title: `Task ${at}`, steps: plain }]
          : [];
      });
      fc.pre(next.length > 0);
      for (const offer of fragmentOffers(
        file,
        fragment({ ...OF_TASKS, revision: "B", tasks: next }),
        isKnown ? [A] : [],
      )) {
        const after = applied(file, offer.changes ?? []);
        const all = after.tasks.flatMap((one) => one.steps.map(({ id }) => id));
        expect(all).toEqual(expect.arrayContaining(["a", "b", "c"]));
        expect(parseProcedure(after).findings).toEqual([]);
      }
    },
  );
});
