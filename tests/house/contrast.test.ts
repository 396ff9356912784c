import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

type Tokens = ReadonlyMap<string, string>;

/** The colours that each theme sets, read from the style sheet itself. */
function themes(css: string): ReadonlyMap<string, Tokens> {
  const blocks = css.replace(/\/\*[\s\S]*?\*\//g, "").matchAll(/:root\[data-theme="(\w+)"\]\s*\{([^}]*)\}/g);
  return new Map(
    [...blocks].map(([, theme = "", body = ""]) => [
      theme,
      new Map(
        [...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6});/g)].map(([, name = "", value = ""]) => [
          name,
          value,
        ]),
      ),
    ]),
  );
}

/** Relative luminance, 0 to 1: WCAG 2.2, definition of relative luminance. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Contrast ratio, 1 to 21: WCAG 2.2, definition of contrast ratio. */
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const grounds = ["paper", "sheet", "wash"];
const alerts = ["warning", "caution", "note"];
const lanes = [1, 2, 3, 4, 5, 6].map((lane) => `lane-${lane}`);
const skies = ["sky-daylight", "sky-penumbra", "sky-darkness", "contact"];

type Pairing = readonly [text: string, ground: string];
const on = (texts: readonly string[], backs: readonly string[]): Pairing[] =>
  texts.flatMap((text) => backs.map((back): Pairing => [text, back]));

/** What stands on what, and how far apart the two must be: step text 7, other text 4.5, shapes 3. */
const required: readonly (readonly [least: number, what: string, pairings: readonly Pairing[]])[] = [
  [7, "step text", on(["ink"], [...grounds, "warning-ground", "caution-ground", "note-ground"])],
  [7, "the text of a button", on(["action-ink"], ["action"])],
  [4.5, "other text", on(["soft"], grounds)],
  [4.5, "text on the timeline's bands", on(["ink"], skies)],
  [4.5, "a lane's call sign", on(lanes, ["paper", "sheet"])],
  [4.5, "the word of an alert on its own ground", alerts.map((alert): Pairing => [alert, `${alert}-ground`])],
  [3, "an alert's bar beside the page", on(alerts, grounds)],
  [3, "strands and bars", on(lanes, [...grounds, ...skies])],
  [3, "edges and the focus ring", on(["edge", "focus", "action"], grounds)],
];

describe("the contrast of the themes", () => {
  const found = themes(readFileSync("src/app/theme/tokens.css", "utf8"));

  it("is computed as published", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
    expect(contrast("#777777", "#ffffff")).toBeCloseTo(4.48, 2);
  });

  it("covers three themes with the same names", () => {
    expect([...found.keys()].sort()).toEqual(["day", "dim", "night"]);
    const names = [...found.values()].map((tokens) => [...tokens.keys()].sort());
    expect(names[0]?.length).toBeGreaterThan(25);
    expect(names[1]).toEqual(names[0]);
    expect(names[2]).toEqual(names[0]);
  });

  for (const [theme, tokens] of found)
    for (const [least, what, pairings] of required)
      it(`${theme}: ${what}, at least ${least}:1`, () => {
        const colour = (name: string) => tokens.get(name) ?? expect.fail(`no token --${name}`);
        const short = pairings
          .map(([text, ground]) => ({ text, ground, ratio: contrast(colour(text), colour(ground)) }))
          .filter(({ ratio }) => ratio < least)
          .map(({ text, ground, ratio }) => `${text} on ${ground}: ${ratio.toFixed(2)}`);
        expect(pairings.length).toBeGreaterThan(0);
        expect(short).toEqual([]);
      });

  it("dim: hardly any blue or green light", () => {
    for (const [name, value] of found.get("dim") ?? []) {
      const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
        Number.parseInt(value.slice(at, at + 2), 16),
      );
      expect(Math.max(green, blue), name).toBeLessThanOrEqual(red);
    }
  });
});
