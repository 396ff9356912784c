import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Draft, Entry } from "../../../src/core/log/index.ts";
import { keyOf, mergeEntries, writeLines } from "../../../src/core/log/index.ts";
import type { Remark } from "../../../src/core/remarks/index.ts";
import { REMARK_FORMAT } from "../../../src/core/remarks/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import type { BackupParts } from "../../../src/io/backup/index.ts";
import {
  backupFileName,
  exportWalk,
  importWalkLog,
  kindOfText,
  restoreBackup,
  walkFileName,
  walkInPieces,
  writeBackup,
} from "../../../src/io/backup/index.ts";
import {
  MemoryEntryStore,
  MemoryProcedureShelf,
  MemoryRemarkStore,
  openStore,
} from "../../../src/io/store/index.ts";
import { worded } from "../../core/said.ts";
import {
  entryFrom,
  freshIndexedDb,
  note,
  opened,
  otherWalk,
  procedureText,
  standing,
  start,
  walk,
} from "../store/stand-ins.ts";

const device = () => openStore({ now: standing, indexedDb: freshIndexedDb() });

const gathered = async (pieces: AsyncIterable<string | null>) => {
  const all: (string | null)[] = [];
  for await (const piece of pieces) all.push(piece);
  return all;
};

const manyNotes = (count: number) => Array.from({ length: count }, (_, index) => note(`note ${index}`));

/** Everything a device holds, in an order that does not depend on how it came. */
async function contentOf({ log, shelf }: BackupParts) {
  const walks = await log.walks();
  const pages = await Promise.all(walks.map(({ walk: id }) => log.read(id, 0)));
  const entries = pages.flatMap((page) => page.entries);
  const procedures = await shelf.procedures();
  return {
    cards: walks,
    entries: entries
      .map(({ wire }) => wire)
      .map((wire) => JSON.stringify(wire))
      .sort(),
    procedures: procedures.map(({ text, importedAt }) => `${importedAt} ${text}`).sort(),
  };
}

const instants = fc.integer({ min: start - 1e9, max: start + 1e9 }).map((at) => at as Instant);
const drafts: fc.Arbitrary<Draft> = fc.oneof(
  fc.tuple(fc.string({ unit: "grapheme", maxLength: 40 }), instants).map(([text, at]) => note(text, at)),
  fc.string({ unit: "binary", maxLength: 20 }).map((title) => opened(title)),
  fc.constant<Draft>({ name: "clock.started", data: {}, at: start, actor: "iv" }),
);
const holdings = fc.record({
  walks: fc.dictionary(
    fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,8}$/),
    fc.array(drafts, { minLength: 1, maxLength: 6 }),
    { maxKeys: 4 },
  ),
  procedures: fc.array(
    fc.tuple(
      fc.stringMatching(/^[a-c]$/),
      fc.string({ unit: "grapheme", minLength: 1, maxLength: 20 }),
      instants,
    ),
    { maxLength: 4 },
  ),
});

describe("remarks in a backup", () => {
  const remark: Remark = {
    format: REMARK_FORMAT,
    id: "remark-one",
    procedure: "ring",
    revision: "B",
    text: null,
    step: null,
    by: { name: "K. Lind", role: "IV" },
    at: "2031-04-02T09:00:00Z",
    kind: "comment",
    says: "Too short",
    to: null,
  };

  it("[WRT10] come to another device once, and what is no remark is told", async () => {
    const [from, to] = [await device(), await device()];
    await from.remarks.addRemarks([remark]);
    const text = await writeBackup(from, start);
    const broken = text.replace('{"remark":', '{"remark":{"id":7}}\n{"remark":');
    const restored = await restoreBackup(to, broken);
    expect(restored.problems.map(({ line }) => line)).toEqual([2]);
    await restoreBackup(to, text);
    expect(await to.remarks.remarks(null)).toEqual([remark]);
  });

  it("[WRT10] are told from other files by their first line", () => {
    expect(kindOfText(`${JSON.stringify(remark)}\n`)).toBe("remarks");
    expect(kindOfText(JSON.stringify({ ...remark, format: "tetherline.procedure/2" }))).toBe("procedure");
  });
});

