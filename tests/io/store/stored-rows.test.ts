// Live queries look for the global one when Dexie is loaded, hence the first line.
import "fake-indexeddb/auto";

import { expect, it } from "vitest";
import { joinedStore } from "./joined-store.ts";
import { clock } from "./link-stand-ins.ts";
import { freshIndexedDb, openTab, start, walk } from "./stand-ins.ts";

const DAY = 86_400_000;

it("[LINK] the database keeps the names that its fields have always had, and rows under them read", async () => {
  const parts = freshIndexedDb();
  const { links, append } = await joinedStore(async (now) => (await openTab(parts, now)).store);
  await append("a day ahead");
  await links.setClock(walk, clock(-DAY), "own");

  const { database, store } = await openTab(parts);
  const row = await database.walks.get(walk);
  expect(row).toMatchObject({ ahead: -DAY });
  expect(row).not.toHaveProperty("clockOffset");
  const link = await database.links.get(walk);
  expect(link?.notices).toMatchObject([{ kind: "restamped", ahead: -DAY }]);
  expect(link?.notices[0]).not.toHaveProperty("clockOffset");

  expect((await store.links.get(walk))?.notices).toMatchObject([{ clockOffset: -DAY }]);
  const [next] = await store.append(walk, [
    { name: "note.made", data: { text: "by the hub's clock" }, at: start, actor: "iv" },
  ]);
  expect(Number(next?.hlc.slice(0, 15))).toBe(start - DAY);
});
