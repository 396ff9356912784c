import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Remark, RemarkKind } from "../../../src/core/remarks/index.ts";
import {
  foldRemarks,
  MOST_REMARKS,
  mergeRemarks,
  REMARK_FORMAT,
  REMARK_KINDS,
  readRemarks,
  remarkFindings,
  writeRemarks,
} from "../../../src/core/remarks/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { fileWith, step, task } from "../procedure-builder.ts";

const DIGEST = `sha-256:${"a".repeat(64)}`;
const OTHER = `sha-256:${"b".repeat(64)}`;

function remark(id: string, kind: RemarkKind, more: Partial<Remark> = {}): Remark {
  return {
    format: REMARK_FORMAT,
    id,
    procedure: "trial",
    revision: "B",
    text: DIGEST,
    step: null,
    by: { name: "K. Lind", role: "Flight lead" },
    at: "2031-04-02T09:00:00Z",
    kind,
    says: kind === "comment" ? "Too short" : "",
    to: null,
    ...more,
  };
}

const open = (remarks: readonly Remark[]) =>
  foldRemarks(remarks, "trial", DIGEST)
    .comments.filter(({ resolvedBy }) => resolvedBy.length === 0)
    .map(({ comment }) => comment.id);
const agreed = (remarks: readonly Remark[], text: string | null = DIGEST) =>
  foldRemarks(remarks, "trial", text).agreements.map(({ agreement, holds }) => [agreement.id, holds]);

const anyRemark = fc
  .record({
    id: fc.constantFrom("a", "b", "c", "d", "e"),
    kind: fc.constantFrom(...REMARK_KINDS),
    to: fc.constantFrom("a", "b", "c", "d", "z"),
    name: fc.constantFrom("K. Lind", "M. Roy"),
    at: fc.constantFrom("2031-04-02T09:00:00Z", "2031-04-02T11:00:00+02:00", "1970-01-01T00:00:00Z"),
  })
  .map(({ id, kind, to, name, at }) => remark(id, kind, { to, at, by: { name, role: "Ground" } }));
const remarks = fc.array(anyRemark, { maxLength: 12 });

describe("a file of remarks", () => {
  test.prop([remarks])("[WRT10] reads as what was written, in one order whatever they came in", (all) => {
    const { remarks: merged } = mergeRemarks(all);
    const text = writeRemarks(merged);
    expect(readRemarks(text)).toEqual({ remarks: merged, problems: [] });
    expect(writeRemarks(merged.toReversed())).toBe(text);
  });

  it("[WRT10] tells each line that is no remark, and reads the others", () => {
    const good = JSON.stringify(remark("a", "comment"));
    const bad = [
      "{",
      "7",
      JSON.stringify({ ...remark("b", "comment"), format: "tetherline.remark/9" }),
      JSON.stringify({ ...remark("b", "comment"), extra: 1 }),
      JSON.stringify(remark("b", "comment", { says: "  " })),
      JSON.stringify(remark("b", "resolved")),
      JSON.stringify(remark("b", "comment", { by: { name: "", role: "x" } })),
      JSON.stringify(remark("b", "comment", { at: "2031-02-31T09:00:00Z" })),
    ];
    const read = readRemarks(`\uFEFF${good}\n\n${bad.join("\n")}\n`);
    expect(read.remarks.map(({ id }) => id)).toEqual(["a"]);
    expect(read.problems.map(({ line }) => line)).toEqual([3, 4, 5, 6, 7, 8, 9, 10]);
    expect(read.problems.map(({ problem }) => inWords(problem))).toContain(
      "It comes from a newer version of the program.",
    );
  });

  it("[WRT10] is read up to 10,000 remarks, folded too", () => {
    const many = Array.from({ length: MOST_REMARKS + 1 }, (_, index) => remark(`r-${index}`, "comment"));
    const { remarks: read, problems } = readRemarks(many.map((one) => `${JSON.stringify(one)}\n`).join(""));
    expect([read.length, problems.length]).toEqual([MOST_REMARKS, 1]);
    expect(open(read)).toHaveLength(MOST_REMARKS);
  });
});