describe("a full backup", () => {
  it("[WRT7] brings who saved a revision and why, and leaves out a note that is none", async () => {
    const [from, to] = [await device(), await device()];
    const saved = { by: "Ground", why: "Bolt 3 takes longer" };
    await from.shelf.addProcedure(procedureText("ring"), start, saved);
    const text = await writeBackup(from, start);
    await restoreBackup(to, text);
    expect((await to.shelf.procedures())[0]?.saved).toEqual(saved);
    const other = await device();
    await restoreBackup(other, text.replace('"by":"Ground"', '"by":7'));
    expect((await other.shelf.procedures()).map((one) => one.saved)).toEqual([undefined]);
  });

  it("[LOG1] brings everything to another device, once, and restoring it again adds nothing", async () => {
    await fc.assert(
      fc.asyncProperty(holdings, async ({ walks, procedures }) => {
        const [from, to] = [await device(), await device()];
        for (const [id, some] of Object.entries(walks)) await from.log.append(id as WalkId, some);
        for (const [id, title, at] of procedures)
          await from.shelf.addProcedure(procedureText(id, { title }), at);
        for (const id of Object.keys(walks)) await from.log.seal(id as WalkId);
        const before = await contentOf(from);

        const text = await writeBackup(from, start);
        const restored = await restoreBackup(to, text);
        expect(restored.problems).toEqual([]);
        expect(await contentOf(to)).toEqual(before);
        expect(restored.entries.added).toBe(before.entries.length);
        expect(restored.procedures).toEqual({ added: before.procedures.length, known: 0 });

        const again = await restoreBackup(to, text);
        expect(again.entries).toEqual({
          added: 0,
          known: before.entries.length,
          restamped: [],
          conflicting: [],
        });
        expect(again.procedures).toEqual({ added: 0, known: before.procedures.length });
        expect(await contentOf(to)).toEqual(before);
        from.close();
        to.close();
      }),
      { numRuns: 40 },
    );
  });

  it("merges with what is there, and gives no device another's source", async () => {
    const [from, to] = [await device(), await device()];
    await from.log.append(walk, [note("theirs")]);
    await to.log.append(walk, [note("ours")]);
    const restored = await restoreBackup(to, await writeBackup(from, start));
    expect(restored.entries.added).toBe(1);
    expect((await to.log.read(walk, 0)).entries).toHaveLength(2);
    const [next] = await to.log.append(walk, [note("next")]);
    expect(next?.wire.source).toBe(to.device);
    expect(next?.wire.sequence).toBe("0000000002");
  });

  it("[LOG1] restored on the device it was made on, lets the sequence go on", async () => {
    const indexedDb = freshIndexedDb();
    const parts = { now: standing, indexedDb };
    const here = await openStore(parts);
    await here.log.append(walk, [note("a"), note("b")]);
    const text = await writeBackup(here, start);
    await here.log.removeWalk(walk);
    await restoreBackup(here, text);
    const [next] = await here.log.append(walk, [note("c")]);
    expect(next?.wire.sequence).toBe("0000000003");
  });

  it("takes what it can from a damaged file and tells of each line it could not use", async () => {
    const from = await device();
    await from.shelf.addProcedure(procedureText("ring"));
    await from.log.append(walk, [note("a"), note("b")]);
    const lines = (await writeBackup(from, start)).split("\n");
    lines[2] = lines[2]?.slice(0, 40) ?? "";
    lines.splice(2, 0, '{"procedure":{"text":"{}"}}', '{"procedure":7}', "null");

    const to = await device();
    const { problems, entries, procedures } = await restoreBackup(to, lines.join("\n"));
    expect(problems.map(({ line }) => line)).toEqual([3, 4, 5, 6, 0]);
    expect(worded(problems.at(-1)?.problem)).toBe(
      "the backup tells of 2 entries, of which 1 can be read; it may have been cut short",
    );
    expect([entries.added, procedures.added]).toEqual([1, 1]);
  });

  it("reports entries that conflict and leaves those here as they are", async () => {
    const parts = {
      log: new MemoryEntryStore("/devices/a", standing),
      shelf: new MemoryProcedureShelf(standing),
      remarks: new MemoryRemarkStore(),
    };
    const entry = entryFrom("/devices/ground", 1);
    await parts.log.takeIn([entryFrom("/devices/ground", 1, { data: { text: "another" } })]);
    const text = await writeBackup(parts, start);
    const to = {
      log: new MemoryEntryStore("/devices/b", standing),
      shelf: new MemoryProcedureShelf(standing),
      remarks: new MemoryRemarkStore(),
    };
    await to.log.takeIn([entry]);
    expect((await restoreBackup(to, text)).entries.conflicting.map(keyOf)).toEqual([keyOf(entry)]);
    expect((await to.log.read(walk, 0)).entries).toEqual([entry]);
  });

  it.each([
    ["", "this is not a backup of this program"],
    ["{}", "this is not a backup of this program"],
    ["null\n", "this is not a backup of this program"],
    ['{"format":"tetherline.backup/2"}', "made by a newer version"],
  ])("refuses %j", async (text, words) => {
    const to = await device();
    const { problems, entries } = await restoreBackup(to, text);
    expect(worded(problems)).toEqual([{ line: 1, problem: expect.stringContaining(words) }]);
    expect(entries.added).toBe(0);
  });

  it("is named after the moment", () => {
    expect(backupFileName(start)).toBe("tetherline-2031-04-02T0900.backup.jsonl");
  });
});

