import { expect, it } from "vitest";
import { frenchWords } from "../../src/words/french/index.ts";
import { tetherline } from "./run-tetherline.ts";

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
