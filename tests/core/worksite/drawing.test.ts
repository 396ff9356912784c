import { readFileSync } from "node:fs";
import { XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { Drawing, DrawnNode } from "../../../src/core/worksite/index.ts";
import {
  drawingOf,
  groundOf,
  momentOf,
  svgText,
  withGhost,
  worksiteScene,
} from "../../../src/core/worksite/index.ts";
import { overlap } from "../../../src/core/worksite/rectangle.ts";
import { LOOK_DASHES } from "../../../src/core/worksite/worksite-style.ts";
import { inWords } from "../../../src/words/index.ts";
import { minutes } from "../log-writer.ts";
import { fileWith, procedureOf, step } from "../procedure-builder.ts";

const SITE: Partial<ProcedureFile> = {
  crew: [
    { id: "ev1", call: "EV1", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 12 } },
    { id: "ev2", call: "EV2", station: "outside", start: "hatch", tether: { anchor: "hatch", length: 12 } },
  ],
  places: [
    { id: "hatch", label: "Hatch", x: 0, y: 0, refuge: true },
    { id: "rail", label: "Rail", x: 4, y: 0 },
    { id: "boom", label: "Boom, far end", x: 10, y: 0 },
  ],
  routes: [
    { between: ["hatch", "rail"], length: 4, time: "PT4M" },
    { between: ["rail", "boom"], length: 6, time: "PT4M" },
  ],
  items: [{ id: "bag", label: "Site bag", start: { place: "boom" } }],
  windows: [{ id: "dark", kind: "darkness", spans: [{ from: "PT20M", to: "PT40M" }] }],
};
const STEPS = [
  step("ev1-out", "ev1", 8, { to: "boom" }),
  step("ev2-out", "ev2", 8, { to: "boom" }),
  step("work", "ev1", 20, { at: "boom" }),
  step("meet", ["ev1", "ev2"], 5, { at: "boom" }),
];

function sceneOf(file: ProcedureFile, pet: number, size = { width: 700, height: 420, zoom: 1 }) {
  const procedure = procedureOf(file);
  const { timeline } = planOf(outlineOf(procedure));
  if (!timeline) throw new Error("no plan");
  const ground = groundOf(procedure, size, inWords);
  return worksiteScene(ground, momentOf(timeline.course, minutes(pet)), { say: inWords, detail: "full" });
}

const nodesOf = ({ layers }: Drawing): DrawnNode[] => {
  const under = (node: DrawnNode): DrawnNode[] => [node, ...node.children.flatMap(under)];
  return layers.flatMap(under);
};
const textsOf = (drawing: Drawing) => nodesOf(drawing).flatMap(({ text }) => text ?? []);
const namesOf = (drawing: Drawing) =>
  nodesOf(drawing).flatMap(({ attributes }) => String(attributes["class"] ?? "").split(" "));

