import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Change } from "../../../src/core/procedure/index.ts";
import { parseProcedure, procedureFileOf } from "../../../src/core/procedure/index.ts";
import type { About, Manuscript } from "../../../src/core/write/index.ts";
import {
  copyOf,
  gestureOn,
  keptOf,
  MOST_GESTURES,
  manuscriptFrom,
  manuscriptOf,
  newManuscript,
  redone,
  typedOn,
  undone,
} from "../../../src/core/write/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { anyChange, procedureFiles } from "../procedure-files.ts";

const about = (before: string, after: string): About => ({
  name: "set",
  before: { rows: [before], scroll: 10 },
  after: { rows: [after], scroll: 20 },
});
const ANCHOR = { rows: [], scroll: 0 };

function begun(text: string): Manuscript {
  const manuscript = manuscriptOf(text);
  if (!manuscript) throw new Error("the test's text is no procedure");
  return manuscript;
}

function made(manuscript: Manuscript, ...changes: readonly Change[]): Manuscript {
  const written = gestureOn(manuscript, changes, about("a", "b"));
  if (written.problem) throw new Error(inWords(written.problem));
  return written.manuscript;
}

/** Everything undone that can be. */
function allUndone(manuscript: Manuscript): Manuscript {
  let current = manuscript;
  for (let next = undone(current); next; next = undone(current)) current = next.manuscript;
  return current;
}

const TEXT = `{ "format": "tetherline.procedure/1", "id": "trial",   "title": "Trial",
  "crew": [{ "id": "ev1", "call": "EV1", "station": "inside" }],
  "tasks": [
    { "id": "one", "title": "One", "steps": [
      { "id": "a", "by": ["ev1"], "do": "Do a", "time": "PT1M" },
      { "do": "Do b", "time": "PT2M", "id": "b", "by": ["ev1"] }
    ] }
  ] }
`;

