import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { WrittenLayers } from "../../../src/app/worksite/written-layers.ts";
import type { DrawnNode, WorksiteScene } from "../../../src/core/worksite/index.ts";
import { drawingOf, groundOf, momentOf, nodeText, worksiteScene } from "../../../src/core/worksite/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { briefingOfFile, LAMP_FILE } from "../../core/briefing/brief-course.ts";
import { minutes } from "../../core/log-writer.ts";

const group = () => document.createElementNS("http://www.w3.org/2000/svg", "g");

/** Layers as a page makes them of their markup. */
function parsed(layers: readonly DrawnNode[]): Element {
  const whole = group();
  whole.innerHTML = layers.map(nodeText).join("");
  return whole;
}

const attributes = fc.dictionary(
  fc.constantFrom("x", "class", "stroke-dasharray"),
  fc.oneof(fc.integer(), fc.string()),
  { maxKeys: 3 },
);
const crew = fc.option(fc.constantFrom("a", "b", "c", "d"), { nil: null });
const { node } = fc.letrec<{ node: DrawnNode; row: readonly DrawnNode[] }>((tie) => ({
  node: fc
    .record({
      tag: fc.constantFrom("g", "path", "text"),
      attributes,
      children: tie("row"),
      text: fc.option(fc.string(), { nil: null }),
    })
    .map((one) => (one.text === null ? one : { ...one, children: [] })),
  row: fc.oneof(
    { depthSize: "small" },
    fc.constant([]),
    fc
      .uniqueArray(fc.tuple(crew, tie("node")), { maxLength: 4, selector: ([id]) => id ?? {} })
      .map((all) =>
        all.map(([id, one]) =>
          id === null ? one : { ...one, attributes: { ...one.attributes, "data-crew": id } },
        ),
      ),
  ),
}));
// A control character cannot stand in markup, by which the drawings are compared.
const plain = (one: DrawnNode): boolean =>
  !/[\p{Cc}\p{Cs}\uFFFE\uFFFF]/u.test(JSON.stringify(one).replace(/\\/g, ""));

describe("layers written to the page", () => {
  test.prop([fc.array(fc.array(node, { maxLength: 5 }), { minLength: 1, maxLength: 5 })])(
    "[MAP6] are those that were given last, whatever stood there before",
    (drawings) => {
      fc.pre(drawings.flat().every(plain));
      const whole = group();
      const written = new WrittenLayers(whole);
      for (const layers of drawings) {
        written.write(layers);
        const anew = group();
        new WrittenLayers(anew).write(layers);
        expect(whole.isEqualNode(anew)).toBe(true);
      }
    },
  );

  it("[MAP6] are the picture of the moment while it is played, and people keep their elements", () => {
    const { course } = briefingOfFile(LAMP_FILE);
    const ground = groundOf(course.outline.procedure, { width: 880, height: 520, zoom: 1 }, inWords);
    const whole = group();
    const written = new WrittenLayers(whole);
    const bead = () => whole.querySelector('.person[data-crew="ev1"]');
    let scene: WorksiteScene | null = null;
    let first: Element | null = null;
    for (let pet = 0; pet <= course.finish / 60_000; pet += 0.5) {
      scene = worksiteScene(ground, momentOf(course, minutes(pet)), { say: inWords, detail: "full" }, scene);
      const { layers } = drawingOf(scene);
      written.write(layers);
      expect(whole.isEqualNode(parsed(layers))).toBe(true);
      first ??= bead();
      expect(bead()).toBe(first);
    }
  });

  it("[MAP6] touch nothing that stays the same", async () => {
    const { course } = briefingOfFile(LAMP_FILE);
    const ground = groundOf(course.outline.procedure, { width: 880, height: 520, zoom: 1 }, inWords);
    const layersAt = (pet: number) =>
      drawingOf(worksiteScene(ground, momentOf(course, minutes(pet)), { say: inWords, detail: "full" }))
        .layers;
    const whole = group();
    const written = new WrittenLayers(whole);
    written.write(layersAt(5.1));
    const seen: string[] = [];
    const observer = new MutationObserver((changes) => {
      for (const { type, attributeName } of changes) seen.push(attributeName ?? type);
    });
    observer.observe(whole, { attributes: true, childList: true, characterData: true, subtree: true });
    written.write(layersAt(5.1));
    await Promise.resolve();
    expect(seen).toEqual([]);
    written.write(layersAt(5.11));
    await Promise.resolve();
    expect(seen.length).toBeGreaterThan(0);
    expect(new Set(seen)).toEqual(new Set(["d", "transform"]));
  });
});
