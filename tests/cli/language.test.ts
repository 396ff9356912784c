import { expect, it } from "vitest";
import { frenchWords } from "../../src/words/french/index.ts";
import { tetherline } from "./run-tetherline.ts";

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