describe("a manuscript", () => {
  it("[WRT1] is begun from a text, or from nothing with a title and a crew", () => {
    expect(begun(TEXT)).toMatchObject({ base: TEXT, text: TEXT, done: [], undone: [], unread: null });
    expect(manuscriptOf("{")).toBeNull();
    expect(manuscriptOf('{"format": "tetherline.procedure/1"}')).toBeNull();
    const fresh = newManuscript({
      title: "Bring in the lamp",
      crew: [
        { call: "EV1", station: "outside" },
        { call: "EV1", station: "outside" },
      ],
      task: "First task",
    });
    expect(fresh?.file).toMatchObject({ id: "bring-in-the-lamp", crew: [{ id: "ev1" }, { id: "ev1-2" }] });
    expect(fresh && parseProcedure(JSON.parse(fresh.text)).procedure).not.toBeNull();
    expect(newManuscript({ title: "", crew: [], task: "First task" })).toBeNull();
  });

  it("[WRT1] a copy has an id and a title of its own, and else the lines of what it was copied from", () => {
    const copy = copyOf({ text: TEXT, id: "other", title: "Copy of Trial" });
    expect(copy?.file).toMatchObject({ id: "other", title: "Copy of Trial", revision: "A" });
    expect(copy?.text).toContain('{ "do": "Do b", "time": "PT2M", "id": "b", "by": ["ev1"] }');
    expect(copyOf({ text: "{", id: "other", title: "x" })).toBeNull();
  });

  it("[WRT1] [CHG6] a gesture alters the lines that it concerns, and undo gives the text back to the byte", () => {
    const first = begun(TEXT);
    const changed = made(first, { change: "a", set: { time: "PT9M" } }, { drop: "b" });
    expect(changed.text).toContain('"id": "trial",   "title": "Trial"');
    expect(changed.text).toContain('"PT9M"');
    const back = undone(changed);
    expect(back?.manuscript.text).toBe(TEXT);
    expect(back?.manuscript.file).toEqual(first.file);
    expect(back?.anchor).toEqual({ rows: ["a"], scroll: 10 });
    const again = back && redone(back.manuscript);
    expect(again?.manuscript.text).toBe(changed.text);
    expect(again?.manuscript.file).toEqual(changed.file);
    expect(again?.anchor).toEqual({ rows: ["b"], scroll: 20 });
    expect(undone(first)).toBeNull();
    expect(redone(first)).toBeNull();
  });

  it("[WRT1] a gesture is made whole or not at all, and says why", () => {
    const first = begun(TEXT);
    const missing = gestureOn(first, [{ drop: "a" }, { drop: "gone" }], about("a", "a"));
    expect(missing.problem && inWords(missing.problem)).toBe('step "gone": there is none');
    const shapeless = gestureOn(first, [{ change: "a", set: { time: "soon" } }], about("a", "a"));
    expect(shapeless.manuscript).toBeNull();
    expect(shapeless.problem && inWords(shapeless.problem)).toMatch(/time/);
  });

  it("[WRT1] one that leaves something dangling is made, and is a finding", () => {
    const { file } = made(begun(TEXT), { change: "a", set: { at: "nowhere" } });
    expect(parseProcedure(file).findings.map(({ code }) => code)).toEqual(["file/no-such-reference"]);
  });

  it("[WRT1] changes that change nothing are no gesture", () => {
    const first = begun(TEXT);
    expect(made(first, { change: "a", set: { time: "PT1M" } })).toBe(first);
  });

  it("[WRT1] what no gesture touches stays the same object, so that its row need not be drawn", () => {
    const first = begun(TEXT);
    const b = (manuscript: Manuscript | undefined) => manuscript?.file.tasks[0]?.steps[1];
    const changed = made(first, { change: "a", set: { time: "PT9M" } });
    expect(b(changed)).toBe(b(first));
    expect(b(undone(changed)?.manuscript)).toBe(b(first));
  });

  it("[WRT1] keeps the last 500 gestures", () => {
    let manuscript = begun(TEXT);
    for (let minute = 1; minute <= MOST_GESTURES + 5; minute += 1)
      manuscript = made(manuscript, { change: "a", set: { time: `PT${minute + 1}M` } });
    expect(manuscript.done).toHaveLength(500);
    expect(allUndone(manuscript).file.tasks[0]?.steps[0]).toMatchObject({ time: "PT6M" });
  });

  it("[WRT1] what is kept of it gives it back, with every undo", () => {
    const changed = undone(made(made(begun(TEXT), { drop: "b" }), { change: "a", set: { do: "Else" } }));
    const kept = JSON.parse(JSON.stringify(changed && keptOf(changed.manuscript)));
    expect(manuscriptFrom(kept)).toEqual(changed?.manuscript);
    expect(manuscriptFrom({ ...kept, text: "{" })).toBeNull();
  });

  it("[WRT1] a text that was typed and reads is one gesture, and stands as it was typed", () => {
    const typed = TEXT.replace('"Do a"', '"Do   it"').replace("\n  ] }", "\n\n  ] }");
    const next = typedOn(begun(TEXT), typed, ANCHOR);
    expect(next).toMatchObject({ text: typed, unread: null });
    expect(next.done).toHaveLength(1);
    expect(next.done[0]?.changes).toEqual([{ change: "a", set: { do: "Do   it" } }]);
    expect(undone(next)?.manuscript.text).toBe(TEXT);
  });

  it("[WRT1] a text that does not read is kept beside, touches nothing, and is gone once it reads", () => {
    const first = begun(TEXT);
    const torn = typedOn(first, TEXT.slice(0, -4), ANCHOR);
    expect(torn).toEqual({ ...first, unread: TEXT.slice(0, -4) });
    expect(made(torn, { drop: "b" }).unread).toBe(TEXT.slice(0, -4));
    expect(typedOn(torn, TEXT, ANCHOR)).toEqual(first);
  });

  test.prop([procedureFiles, fc.array(fc.array(anyChange, { maxLength: 3 }), { maxLength: 6 })])(
    "[WRT1] after any gestures it has the shape of a procedure, and undoing all gives the first bytes",
    (file, gestures) => {
      const text = JSON.stringify(file, null, 2);
      let current = begun(text);
      for (const changes of gestures) {
        const written = gestureOn(current, changes, about("a", "a"));
        if (written.manuscript) current = written.manuscript;
        expect(procedureFileOf(current.file)).not.toBeNull();
        expect(JSON.parse(current.text)).toEqual(current.file);
      }
      const last = current;
      const first = allUndone(current);
      expect(first.text).toBe(text);
      expect(first.file).toEqual(file);
      current = first;
      for (let next = redone(current); next; next = redone(current)) current = next.manuscript;
      expect(current.text).toBe(last.text);
      expect(current.file).toEqual(last.file);
    },
  );

  test.prop([procedureFiles, procedureFiles])(
    "[WRT1] any procedure may be typed over any other, and is taken back whole",
    (one, other) => {
      const [before, after] = [JSON.stringify(one), JSON.stringify(other, null, 1)];
      const typed = typedOn(begun(before), after, ANCHOR);
      expect(typed.text).toBe(after);
      expect(typed.file).toEqual(other);
      expect(allUndone(typed).text).toBe(before);
    },
  );

  it("[WRT1] a long procedure is undone to the byte too", () => {
    const text = readFileSync("procedures/osier-ranging-head.procedure.json", "utf8");
    const first = begun(text);
    const ids = first.file.tasks.flatMap(({ steps }) => steps.map(({ id }) => id));
    let current = first;
    for (const id of ids.slice(0, 20)) current = made(current, { change: id, set: { time: "PT4M" } });
    current = made(current, { drop: ids[3] ?? "" }, { move: ids[40] ?? "", behind: ids[2] ?? "" });
    expect(allUndone(current).text).toBe(text);
  });
});
