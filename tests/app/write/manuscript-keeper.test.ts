import { describe, expect, it } from "vitest";
import type { Keeping, KeepingShelf } from "../../../src/app/write/manuscript-keeper.ts";
import { ManuscriptKeeper } from "../../../src/app/write/manuscript-keeper.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import type { Manuscript } from "../../../src/core/write/index.ts";
import { newManuscript } from "../../../src/core/write/index.ts";
import type { KeptAs } from "../../../src/io/store/index.ts";
import { openManuscripts } from "../../../src/io/store/index.ts";

function begun(title: string): Manuscript {
  const made = newManuscript({ title, crew: [{ call: "EV1", station: "outside" }], task: "One" });
  if (!made) throw new Error("the test's procedure is not sound");
  return made;
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 5));
const now = () => 0 as Instant;
const NEW = { key: "ring", from: null, version: 0 };

/** A shelf whose answers come when they are told to. */
class SlowShelf implements KeepingShelf {
  readonly asked: {
    readonly title: string;
    readonly basedOn: number;
    readonly answer: (kept: KeptAs) => void;
  }[] = [];
  keepManuscript({ title }: { readonly title: string }, basedOn: number): Promise<KeptAs> {
    return new Promise((answer) => this.asked.push({ title, basedOn, answer }));
  }
}

describe("keeping a manuscript", () => {
  it("[WRT1] goes one at a time, and of what waits only the latest is kept", async () => {
    const shelf = new SlowShelf();
    const told: Keeping["kind"][] = [];
    const keeper = new ManuscriptKeeper(shelf, NEW, ({ kind }) => told.push(kind));
    for (const title of ["One", "Two", "Three"]) keeper.keep(begun(title));
    expect(shelf.asked.map(({ title }) => title)).toEqual(["One"]);
    shelf.asked[0]?.answer({ kind: "kept", version: 1 });
    await settled();
    expect(shelf.asked.map(({ title, basedOn }) => [title, basedOn])).toEqual([
      ["One", 0],
      ["Three", 1],
    ]);
    expect(told).toEqual(["keeping"]);
    shelf.asked[1]?.answer({ kind: "kept", version: 2 });
    await settled();
    expect(told).toEqual(["keeping", "kept"]);
  });

  it("[WRT1] of two pages the later one is told, and writes over the other only when somebody decides so", async () => {
    const shelf = openManuscripts(null, now);
    const said: Keeping[] = [];
    const first = new ManuscriptKeeper(shelf, NEW, () => {});
    const second = new ManuscriptKeeper(shelf, NEW, (keeping) => said.push(keeping));
    first.keep(begun("First"));
    await settled();
    second.keep(begun("Second"));
    await settled();
    const told = said.at(-1);
    if (told?.kind !== "overtaken") throw new Error("the second page was not told");
    expect(told.by.title).toBe("First");
    expect((await shelf.manuscript("ring"))?.title).toBe("First");
    second.keepOver(begun("Second"), told.by);
    await settled();
    expect(said.at(-1)).toEqual({ kind: "kept" });
    expect((await shelf.manuscript("ring"))?.title).toBe("Second");
  });

  it("[WRT1] tells why nothing is kept, and tries again with the next gesture", async () => {
    const shelf = new SlowShelf();
    const told: Keeping[] = [];
    const keeper = new ManuscriptKeeper(shelf, NEW, (keeping) => told.push(keeping));
    keeper.keep(begun("One"));
    shelf.asked[0]?.answer({ kind: "not-kept", reason: "full" });
    await settled();
    expect(told.at(-1)).toEqual({ kind: "not-kept", reason: "full" });
    keeper.keep(begun("Two"));
    shelf.asked[1]?.answer({ kind: "kept", version: 1 });
    await settled();
    expect(told.at(-1)).toEqual({ kind: "kept" });
  });

  it("[WRT1] a mistake of the store is told too", async () => {
    const told: Keeping[] = [];
    const broken = { keepManuscript: () => Promise.reject(new Error("no")) };
    new ManuscriptKeeper(broken, NEW, (keeping) => told.push(keeping)).keep(begun("One"));
    await settled();
    expect(told.at(-1)).toEqual({ kind: "not-kept", reason: null });
  });
});
