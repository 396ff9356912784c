import { expect, it } from "vitest";
import { Listeners } from "../../../src/core/units/index.ts";

it("tells every callback, one that was added twice twice, and none that was removed", () => {
  const listeners = new Listeners<[word: string, number: number]>();
  const heard: string[] = [];
  const first = (word: string, number: number) => heard.push(`first ${word} ${number}`);
  const removeOnce = listeners.add(first);
  listeners.add(first);
  const removeSecond = listeners.add((word) => heard.push(`second ${word}`));
  listeners.tell("a", 1);
  expect(heard).toEqual(["first a 1", "first a 1", "second a"]);

  removeOnce();
  removeSecond();
  removeSecond();
  heard.length = 0;
  listeners.tell("b", 2);
  expect(heard).toEqual(["first b 2"]);
  expect(listeners.size).toBe(1);
});

it("lets a callback remove itself and add another while it is told", () => {
  const listeners = new Listeners();
  const heard: string[] = [];
  const remove = listeners.add(() => {
    heard.push("once");
    remove();
    listeners.add(() => heard.push("later"));
  });
  listeners.add(() => heard.push("always"));
  listeners.tell();
  expect(heard).toEqual(["once", "always"]);
  listeners.tell();
  expect(heard).toEqual(["once", "always", "always", "later"]);
});

it("tells after the code that runs at the moment, and only callbacks that are still there", async () => {
  const listeners = new Listeners();
  const heard: string[] = [];
  const remove = listeners.add(() => heard.push("removed"));
  listeners.tellSoon();
  listeners.add(() => heard.push("there"));
  remove();
  expect(heard).toEqual([]);
  await null;
  expect(heard).toEqual(["there"]);
});
