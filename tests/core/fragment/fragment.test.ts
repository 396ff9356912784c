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
  it.each(["move-and-re-anchor", "hand-over"])("[WRT9] %s of our own reads without a finding", (name) => {
    const read = readFragment(readFileSync(`procedures/${name}.fragment.json`, "utf8"));
    expect(read.findings).toEqual([]);
    expect(read.fragment?.id).toBe(name);
  });

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