describe("remarks of several devices", () => {
  test.prop([remarks, remarks, remarks])(
    "[WRT10] merge to the same in whatever order and grouping",
    (a, b, c) => {
      const once = mergeRemarks(a, b, c);
      expect(mergeRemarks(c, a, b, a)).toEqual(once);
      const fold = (all: readonly Remark[]) => foldRemarks(all, "trial", DIGEST);
      expect(fold([...c, ...b, ...a])).toEqual(fold([...a, ...b, ...c]));
    },
  );

  it("[WRT10] with one id that differ count for nothing and are both told", () => {
    const [one, other] = [
      remark("a", "agreed"),
      remark("a", "agreed", { by: { name: "M. Roy", role: "IV" } }),
    ];
    const folded = foldRemarks([one, other], "trial", DIGEST);
    expect(folded.agreements).toEqual([]);
    expect(folded.conflicting).toHaveLength(2);
  });

  it("[WRT10] of another procedure are left alone", () => {
    expect(open([remark("a", "comment", { procedure: "another" })])).toEqual([]);
  });
});

describe("a comment", () => {
  const comment = remark("c", "comment");
  const resolved = remark("r", "resolved", { to: "c", by: { name: "M. Roy", role: "IV" } });

  it("[WRT10] is open until somebody resolves it, and again once that is taken back", () => {
    expect(open([comment])).toEqual(["c"]);
    expect(open([comment, resolved])).toEqual([]);
    expect(open([comment, resolved, remark("o", "reopened", { to: "r" })])).toEqual(["c"]);
  });

  it("[WRT10] is resolved whatever the clocks say, and stays so where two resolved it and one took it back", () => {
    expect(open([comment, { ...resolved, at: "1970-01-01T00:00:00Z" }])).toEqual([]);
    const again = remark("s", "resolved", { to: "c" });
    expect(open([comment, resolved, again, remark("o", "reopened", { to: "r" })])).toEqual([]);
  });

  it("[WRT10] answers that name nothing, or a thing of another kind, are without effect and told", () => {
    const stray = [remark("x", "resolved", { to: "nowhere" }), remark("y", "reopened", { to: "c" })];
    const folded = foldRemarks([comment, ...stray], "trial", DIGEST);
    expect(folded.idle.map(({ id }) => id)).toEqual(["x", "y"]);
    expect(open([comment, ...stray])).toEqual(["c"]);
  });

  const FILE = fileWith([task("one", [step("a", "ev1", 3), step("b", "ev1", 3)])], {
    revision: "B",
    contingencies: [{ id: "tear", title: "Tear", tasks: [task("aid", [step("p", "ev1", 5)])] }],
  });
  const found = (...all: readonly Remark[]) => remarkFindings(foldRemarks(all, "trial", DIGEST), FILE);

  it("[WRT10] that is open is a finding of level advice at its step", () => {
    const [one] = found(remark("c", "comment", { step: "b" }));
    expect(one).toMatchObject({ level: "advice", pointer: "/tasks/0/steps/1", steps: ["b"] });
    expect(one && inWords(one.message)).toBe("K. Lind (Flight lead): Too short");
    expect(found(remark("c", "comment", { step: "p" }))[0]?.pointer).toBe("/contingencies/0/tasks/0/steps/0");
    expect(found(comment, resolved)).toEqual([]);
  });

  it("[WRT10] stays open in a later revision and when its step is gone, and says so", () => {
    const said = (more: Partial<Remark>) =>
      found(remark("c", "comment", more)).map((one) => inWords(one.message));
    expect(said({ revision: "A" })[0]).toContain("revision A");
    expect(said({ revision: null })[0]).toContain("revision –");
    expect(said({ step: "gone" })[0]).toContain('"gone"');
    expect(found(remark("c", "comment", { step: "gone" }))[0]).toMatchObject({ pointer: "", steps: [] });
  });
});

describe("an agreement", () => {
  const agreement = remark("a", "agreed");

  it("[WRT10] holds for the very text it was given to, and for no other", () => {
    expect(agreed([agreement])).toEqual([["a", true]]);
    expect(agreed([agreement], OTHER)).toEqual([["a", false]]);
    expect(agreed([agreement], null)).toEqual([["a", false]]);
    expect(agreed([{ ...agreement, text: null }], null)).toEqual([["a", false]]);
  });

  it("[WRT10] is taken back by who gave it, in the same role, and by nobody else", () => {
    expect(agreed([agreement, remark("w", "withdrawn", { to: "a" })])).toEqual([]);
    const other = remark("w", "withdrawn", { to: "a", by: { name: "M. Roy", role: "Flight lead" } });
    expect(agreed([agreement, other])).toEqual([["a", true]]);
    expect(foldRemarks([agreement, other], "trial", DIGEST).idle).toEqual([other]);
  });
});
