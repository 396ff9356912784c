import { fc, it } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { LIBRARY, libraryOf, revisionHash } from "../../../src/core/library/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import { laterOf, roleRefusal, stamp } from "../../../src/core/log/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";

/** A library that several devices write to, each knowing what came before. */
class Planners {
  readonly entries: Entry[] = [];
  #made = new Map<string, number>();

  keep(by: string, text: string, bases: readonly string[] = [], why = "Because."): string {
    const at = (1_000_000 + this.entries.length * 1000) as Instant;
    const source = `/devices/${by}`;
    const made = this.#made.get(source) ?? 0;
    const seen = this.entries.reduce<Entry["hlc"] | null>((latest, { hlc }) => laterOf(latest, hlc), null);
    const data = { text, bases: bases.map(revisionHash), why };
    this.entries.push(
      stamp({ name: "revision.kept", data, at, actor: by }, LIBRARY, { source, made, seen }, at),
    );
    this.#made.set(source, made + 1);
    return text;
  }
}

const file = (revision: string, more: object = {}) =>
  JSON.stringify({ id: "ring", title: "Ring exchange", revision, ...more });

/** Two planners who went on from one revision. */
function twoPlanners() {
  const planners = new Planners();
  const a = planners.keep("ada", file("A"));
  const b = planners.keep("ada", file("B"), [a]);
  const c = planners.keep("ben", file("C"), [b]);
  const d = planners.keep("ada", file("C", { summary: "another" }), [b]);
  return { planners, a, b, c, d };
}

const ring = (planners: Planners) => {
  const [procedure] = libraryOf(planners.entries).procedures;
  if (!procedure) throw new Error("no procedure");
  return procedure;
};

describe("the library", () => {
  it("[WRT7] keeps every revision with who, when and why, named by its text", () => {
    const { planners, a, d } = twoPlanners();
    const { title, revisions } = ring(planners);
    expect(title).toBe("Ring exchange");
    expect(revisions.map(({ revision, by, why }) => [revision, by, why])).toEqual([
      ["A", "ada", "Because."],
      ["B", "ada", "Because."],
      ["C", "ben", "Because."],
      ["C", "ada", "Because."],
    ]);
    expect(revisions[0]).toMatchObject({ text: a, hash: revisionHash(a), at: 1_000_000, bases: [] });
    expect(revisions[3]?.text).toBe(d);
  });

  it("[CHG5] tells two that went on from one revision, and the latest that both were made from", () => {
    const { planners, b, c, d } = twoPlanners();
    const { heads, apart } = ring(planners);
    expect(heads.map(({ text }) => text)).toEqual([c, d]);
    expect(apart).toMatchObject({ one: { text: c }, other: { text: d }, base: { text: b } });
  });

  it("[CHG5] is one again when a revision was made from both", () => {
    const { planners, c, d } = twoPlanners();
    const merged = planners.keep("ben", file("D"), [c, d]);
    const { heads, apart, revisions } = ring(planners);
    expect(heads.map(({ text }) => text)).toEqual([merged]);
    expect(apart).toBeNull();
    expect(revisions).toHaveLength(5);
  });

  it("[CHG5] tells two without a common base, and goes on with the others when there are three", () => {
    const planners = new Planners();
    const [a, b, c] = ["A", "B", "C"].map((revision) => planners.keep("ada", file(revision)));
    expect(ring(planners).apart).toMatchObject({ one: { text: a }, other: { text: b }, base: null });
    planners.keep("ada", file("D"), [a ?? "", b ?? ""]);
    expect(ring(planners).apart?.one.text).toBe(c);
  });

  it("[WRT7] takes one text once, whoever keeps it again and with whatever base", () => {
    const { planners, a, b } = twoPlanners();
    planners.keep("ben", a, [b], "Again.");
    const { revisions, heads } = ring(planners);
    expect(revisions).toHaveLength(4);
    expect(revisions[0]).toMatchObject({ by: "ada", bases: [] });
    expect(heads).toHaveLength(2);
  });

  it("[WRT7] lets no base count that comes later or is of another procedure", () => {
    const planners = new Planners();
    const later = file("B");
    const first = planners.keep("ada", file("A"), [later]);
    planners.keep("ada", later, [first]);
    const other = planners.keep("ada", JSON.stringify({ id: "mast", title: "Mast" }), [later]);
    const { procedures } = libraryOf(planners.entries);
    expect(procedures.map(({ id, heads }) => [id, heads.map(({ text }) => text)])).toEqual([
      ["mast", [other]],
      ["ring", [later]],
    ]);
    expect(procedures[1]?.revisions[0]?.bases).toEqual([]);
  });

  it("[WRT7] counts what is no procedure, and takes a text without a title by its id", () => {
    const planners = new Planners();
    for (const text of ["{", "7", "null", '{"id":""}']) planners.keep("ada", text);
    planners.keep("ada", '{"id":"bare"}');
    expect(libraryOf(planners.entries)).toMatchObject({
      unreadable: 4,
      procedures: [{ id: "bare", title: "bare", revisions: [{ revision: null }] }],
    });
  });

  it.prop([fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 })])(
    "[WRT7] is the same whatever the order in which its entries came, and when some come twice",
    (order) => {
      const { planners } = twoPlanners();
      const shuffled = order.flatMap((index) => planners.entries[index] ?? []);
      expect(libraryOf([...shuffled, ...shuffled])).toEqual(libraryOf(planners.entries));
    },
  );

  it("[LOG2] is written by those who lead alone", () => {
    const { planners } = twoPlanners();
    const [entry] = planners.entries;
    if (!entry) throw new Error("no entry");
    expect(roleRefusal(entry, "lead", "/devices/ada")).toBeNull();
    expect(roleRefusal(entry, "marker", "/devices/ada")?.reason).toBe("role");
    expect(roleRefusal(entry, "watcher", "/devices/ada")?.reason).toBe("role");
  });
});