describe("the log of one walk", () => {
  it("[REV2] exported and imported is the same log, whatever the order it was kept in", async () => {
    const [one, two] = [
      new MemoryEntryStore("/devices/a", standing),
      new MemoryEntryStore("/devices/b", standing),
    ];
    const entries = [3, 1, 2].map((number) => entryFrom("/devices/ground", number));
    await one.takeIn(entries);
    await one.append(otherWalk, [note("not exported")]);
    const text = await exportWalk(one, walk);
    expect(text).toBe(writeLines(mergeEntries(entries).ordered));

    expect(await importWalkLog(two, text)).toEqual({
      added: 3,
      known: 0,
      restamped: [],
      conflicting: [],
      walks: [walk],
      problems: [],
    });
    expect(await exportWalk(two, walk)).toBe(text);
    expect((await importWalkLog(two, text)).known).toBe(3);
  });

  it("[REV2] in pieces has each entry once, whatever is entered meanwhile", async () => {
    const { log } = await device();
    await log.append(walk, manyNotes(600));
    let reads = 0;
    const pieces = await gathered(
      walkInPieces(
        {
          seal: (of) => log.seal(of),
          read: async (...of) => {
            reads += 1;
            if (reads === 2) await log.append(walk, [note("meanwhile")]);
            return log.read(...of);
          },
        },
        walk,
      ),
    );
    expect(pieces.length).toBeGreaterThan(2);
    expect(pieces.join("")).toBe(await exportWalk(log, walk));
    expect(await gathered(walkInPieces(log, otherWalk))).toEqual([]);
  });

  it("[REV2] in pieces is read anew when entries were taken out of it meanwhile", async () => {
    const store = new MemoryEntryStore("/devices/a", standing);
    await store.append(walk, manyNotes(600));
    let reads = 0;
    const pieces = await gathered(
      walkInPieces(
        {
          seal: (of) => store.seal(of),
          read: async (...of) => {
            reads += 1;
            if (reads === 2) {
              await store.removeWalk(walk);
              await store.takeIn([entryFrom("/devices/ground", 1)]);
            }
            return store.read(...of);
          },
        },
        walk,
      ),
    );
    expect(pieces.slice(pieces.indexOf(null))).toEqual([null, writeLines([entryFrom("/devices/ground", 1)])]);
  });

  it("takes in the good lines and tells of the others", async () => {
    const store = new MemoryEntryStore("/devices/a", standing);
    const lines = [entryFrom("/devices/ground", 1), entryFrom("/devices/ground", 2, { subject: otherWalk })];
    const imported = await importWalkLog(store, `not json\n${writeLines(lines)}{"specversion":"1.0"}`);
    expect(imported).toMatchObject({ added: 2, walks: [walk, otherWalk] });
    expect(imported.problems.map(({ line }) => line)).toEqual([1, 4]);
  });

  it("has a file name that any disk takes", () => {
    expect(walkFileName(walk)).toBe("walk-1.walk.jsonl");
    expect(walkFileName("../a:b\\c?" as WalkId)).toBe("..-a-b-c-.walk.jsonl");
  });
});

describe("telling files apart", () => {
  const line = (entry: Entry) => writeLines([entry]);

  it.each([
    ["a procedure", procedureText("ring"), "procedure"],
    [
      "a procedure over many lines, with a byte order mark",
      `\uFEFF{\n "format": "tetherline.procedure/1"\n}`,
      "procedure",
    ],
    ["a broken procedure", "{ \n", "procedure"],
    ["surprises over many lines", `{\n  "format": "tetherline.surprises/1"\n}`, "surprises"],
    ["newer surprises", `{"format":"tetherline.surprises/9","title":"t"}`, "surprises"],
    [
      "a procedure that speaks of them",
      `{"format":"tetherline.procedure/2","title":"tetherline.surprises/1"}`,
      "procedure",
    ],
    ["a log", line(entryFrom("/devices/ground", 1)).repeat(2), "log"],
    ["a log of one line", line(entryFrom("/devices/ground", 1)).trim(), "log"],
    ["an extract", '{"format":"tetherline.extract/1","walk":"w"}\n{}', "extract"],
    ["a newer backup", '{"format":"tetherline.backup/9"}\n', "backup"],
    ["nothing", "", "unknown"],
    ["a list", "[]", "unknown"],
    ["prose", "Dear all", "unknown"],
  ] as const)("knows %s", (_, text, kind) => {
    expect(kindOfText(text)).toBe(kind);
  });
});
