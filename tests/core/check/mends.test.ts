import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import type { Operation } from "fast-json-patch";
import jsonPatch from "fast-json-patch";
import { describe, expect, it } from "vitest";
import { applyChanges, patchBetween } from "../../../src/core/changes/index.ts";
import { checkProcedureText } from "../../../src/core/check/index.ts";
import type { Finding, PatchOperation, ProcedureFile } from "../../../src/core/procedure/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";
import { said } from "../said.ts";

type AnyFile = Record<string, unknown>;

const check = (file: unknown) => checkProcedureText(JSON.stringify(file)).findings;
const isMendable = ({ mend, repair }: Finding) => mend !== null || repair !== null;
/** A file as a finding's mend, or a file's repair, leaves it. */
function applied(file: AnyFile, { mend, repair }: Finding): AnyFile {
  if (mend) {
    const mended = applyChanges(file as ProcedureFile, mend);
    if (mended.problem) throw new Error(mended.problem.code);
    expect(patched(file, patchOf(file, mend))).toEqual(mended.file);
    return mended.file;
  }
  return patched(file, repair ?? []);
}
const patchOf = (file: AnyFile, mend: Finding["mend"]): PatchOperation[] =>
  patchBetween(file, applyChanges(file as ProcedureFile, mend ?? []).file);
const patched = (file: AnyFile, patch: readonly PatchOperation[]): AnyFile =>
  jsonPatch.applyPatch(structuredClone(file), structuredClone(patch) as Operation[], true).newDocument;
const sameAs = (one: Finding) => (other: Finding) =>
  other.code === one.code && said(other) === said(one) && other.pointer === one.pointer;
const errorsIn = (findings: readonly Finding[]) => findings.filter(({ level }) => level === "error").length;

/** The findings with a mend; each, applied, must take its finding away and bring no error. */
function mendedIn(file: AnyFile): Finding[] {
  const found = check(file);
  const mendable = found.filter(isMendable);
  for (const one of mendable) {
    const after = check(applied(file, one));
    expect(after.filter(sameAs(one)), said(one)).toEqual([]);
    expect(errorsIn(after), `${said(one)} → ${after.map(said).join(" ")}`).toBeLessThan(
      errorsIn(found) + (one.level === "error" ? 0 : 1),
    );
  }
  return mendable;
}

const OUTSIDE = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside" as const, start: "hatch" },
    { id: "ev2", call: "EV2", station: "outside" as const, start: "hatch" },
    { id: "iv", call: "IV", station: "inside" as const },
  ],
  places: [
    { id: "hatch", label: "Hatch", refuge: true },
    { id: "boom", label: "Boom" },
  ],
  routes: [{ between: ["hatch", "boom"] as [string, string], length: 5, time: "PT1M" }],
};

