import { describe, expect, it } from "vitest";
import type { Entry } from "../../../src/core/log/index.ts";
import type { Extract, ExtractVerified } from "../../../src/core/seal/index.ts";
import { extractOf, readExtract, verifyExtract, writeExtract } from "../../../src/core/seal/index.ts";
import {
  entriesOf,
  FORM,
  GROUND,
  HUB,
  HUB_KEY,
  IV,
  keyOf,
  publicKey,
  sealedBy,
  seeds,
  wires,
  withCheckpoint,
  withNext,
} from "./sealed-log.ts";

const isRecord = ({ wire }: Entry) => wire.type === "tetherline.record.taken";

function extracted(log = wires(), isChosen: (entry: Entry) => boolean = isRecord): Extract {
  const made = extractOf(entriesOf(log), isChosen);
  if (made.kind !== "made") throw new Error(made.kind);
  return made.extract;
}

function verified(extract: Extract, trust: readonly string[] = [HUB_KEY]): ExtractVerified {
  const found = verifyExtract(extract, trust);
  if (!found) throw new Error("nothing to verify");
  return found;
}

/** The extract with one of its lines written otherwise. */
function spoiled(by: (line: Record<string, unknown>) => Record<string, unknown>): Extract {
  const [head = "", ...lines] = writeExtract(extracted()).trimEnd().split("\n");
  const others = lines.map((line) => {
    const value = JSON.parse(line) as Record<string, unknown>;
    const { type } = value["entry"] as { type: string };
    return JSON.stringify(type === "tetherline.record.taken" ? by(value) : value);
  });
  const read = readExtract([head, ...others].join("\n"));
  if (!read?.extract) throw new Error("no extract");
  return read.extract;
}

