import type { Say } from "../../words/index.ts";
import { eventsOf } from "../course/index.ts";
import type { Duration } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { DrawnNode, WorksiteGround, WorksiteScene } from "../worksite/index.ts";
import { drawingOf, momentOf, worksiteScene } from "../worksite/index.ts";
import type { Briefing } from "./briefing.ts";
import { captionPlayedAt } from "./caption-at.ts";

/** How many pictures divide a way that is walked. */
const PARTS_OF_A_WAY = 4;

/** A node as the player builds it: the tag, the attributes, and the text or the children by their numbers. */
type WrittenNode = readonly [
  tag: string,
  attributes: DrawnNode["attributes"],
  content: string | readonly number[],
];

/** What the player of a briefing's file plays. All times are whole milliseconds of PET. */
export interface PlayerData {
  readonly finish: number;
  /** When steps begin. */
  readonly cues: readonly number[];
  readonly chapters: readonly (readonly [pet: number, title: string])[];
  /** The drawings in order of PET: the numbers of their layers' nodes. Layers that never change are `null`. */
  readonly drawings: readonly (readonly [pet: number, layers: readonly (number | null)[]])[];
  readonly nodes: readonly WrittenNode[];
  /** Captions in order of PET, by step and by task: the numbers of their sentences. */
  readonly captions: readonly (readonly [
    pet: number,
    byStep: readonly number[],
    byTask: readonly number[],
  ])[];
  readonly sentences: readonly string[];
}

/** A list in which each thing is kept once, by its text. */
class Kept<Value> {
  readonly values: Value[] = [];
  readonly #known = new Map<string, number>();

  /** The number of a value, which is kept when it is new. */
  numberOf(value: Value): number {
    const text = JSON.stringify(value);
    const known = this.#known.get(text);
    if (known !== undefined) return known;
    this.values.push(value);
    this.#known.set(text, this.values.length - 1);
    return this.values.length - 1;
  }
}

/** Puts together what the player plays on a ground whose `still` layers, by their place, are drawn once elsewhere. */
export function playerData(
  briefing: Briefing,
  ground: WorksiteGround,
  still: ReadonlySet<number>,
  say: Say,
): PlayerData {
  const nodes = new Kept<WrittenNode>();
  const sentences = new Kept<string>();
  const numberOf = ({ tag, attributes, children, text }: DrawnNode): number =>
    nodes.numberOf([tag, attributes, text ?? children.map(numberOf)]);
  const changes = changesOf(briefing);
  let scene: WorksiteScene | null = null;
  const drawings = [...new Set([...changes, ...waysOf(briefing)])]
    .toSorted((a, b) => a - b)
    .map((pet) => {
      scene = worksiteScene(ground, momentOf(briefing.course, pet), { say, detail: "full" }, scene);
      const { layers } = drawingOf(scene);
      return [pet, layers.map((layer, place) => (still.has(place) ? null : numberOf(layer)))] as const;
    });
  const said = (pet: Duration, grain: "step" | "task") =>
    captionPlayedAt(briefing, pet, grain).map((line) => sentences.numberOf(say(line.said)));
  return {
    finish: briefing.finish,
    cues: briefing.cues.map(({ pet }) => pet),
    chapters: briefing.chapters.map(({ start, number, title }) => [start, `${number} ${title}`]),
    drawings,
    nodes: nodes.values,
    captions: changes.map((pet) => [pet, said(pet, "step"), said(pet, "task")]),
    sentences: sentences.values,
  };
}

/** Every PET at which what is seen or said may change at once. */
function changesOf({ course, finish }: Briefing): readonly Duration[] {
  const all = [NO_TIME, finish, ...eventsOf(course)];
  return [...new Set(all)].filter((pet) => pet >= 0 && pet <= finish).toSorted((a, b) => a - b);
}

/** PETs within the ways that are walked. */
function waysOf({ course }: Briefing): readonly Duration[] {
  return [...course.steps.values()].flatMap(({ step, start, finish, stage }) =>
    course.outline.step(step)?.step.to === undefined || stage === "skipped"
      ? []
      : Array.from(
          { length: PARTS_OF_A_WAY - 1 },
          (_, part) => Math.round(start + ((finish - start) * (part + 1)) / PARTS_OF_A_WAY) as Duration,
        ),
  );
}
