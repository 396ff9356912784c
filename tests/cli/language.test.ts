import { afterAll, expect, it } from "vitest";
import { frenchWords } from "../../src/words/french/index.ts";
import { fileWith, step } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const PRACTICE = "procedures/practice.procedure.json";

it("[WRD2] speaks the language that is asked for, wherever the option stands, and English again the next time", async () => {
  const english = await tetherline("--help");
  expect(english.out).toContain("say what is wrong with procedures");
  for (const args of [
    ["--lang", "fr", "--help"],
    ["--help", "--lang=fr-CA"],
  ]) {
    const { out, status } = await tetherline(...args);
    expect(status).toBe(0);
    expect(out.replaceAll(/\s+/g, " ")).toContain(frenchWords["help/check"]?.replaceAll(/\s+/g, " "));
  }
  expect((await tetherline("--help")).out).toBe(english.out);
});

it("[WRD2] says which languages there are when there is none such", async () => {
  expect(await tetherline("--lang", "tlh", "--help")).toMatchObject({
    status: 2,
    err: expect.stringContaining("en, fr, de, ja and ar"),
  });
  expect((await tetherline("--help", "--lang")).status).toBe(2);
});

it("[WRD4] plans in the texts that a procedure carries in the language asked for, and as written otherwise", async () => {
  const plan = async (...args: string[]) => (await tetherline("plan", PRACTICE, ...args)).out;
  const french = await plan("--lang", "fr");
  expect(french).toContain("Ouvrir la porte extérieure");
  expect(french).not.toContain("Open the outer door");
  expect(await plan("--lang", "en")).toContain("Open the outer door");
  expect(await plan()).toContain("Open the outer door");
  const times = (out: string) => out.match(/\d+:\d\d:\d\d/g);
  expect(times(french)).toEqual(times(await plan()));
});

it("[WRD4] shows the texts that are asked for apart from the language spoken, in every command that shows any", async () => {
  const log = scratch.path("practice.walk.jsonl");
  const START = "2031-04-02T09:00:00Z";
  await tetherline("rehearse", PRACTICE, "--start", START, "--out", log);
  for (const command of [
    ["plan", PRACTICE],
    ["split", PRACTICE],
    ["state", log],
    ["review", log],
  ]) {
    const told = async (...args: string[]) => (await tetherline(...command, ...args)).out;
    const english = await told();
    const french = await told("--texts", "fr");
    expect(french, command[0]).not.toBe(english);
    expect(french, command[0]).toContain("une lampe à Teasel Hut");
    expect(await told("--texts", "author"), command[0]).toBe(english);
    expect(await told("--lang", "en", "--texts", "fr"), command[0]).toBe(french);
    expect(await told("--lang", "fr", "--texts", "en"), command[0]).not.toContain("une lampe à Teasel Hut");
    expect(await told("--json", "--texts", "fr"), command[0]).toBe(await told("--json"));
  }
});

it("[WRD4] says which texts there are when those asked for are not", async () => {
  const missing = await tetherline("plan", PRACTICE, "--texts", "pt-BR");
  expect(missing).toMatchObject({ status: 2, out: "" });
  expect(missing.err).toMatch(
    /^The procedure has no texts in “pt-BR”: .*fr.* are there, and “author” for those as written\.\n$/,
  );
  const none = scratch.write("plain.procedure.json", JSON.stringify(fileWith([step("a", "ev1", 5)])));
  expect((await tetherline("plan", none, "--texts", "fr")).err).toBe(
    "The procedure has no texts in “fr”, and none but its author’s.\n",
  );
  expect((await tetherline("plan", none, "--lang", "fr")).status).toBe(0);
});