describe("a mend", () => {
  it("[CHK1] gives a misspelt key its name", () => {
    const { do: text, ...rest } = step("a", "ev1", 1);
    const file = { ...fileWith([]), tasks: [task("t", [{ ...rest, doo: text } as never])], titel: "More" };
    const mended = mendedIn(file);
    expect(mended.map(({ repair }) => repair)).toEqual([
      [{ op: "move", from: "/tasks/0/steps/0/doo", path: "/tasks/0/steps/0/do" }],
    ]);
  });

  it("[CHK1] gives a misspelt reference its name, also as a key of `when`", () => {
    const file = fileWith([
      step("ask", "ev1", 1, {
        decide: { id: "bolt", ask: "?", outcomes: ["free", "stuck"], expect: "free" },
      }),
      step("loosen-bolt", "ev1", 1, { when: { blt: "free" } }),
      step("b", "ev2", 1, { after: ["losen-bolt"] }),
      step("c", ["iv", "ev22" as string], 1, { after: [{ step: "loosen-botl", lag: "PT1M" }] }),
    ]);
    expect(mendedIn(file).map(({ repair }) => repair)).toEqual([
      [{ op: "move", from: "/tasks/0/steps/1/when/blt", path: "/tasks/0/steps/1/when/bolt" }],
      [{ op: "replace", path: "/tasks/0/steps/2/after/0", value: "loosen-bolt" }],
      [{ op: "replace", path: "/tasks/0/steps/3/after/0/step", value: "loosen-bolt" }],
    ]);
  });

  it("[CHK1] is not proposed where two names are as near, or only the number is another", () => {
    const file = fileWith([
      step("bolt-1", "ev1", 1),
      step("cap-a", "ev1", 1),
      step("cap-b", "ev1", 1),
      step("x", "ev2", 1, { after: ["bolt-2", "cap-c"] }),
    ]);
    const found = check(file);
    expect(found.map(({ code, mend, repair }) => [code, mend, repair])).toEqual([
      ["file/no-such-reference", null, null],
      ["file/no-such-reference", null, null],
    ]);
  });

  it("[CHK1] drops the one `after` of a deadlock that points forwards", () => {
    const file = fileWith([
      step("a1", "ev1", 1, { after: ["b2"] }),
      step("a2", "ev1", 1),
      step("b1", "ev2", 1, { after: ["a2"] }),
      step("b2", "ev2", 1),
    ]);
    expect(mendedIn(file).map(({ mend }) => mend)).toEqual([[{ change: "a1", set: { after: [] } }]]);
    expect(mendedIn(file).map(({ mend }) => patchOf(file, mend))).toEqual([
      [{ op: "remove", path: "/tasks/0/steps/0/after/0" }],
    ]);
    const twice = fileWith([
      step("a", "ev1", 1, { after: ["b"] }),
      step("b", "ev2", 1, { after: ["c"] }),
      step("c", "iv", 1, { after: ["a"] }),
    ]);
    expect(check(twice).map(({ code, mend }) => [code, mend])).toEqual([["order/deadlock", null]]);
  });

  it("[CHK1] puts the missing translation before a step", () => {
    const file = fileWith(
      [
        step("ev1-to-boom", "iv", 1),
        step("work", ["ev1", "ev2"], 5, { at: "boom" }),
        step("home", ["ev1", "ev2"], null, { to: "hatch" }),
      ],
      OUTSIDE,
    );
    const mended = mendedIn(file);
    expect(mended.map(({ code }) => code)).toEqual(["place/not-there", "place/not-there"]);
    const add = { id: "ev1-to-boom-2", by: ["ev1"], do: "Move to Boom", to: "boom" };
    expect(mended[0]?.mend).toEqual([{ add, behind: "ev1-to-boom" }]);
    expect(patchOf(file, mended[0]?.mend ?? null)).toEqual([
      { op: "add", path: "/tasks/0/steps/1", value: add },
    ]);
    const first = fileWith(
      [step("work", "ev1", 5, { at: "boom" }), step("more", "ev1", 5, { at: "boom" })],
      OUTSIDE,
    );
    expect(mendedIn(first)[0]?.mend).toMatchObject([{ add: { id: "ev1-to-boom" }, first: "all" }]);
    const cutOff = { ...OUTSIDE, routes: [] };
    expect(check(fileWith([step("work", "ev1", 5, { at: "boom" })], cutOff))[0]).toMatchObject({
      code: "place/not-there",
      mend: null,
    });
  });

  it("[CHK1] corrects the place of a step where the next one shows it, and guesses at nothing", () => {
    const misplaced = fileWith(
      [step("work", "ev1", 5, { at: "boom" }), step("more", "ev1", 5, { at: "hatch" })],
      OUTSIDE,
    );
    expect(mendedIn(misplaced).map(({ mend }) => mend)).toContainEqual([
      { change: "work", set: { at: "hatch" } },
    ]);
    const alone = fileWith([step("work", "ev1", 5, { at: "boom" })], OUTSIDE);
    expect(check(alone).map(({ code, mend }) => [code, mend])).toEqual([["place/not-there", null]]);
  });

  it("[CHK1] keeps a step's conditions in the translation before it", () => {
    const file = fileWith(
      [
        step("ask", "ev1", 1, { decide: { id: "x", ask: "?", outcomes: ["y", "n"], expect: "y" } }),
        step("work", "ev1", 5, { at: "boom", when: { x: "n" } }),
        step("home", "ev1", null, { to: "hatch", when: { x: "n" } }),
      ],
      OUTSIDE,
    );
    expect(mendedIn(file)[0]?.mend?.[0]).toMatchObject({ add: { when: { x: "n" } } });
  });

  it("[CHK1] lets a receiver take part who is there, and only then", () => {
    const hand = (more: object) =>
      fileWith(
        [
          step("hand", "ev1", 1, {
            do: "Hand the lamp to EV2",
            moves: [{ item: "lamp", to: { crew: "ev2" } }],
            confirm: { by: "iv", text: "EV2 has the lamp" },
            ...more,
          }),
        ],
        { ...OUTSIDE, items: [{ id: "lamp", start: { crew: "ev1" } }] },
      );
    const here = hand({ at: "hatch" });
    expect(mendedIn(here).map(({ mend }) => mend)).toEqual([
      [{ change: "hand", set: { by: ["ev1", "ev2"] } }],
    ]);
    expect(mendedIn(here).map(({ mend }) => patchOf(here, mend))).toEqual([
      [{ op: "add", path: "/tasks/0/steps/0/by/-", value: "ev2" }],
    ]);
    expect(check(hand({ to: "boom", time: "PT1M" })).map(({ code, mend }) => [code, mend])).toContainEqual([
      "custody/receiver-absent",
      null,
    ]);
  });

  const path = "procedures/osier-ranging-head.procedure.json";
  const text = readFileSync(path, "utf8");
  /** Every id that a step of the file names, by JSON Pointer. */
  const references = [...walkStrings(JSON.parse(text), [])].filter(
    ([way]) =>
      (way[0] === "tasks" &&
        ["at", "to", "item", "place", "crew", "by", "after", "within"].includes(String(way.at(-1) ?? ""))) ||
      (way[0] === "tasks" && ["by", "after", "within"].includes(String(way.at(-2) ?? ""))),
  );
  test.prop([fc.nat({ max: references.length - 1 }), fc.nat(), fc.constantFrom("drop", "double")], {
    numRuns: 25,
  })(
    "[CHK1] takes its finding away and brings no error, whatever is misspelt in a long procedure",
    (which, letter, slip) => {
      const [way, word] = references[which] ?? [[], ""];
      const at = letter % word.length;
      const misspelt =
        slip === "drop"
          ? word.slice(0, at) + word.slice(at + 1)
          : word.slice(0, at) + word[at] + word.slice(at);
      const file = JSON.parse(text) as AnyFile;
      jsonPatch.applyPatch(file, [{ op: "replace", path: `/${way.join("/")}`, value: misspelt }]);
      for (const one of mendedIn(file)) expect(applied(file, one)).toBeTypeOf("object");
    },
    60_000,
  );
});

function* walkStrings(value: unknown, way: (string | number)[]): Generator<[(string | number)[], string]> {
  if (typeof value === "string") yield [way, value];
  else if (typeof value === "object" && value !== null) {
    for (const [key, child] of Object.entries(value)) yield* walkStrings(child, [...way, key]);
  }
}
