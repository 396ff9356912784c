import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import type { Duration, Instant } from "../../src/core/units/index.ts";
import { english, englishWords } from "../../src/words/english/index.ts";
import type { MarkedWords, Message, MessageKey } from "../../src/words/index.ts";
import {
  addWords,
  inMarkedWords,
  inWords,
  lengthText,
  message,
  speak,
  words,
} from "../../src/words/index.ts";

afterEach(() => speak(english, englishWords));

/** Speaks a language of one message, whatever its arguments are. */
function saying(
  text: string,
  values: Message["arguments"] = {},
  language: { tag: string; direction: "ltr" | "rtl" } = { ...english },
): Message {
  speak(language, { "figures/list": text, "figures/between-clauses": "; " });
  return { key: "figures/list", arguments: values };
}

const MINUTE = 60_000;
const pet = (2 * 60 * MINUTE + 14 * MINUTE + 7_000) as Duration;
const at = Date.UTC(2031, 3, 2, 11, 14, 3) as Instant;

describe("a message in words", () => {
  it.each([
    ["{$x :length}", 45_000, "45 s"],
    ["{$x :length}", 65 * MINUTE, "1 h 05 min"],
    ["{$x :clock}", pet, "2:14:07"],
    ["{$x :hour-minute}", pet, "2:14"],
    ["{$x :pet}", pet, "2:14:07"],
    ["{$x :pet}", 74 * MINUTE, "1:14"],
    ["{$x :utc}", at, "2031-04-02 11:14"],
    ["{$x :utc form=second}", at, "2031-04-02 11:14:03"],
    ["{$x :utc form=time-minute}", at, "11:14"],
    ["{$x :utc form=time-second}", at, "11:14:03"],
    ["{$x :metres}", 18.54, "18.5 m"],
    ["{$x :mebibytes}", 1500 * 1024 * 1024, "1500 MiB"],
    ["{$x :integer}", 12_345, "12345"],
    ["{$x :number}", 0.1 + 0.2, "0.30000000000000004"],
    ["{$x :number minimumFractionDigits=1 maximumFractionDigits=1}", 3, "3.0"],
  ])("[WRD1] shows an argument by its function: %s", (text, value, shown) => {
    expect(inWords(saying(text, { x: value }))).toBe(shown);
  });

  it("[WRD1] lists names, with one word between all where a message asks for it", () => {
    const x = ["EV1", "EV2", "IV"];
    expect(inWords(saying("{$x :list}", { x }))).toBe("EV1, EV2 and IV");
    expect(inWords(saying("{$x :list}", { x: x.slice(1) }))).toBe("EV2 and IV");
    expect(inWords(saying("{$x :list}", { x: [] }))).toBe("");
    expect(inWords(saying("{$x :list of=any}", { x }))).toBe("EV1, EV2 or IV");
    expect(inWords(saying("{$x :list style=chained}", { x }))).toBe("EV1 and EV2 and IV");
    expect(inWords(saying("{$x :clauses}", { x }))).toBe("EV1; EV2; IV");
  });

  it("[WRD1] carries a whole message in another", () => {
    const finding = message("time/missing");
    expect(words("shelf/finding-at-line", { line: 3, finding })).toBe(
      "Line 3: Only a translation may leave its time out; say how long this step takes.",
    );
    expect(words("figures/list", { items: [message("course/cause-hold"), "EV2"] })).toBe("hold and EV2");
  });

  it("[WRD1] chooses the plural by the language's rules", () => {
    const counts = [0, 1, 2, 11].map((count) => words("shelf/errors", { count }));
    expect(counts).toEqual(["0 errors", "1 error", "2 errors", "11 errors"]);
    const arabic =
      ".input {$n :integer} .match $n zero {{zero}} one {{one}} two {{two}} few {{few}} many {{many}} * {{other}}";
    const forms = [0, 1, 2, 3, 11, 100].map((n) =>
      inWords(saying(arabic, { n }, { tag: "ar", direction: "ltr" })),
    );
    expect(forms).toEqual(["zero", "one", "two", "few", "many", "other"]);
  });

  it("[WRD3] isolates arguments in a language from right to left, and leaves them as they are in one from left to right", () => {
    const of = (direction: "ltr" | "rtl") =>
      inWords(saying("[{$x}]", { x: "EV1" }, { tag: "ar", direction }));
    expect(of("ltr")).toBe("[EV1]");
    expect(of("rtl")).toBe("\u200f[\u2068EV1\u2069]");
  });

  it("[WRD3] isolates each name of a list, and leaves nothing of an argument without text", () => {
    const of = (items: readonly string[]) =>
      inWords(saying("{$items :list}", { items }, { tag: "ar", direction: "rtl" }));
    expect(of(["EV1", "IV"])).toBe("\u200f\u2068\u2068EV1\u2069 و\u2068IV\u2069\u2069");
    expect(of([])).toBe("");
  });

  it("[WRD1] keeps the marked stretches apart for a screen, and drops the marks in a text", () => {
    const marked = message("follow/is-prepared", { title: "Mast" });
    expect(inWords(marked)).toMatch(/^Mast is prepared\. /);
    expect(inMarkedWords(marked)).toEqual([
      { mark: "b", inside: ["Mast"] },
      " is prepared. The clock starts PET 0; from then on every step is marked with one tap.",
    ]);
    expect(inMarkedWords(message("print/pet-zero"))).toEqual([
      "PET 0 at ",
      { mark: "blank", inside: [] },
      " UTC",
    ]);
  });

  it("[WRD1] takes an argument as it is: what an author wrote is no text of a message", () => {
    fc.assert(
      fc.property(fc.string(), (revision) => {
        expect(words("parts/revision", { revision })).toBe(`rev. ${revision}`);
      }),
    );
  });

  it("[WRD1] shows any finite number with the digits that it has", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e15, max: 1e15, noNaN: true }), (value) => {
        fc.pre(value === 0 || Math.abs(value) > 1e-4);
        const shown = words("figures/quantity", { quantity: { value: value || 0, unit: "1" } });
        expect(Number(shown)).toBe(value || 0);
        expect(shown).not.toContain(",");
      }),
    );
  });

  it("[WRD1] throws on what is our own mistake: a missing argument, another type, a function there is not, words not loaded", () => {
    expect(() => inWords(saying("{$x}"))).toThrow("could not be put in words");
    expect(() => inWords(saying("{$x :integer}", { x: "3" }))).toThrow("could not be put in words");
    expect(() => inWords(saying("{$x :utc form=year}", { x: at }))).toThrow("could not be put in words");
    expect(() => inWords(saying("{$x :no-such}", { x: "3" }))).toThrow("could not be put in words");
    speak(english, {});
    expect(() => words("parts/shelf")).toThrow("parts/shelf is not loaded in en-GB");
  });

  it("[WRD3] is said in the language in use, changed without a restart, its parts added as they are loaded", () => {
    expect(words("parts/shelf")).toBe("Shelf");
    speak({ tag: "fr", direction: "ltr" }, { "parts/shelf": "Étagère" });
    expect(words("parts/shelf")).toBe("Étagère");
    addWords({ "parts/read": "Lire" });
    expect([words("parts/shelf"), words("parts/read")]).toEqual(["Étagère", "Lire"]);
    speak(english, englishWords);
    expect(words("parts/shelf")).toBe("Shelf");
  });
});

