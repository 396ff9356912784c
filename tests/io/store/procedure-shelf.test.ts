// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { describe, expect, it, vi } from "vitest";
import type { Instant } from "../../../src/core/units/index.ts";
import type { ProcedureShelf } from "../../../src/io/store/index.ts";
import { DexieProcedureShelf, MemoryProcedureShelf } from "../../../src/io/store/index.ts";
import { freshIndexedDb, openTab, procedureText, standing, start, until } from "./stand-ins.ts";

const shelves: readonly [string, () => Promise<ProcedureShelf>][] = [
  ["on disk", async () => new DexieProcedureShelf((await openTab(freshIndexedDb())).database, standing)],
  ["in memory", async () => new MemoryProcedureShelf(standing)],
];

describe.each(shelves)("a shelf %s", (_, open) => {
  it("keeps the text exactly and finds it by its key", async () => {
    const shelf = await open();
    const text = `\uFEFF${procedureText("ring-exchange", { revision: "B" })}\r\n`;
    const added = await shelf.addProcedure(text);
    const kept = {
      key: "ring-exchange",
      id: "ring-exchange",
      revision: "B",
      title: "Ring exchange",
      text,
      importedAt: start,
    };
    expect(added).toMatchObject({ kind: "added", procedure: kept });
    expect(await shelf.procedure("ring-exchange")).toEqual(kept);
    expect(await shelf.procedure("another")).toBeNull();
  });

  it("adds the same text once, and keeps two texts that claim the same id and revision", async () => {
    const shelf = await open();
    const [text, other] = [procedureText("ring"), procedureText("ring", { summary: "Another" })];
    await shelf.addProcedure(text);
    expect(await shelf.addProcedure(text, (start + 1) as Instant)).toMatchObject({
      kind: "known",
      procedure: { key: "ring", importedAt: start, revision: null },
    });
    expect(await shelf.addProcedure(other)).toMatchObject({ kind: "added", procedure: { key: "ring-2" } });
    expect(await shelf.addProcedure(procedureText("ring-2"))).toMatchObject({
      procedure: { key: "ring-2-2" },
    });
    expect(await shelf.addProcedure(procedureText("ring", { revision: "C" }))).toMatchObject({
      procedure: { key: "ring-3", revision: "C" },
    });
  });

  it("[WRT7] keeps who saved a revision and why, beside the one it was made from", async () => {
    const shelf = await open();
    const saved = { by: "Ground", why: "Bolt 3 takes longer" };
    await shelf.addProcedure(procedureText("ring", { revision: "B" }), start);
    await shelf.addProcedure(procedureText("ring", { revision: "C" }), (start + 1) as Instant, saved);
    const revisions = (await shelf.procedures()).map(({ revision, saved: note }) => [revision, note]);
    expect(revisions).toEqual([
      ["C", saved],
      ["B", undefined],
    ]);
    // Put in from a file again, it is still the one that was saved.
    await shelf.addProcedure(procedureText("ring", { revision: "C" }));
    expect(await shelf.procedure("ring-2")).toMatchObject({ saved });
  });

  it("refuses what does not read as a procedure, with the findings", async () => {
    const shelf = await open();
    for (const text of ["", "{", "[]", procedureText("ring", { crew: [] })]) {
      const added = await shelf.addProcedure(text);
      expect(added.kind).toBe("refused");
      expect(added.findings.some(({ level }) => level === "error")).toBe(true);
    }
    expect(await shelf.procedures()).toEqual([]);
  });

  it("lists by title, then the latest first, and calls back after each change", async () => {
    const shelf = await open();
    const onChange = vi.fn();
    const end = shelf.watchProcedures(onChange);
    await shelf.addProcedure(procedureText("b", { title: "Same" }));
    await shelf.addProcedure(procedureText("a", { title: "Same" }), (start + 1) as Instant);
    await shelf.addProcedure(procedureText("c", { title: "Before" }));
    expect((await shelf.procedures()).map(({ key }) => key)).toEqual(["c", "a", "b"]);
    await until(() => onChange.mock.calls.length > 0);

    await new Promise((resolve) => setTimeout(resolve, 20));
    onChange.mockClear();
    await shelf.removeProcedure("a");
    await until(() => onChange.mock.calls.length > 0);
    expect((await shelf.procedures()).map(({ key }) => key)).toEqual(["c", "b"]);
    end();
  });
});

describe("a shelf on a full disk", () => {
  it("says that a procedure was not kept, and why", async () => {
    const { database } = await openTab(freshIndexedDb());
    const shelf = new DexieProcedureShelf(database, standing);
    database.procedures.add = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    expect(await shelf.addProcedure(procedureText("ring"))).toMatchObject({
      kind: "not-kept",
      reason: "full",
    });
  });
});