describe("the drawing of the worksite", () => {
  it("[MAP4] names places and people, says what is left of lines and waits, and marks shared ways, night and refuge", () => {
    const drawing = drawingOf(sceneOf(fileWith(STEPS, SITE), 25));
    const texts = textsOf(drawing);
    expect(texts).toEqual(
      expect.arrayContaining([
        "Hatch",
        "Rail",
        "Boom, far end",
        "EV1",
        "EV2",
        "2 m of line left",
        "waits for EV1",
        "1",
        "Night",
      ]),
    );
    expect(texts.filter((text) => text === "2 m of line left")).toHaveLength(2);
    expect(namesOf(drawing)).toEqual(
      expect.arrayContaining(["shared", "refuge", "at-night", "count", "home", "ruler"]),
    );
  });

  it("[MAP4] gives each strand its dash as well as its hue, and a waiting one a loose line", () => {
    const nodes = nodesOf(drawingOf(sceneOf(fileWith(STEPS, SITE), 25)));
    const [straight, loose] = nodes.filter(({ attributes }) =>
      String(attributes["class"]).startsWith("line "),
    );
    expect(straight?.attributes).not.toHaveProperty("stroke-dasharray");
    expect(loose?.attributes).toHaveProperty("stroke-dasharray", "12 6");
    expect([straight, loose].map((node) => String(node?.attributes["d"]).includes("Q"))).toEqual([
      false,
      true,
    ]);
  });

  it("[MAP4] lets cards cover no label, mark or other card, at any width down to a phone's", () => {
    for (const width of [280, 390, 700, 1100]) {
      for (const pet of [0, 4, 12, 25, 31]) {
        const [view] = sceneOf(fileWith(STEPS, SITE), pet, { width, height: 380, zoom: 1 }).views;
        const boxes = [
          ...(view?.people ?? []).map(({ box }) => box),
          ...(view?.ground.places ?? []).map(({ label }) => label.box),
        ];
        for (const [index, one] of boxes.entries())
          for (const other of boxes.slice(index + 1)) expect(overlap(one, other)).toBe(false);
      }
    }
  });

  it("[MAP4] has a side view where heights differ, and then alone", () => {
    expect(sceneOf(fileWith(STEPS, SITE), 5).views).toHaveLength(1);
    const [hatch, ...others] = SITE.places ?? [];
    const raised = { ...SITE, places: [{ ...hatch, id: "hatch", z: 3 }, ...others] };
    const scene = sceneOf(fileWith(STEPS, raised), 5);
    expect(scene.views.map(({ ground }) => ground.view)).toEqual(["plan", "side"]);
    expect(textsOf(drawingOf(scene))).toContain("From the side");
  });

  it("[MAP2] says that it is a sketch and has no ruler where places were laid out", () => {
    const bare = { ...SITE, places: [{ id: "hatch", refuge: true }, { id: "rail" }, { id: "boom" }] };
    const drawing = drawingOf(sceneOf(fileWith(STEPS, bare), 5));
    expect(textsOf(drawing)).toContain("A sketch, not to scale");
    expect(namesOf(drawing)).not.toContain("ruler");
    expect(textsOf(drawingOf(sceneOf(fileWith(STEPS, SITE), 5)))).not.toContain("A sketch, not to scale");
  });

  it("[MAP4] draws a procedure without places, and one with a single place", () => {
    const nowhere = fileWith([step("look", "ev1", 5)], {});
    expect(XMLValidator.validate(svgText(drawingOf(sceneOf(nowhere, 1))))).toBe(true);
    const single = fileWith([step("look", "ev1", 5)], {
      crew: [{ id: "ev1", call: "EV1", station: "outside", start: "only" }],
      places: [{ id: "only" }],
    });
    expect(textsOf(drawingOf(sceneOf(single, 1)))).toEqual(expect.arrayContaining(["only", "EV1"]));
  });

  it("[MAP6] keeps the layers of its ground from moment to moment, and draws twice as large at a zoom of 2", () => {
    const procedure = procedureOf(fileWith(STEPS, SITE));
    const course = planOf(outlineOf(procedure)).timeline?.course;
    if (!course) throw new Error("no plan");
    const ground = groundOf(procedure, { width: 700, height: 420, zoom: 1 }, inWords);
    const drawn = (pet: number) =>
      drawingOf(worksiteScene(ground, momentOf(course, minutes(pet)), { say: inWords, detail: "brief" }));
    const [one, other] = [drawn(3), drawn(9)];
    const same = one.layers.filter((layer) => other.layers.includes(layer));
    expect(same.map(({ attributes }) => attributes["class"])).toEqual(["layer-ways", "layer-places"]);
    const larger = groundOf(procedure, { width: 700, height: 420, zoom: 2 }, inWords);
    expect(larger.frame.scale).toBeCloseTo(2 * ground.frame.scale, 9);
  });

  it("[MAP5] shows what was planned as a ghost under what was flown", () => {
    const file = fileWith(STEPS, SITE);
    const flown = drawingOf(sceneOf(file, 25));
    const both = withGhost(flown, sceneOf(file, 4));
    expect(namesOf(flown)).not.toContain("ghost");
    expect(both.layers).toHaveLength(flown.layers.length + 1);
    expect(namesOf(both)).toContain("ghost");
  });

  it("[MAP3] shows the picture of the site as an image alone, where the file puts it", () => {
    const file = {
      ...fileWith(STEPS, SITE),
      format: "tetherline.procedure/2" as const,
      pictures: [{ id: "deck", type: "image/svg+xml" as const, data: "PHN2Zy8+" }],
      site: { picture: "deck", left: 0, top: 2, width: 10, height: 4 },
    };
    const scene = sceneOf(file, 5);
    const [image, ...others] = nodesOf(drawingOf(scene)).filter(({ tag }) => tag === "image");
    expect(others).toEqual([]);
    expect(image?.attributes["href"]).toBe("data:image/svg+xml;base64,PHN2Zy8+");
    expect(image?.attributes["width"]).toBeCloseTo(10 * scene.ground.frame.scale, 1);
  });

  it("[MAP4] lets nothing that a procedure says become markup", () => {
    const hostile = `</text><script>alert(1)</script>"'&\u202e\u0007 ${"x".repeat(3000)}`;
    const places = (SITE.places ?? []).map((place) => ({ ...place, label: hostile }));
    const crew = (SITE.crew ?? []).map((member) => ({ ...member, call: hostile }));
    const text = svgText(drawingOf(sceneOf(fileWith(STEPS, { ...SITE, places, crew }), 25)));
    expect(XMLValidator.validate(text)).toBe(true);
    expect(text).not.toContain("<script");
    expect(text).not.toContain("\u0007");
    expect(text.length).toBeLessThan(20_000);
  });
});

describe("the looks of the strands", () => {
  it("[MAP4] have the same dashes on the map as on the braid", () => {
    const tokens = readFileSync("src/app/theme/tokens.css", "utf8");
    const dashes = [...tokens.matchAll(/--lane-\d-dash: ([^;]+);/g)].map(([, dash]) => dash);
    expect(dashes).toEqual(LOOK_DASHES.map((dash) => dash ?? "none"));
  });
});