describe("how long something takes", () => {
  it("[WRD1] is rounded to what matters", () => {
    expect(
      ["45000", "99000", "100000", "3900000", "-360000"].map((ms) => lengthText(Number(ms) as Duration)),
    ).toEqual(["45 s", "99 s", "2 min", "1 h 05 min", "6 min"]);
  });
});

describe("every text of English", () => {
  /** An argument of the kind that a function takes. */
  const argumentFor = (called: string | undefined) => {
    if (called === "list" || called === "clauses") return ["EV1", "EV2"];
    const quantity = { value: 3, unit: "kPa" };
    if (called === "quantity") return quantity;
    if (called === "range") return { least: quantity, most: quantity };
    return called === undefined || called === "string" || called === "message" ? "EV1" : 3;
  };

  /** A message as it looks, with a box where something is drawn that is no words. */
  const drawn = (marked: MarkedWords): string =>
    marked.map((part) => (typeof part === "string" ? part : drawn(part.inside) || "□")).join("");

  it("[WRD1] [WRD2] can be put in words, with an argument of the right kind for each of its names", () => {
    for (const [key, text] of Object.entries(englishWords)) {
      const called = new Map<string, string | undefined>();
      for (const [, name = "", by] of text.matchAll(/\{\$(\w+)(?: :([\w-]+))?[^}]*\}/g))
        called.set(name, by ?? called.get(name));
      const values = Object.fromEntries([...called].map(([name, by]) => [name, argumentFor(by)]));
      const said = drawn(inMarkedWords({ key: key as MessageKey, arguments: values }));
      if (!key.startsWith("figures/between")) expect(said.trim(), key).toBe(said);
      expect(said, key).not.toMatch(/\$|undefined|\[object| {2}/);
      expect(said, key).not.toBe("");
    }
  });
});