describe("an extract", () => {
  it("[SEL7] has what was chosen and what vouches for it, and nothing else", () => {
    const types = extracted().entries.map(({ entry }) => entry.wire.type.replace("tetherline.", ""));
    const records = wires().filter(({ type }) => type === "tetherline.record.taken").length;
    expect(records).toBeGreaterThan(0);
    expect(types.filter((type) => type === "record.taken")).toHaveLength(records);
    expect(new Set(types)).toEqual(
      new Set(["hub.named", "device.admitted", "record.taken", "checkpoint.made"]),
    );
  });

  it("[SEL7] is read as it was written", () => {
    expect(readExtract(writeExtract(extracted()))).toEqual({ extract: extracted(), problems: [] });
  });

  it("[SEL7] is whole under a trusted hub's checkpoint, and names what was left out", () => {
    const found = verified(extracted());
    expect(found).toMatchObject({ verdict: "whole", findings: [] });
    expect(found.checkpoint).toMatchObject({ by: HUB, trusted: true, entries: 11, code: FORM.code });
    const heldThere = found.checkpoint?.entries ?? 0;
    const left = found.leftOut.flatMap(({ numbers }) => numbers.split(","));
    const count = left.reduce((sum, range) => {
      const [first = 0, last = first] = range.split("-").map(Number);
      return sum + last - first + 1;
    }, 0);
    // The checkpoint itself is in the extract, and is not among what it held.
    expect(count + found.entries - 1).toBe(heldThere);
    expect(found.sources.map(({ source, by }) => [source, by?.name ?? null])).toContainEqual([
      GROUND,
      wires().some((wire) => wire["source"] === GROUND) ? expect.any(String) : null,
    ]);
  });

  it("[SEL7] is partly vouched for where nobody is trusted", () => {
    expect(verified(extracted(), []).verdict).toBe("partly");
    expect(verified(extracted(), [publicKey(keyOf(4))]).verdict).toBe("partly");
  });

  it("[SEL7] is broken: an entry changed, sealed again, proven by another path or from another walk", () => {
    const entryOf = (line: Record<string, unknown>) => line["entry"] as Record<string, unknown>;
    const kinds = (extract: Extract) => verified(extract).findings.map(({ kind }) => kind);
    const changed = spoiled((line) => ({ ...line, entry: { ...entryOf(line), actor: "ev2" } }));
    expect(verified(changed).verdict).toBe("broken");
    expect(kinds(changed)).toContain("seal-does-not-fit");
    const again = spoiled((line) => {
      const entry = entryOf(line);
      const seed = seeds[String(entry["source"])] as Uint8Array;
      return {
        ...line,
        entry: sealedBy(seed, { ...entry, data: { ...(entry["data"] as object), value: 9 } }),
      };
    });
    expect(verified(again).verdict).toBe("broken");
    expect(kinds(again)).toEqual(["not-proven"]);
    const other = spoiled((line) => ({ ...line, path: (line["path"] as string[]).toReversed() }));
    expect(kinds(other)).toEqual(["not-proven"]);
    const far = spoiled((line) => ({ ...line, entry: { ...entryOf(line), subject: "walk-other" } }));
    expect(kinds(far)).toContain("other-walk");
  });

  it("[SEL7] is broken without the checkpoint that it names, and partly vouched for without a seal", () => {
    const whole = extracted();
    const bare = {
      ...whole,
      entries: whole.entries.filter(({ entry }) => !/checkpoint/.test(entry.wire.type)),
    };
    expect(verified(bare)).toMatchObject({ verdict: "broken", checkpoint: null, leftOut: [] });
    const unsealed = spoiled(({ entry, ...line }) => {
      const { seal: _, ...rest } = entry as Record<string, unknown>;
      return { ...line, entry: rest };
    });
    expect(["partly", "broken"]).toContain(verified(unsealed).verdict);
  });

  it("[SEL7] is intact with an entry that its checkpoint did not hold", () => {
    const whole = extracted();
    const later = entriesOf(withNext(wires(), GROUND, "note.made", { text: "later" })).at(-1) as Entry;
    const more = { ...whole, entries: [...whole.entries, { entry: later, path: null }] };
    expect(verified(more).verdict).toBe("intact");
  });

  it("[SEL7] is not made without a checkpoint that fits, of nothing, or of what no checkpoint held", () => {
    const bare = wires().filter(({ type }) => !/checkpoint/.test(String(type)));
    expect(extractOf(entriesOf(bare), isRecord)).toEqual({ kind: "no-checkpoint" });
    expect(extractOf(entriesOf(wires().slice(1)), isRecord)).toEqual({ kind: "no-checkpoint" });
    expect(extractOf(entriesOf(wires()), () => false)).toEqual({ kind: "nothing-chosen" });
    expect(extractOf([], isRecord)).toEqual({ kind: "nothing-chosen" });
    const later = withNext(wires(), GROUND, "note.made", { text: "later" });
    expect(extractOf(entriesOf(later), ({ wire }) => wire.source === GROUND)).toEqual({
      kind: "behind",
      count: 1,
    });
    expect(verified(extracted(withCheckpoint(later), ({ wire }) => wire.source === GROUND)).verdict).toBe(
      "whole",
    );
  });

  it("[SEL7] of another text is none, and lines that are no entries are told", () => {
    expect(readExtract("")).toBeNull();
    expect(
      readExtract(
        wires()
          .map((wire) => JSON.stringify(wire))
          .join("\n"),
      ),
    ).toBeNull();
    const headless = readExtract('{"format":"tetherline.extract/1","walk":7}');
    expect(headless).toMatchObject({ extract: null, problems: [{ line: 1 }] });
    const [head = ""] = writeExtract(extracted()).split("\n");
    const entry = wires()[0];
    const read = readExtract(
      [
        head,
        "{",
        '{"entry":1}',
        JSON.stringify({ entry, path: ["x"] }),
        JSON.stringify({ entry, path: 1 }),
      ].join("\n"),
    );
    expect(read?.problems.map(({ line }) => line)).toEqual([2, 3, 4, 5]);
  });

  it("[SEL7] says nothing of sources that were not chosen", () => {
    const text = writeExtract(extracted());
    const chosen = new Set(extracted().entries.map(({ entry }) => entry.wire.source));
    for (const source of [IV, GROUND].filter((one) => !chosen.has(one))) {
      // Their numbers stand in the checkpoint, and nowhere else.
      expect(text.split(source).length - 1).toBe(1);
    }
  });
});
