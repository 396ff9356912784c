import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { Course } from "../../../src/core/course/index.ts";
import type { WorksiteScene } from "../../../src/core/worksite/index.ts";
import { groundOf, momentOf, slidingFrom, worksiteScene } from "../../../src/core/worksite/index.ts";
import { around, crosses, overlap } from "../../../src/core/worksite/rectangle.ts";
import { inWords } from "../../../src/words/index.ts";
import { briefingOfFile } from "../briefing/brief-course.ts";
import { bundledFiles } from "../briefing/bundled-files.ts";
import { minutes } from "../log-writer.ts";

const MAP = { width: 880, height: 520, zoom: 1 } as const;
const courses = bundledFiles().map(([, file]) => briefingOfFile(file).course);
const course = courses[0] as Course;

/** The scenes of a course played from PET 0 in steps of some seconds, each after the one before it. */
function* playedScenes(
  of: Course,
  step: number,
  room: typeof MAP | (Omit<typeof MAP, "width"> & { width: number }) = MAP,
) {
  const ground = groundOf(of.outline.procedure, room, inWords);
  let scene: WorksiteScene | null = null;
  for (let at = 0; at <= of.finish; at += step * 1000) {
    scene = worksiteScene(
      ground,
      momentOf(of, minutes(at / 60_000)),
      { say: inWords, detail: "full" },
      scene,
    );
    yield scene;
  }
}
const planPeople = ({ views: [view] }: WorksiteScene) => view?.people ?? [];
const slotsIn = (scene: WorksiteScene) =>
  Object.fromEntries(planPeople(scene).map(({ crew, slot }) => [crew, slot]));
/** How often a card is in another slot than in the scene before. */
function hops(scenes: Iterable<WorksiteScene>): number {
  let [count, before]: [number, ReturnType<typeof slotsIn> | null] = [0, null];
  for (const scene of scenes) {
    const slots = slotsIn(scene);
    for (const [crew, { turn, from }] of Object.entries(slots)) {
      const was = before?.[crew];
      if (was && (was.turn !== turn || was.from !== from)) count += 1;
    }
    before = slots;
  }
  return count;
}
function* forgetful(of: Course, step: number) {
  const ground = groundOf(of.outline.procedure, MAP, inWords);
  for (let at = 0; at <= of.finish; at += step * 1000)
    yield worksiteScene(ground, momentOf(of, minutes(at / 60_000)), { say: inWords, detail: "full" });
}

describe("[MAP7] the cards of people while time goes on", () => {
  it.each(courses.map((one) => [one.outline.procedure.id, one] as const))(
    "leave their slots in %s at most two thirds as often as cards that remember none",
    (_id, one) => {
      expect(hops(playedScenes(one, 15))).toBeLessThanOrEqual((hops(forgetful(one, 15)) * 2) / 3);
    },
    60_000,
  );

  test.prop(
    [fc.constantFrom(...courses), fc.integer({ min: 280, max: 1100 }), fc.integer({ min: 40, max: 400 })],
    {
      numRuns: 12,
    },
  )(
    "cover no label and no other card, whatever was before",
    (one, width, step) => {
      for (const scene of playedScenes(one, step, { ...MAP, width })) {
        for (const { people, ground } of scene.views) {
          const boxes = [...people.map(({ box }) => box), ...ground.places.map(({ label }) => label.box)];
          for (const [index, box] of people.map(({ box }) => box).entries())
            for (const other of boxes.slice(index + 1)) expect(overlap(box, other)).toBe(false);
        }
      }
    },
    60_000,
  );

  test.prop(
    [fc.constantFrom(...courses), fc.integer({ min: 500, max: 1100 }), fc.integer({ min: 40, max: 400 })],
    {
      numRuns: 12,
    },
  )(
    "have no line that runs over somebody elsewhere, as long as there is room for more than a call sign",
    (one, width, step) => {
      for (const scene of playedScenes(one, step, { ...MAP, width })) {
        for (const { people } of scene.views)
          for (const { at, lead, slot } of people.filter((person) => person.slot.detail !== "call"))
            for (const other of people) {
              if (Math.hypot(other.at.x - at.x, other.at.y - at.y) < 40) continue;
              expect([slot, crosses({ from: at, to: lead }, around(other.at, 14, 14))]).toEqual([
                slot,
                false,
              ]);
            }
      }
    },
    60_000,
  );

  it("stand where they stood when nothing happened, and say as much", () => {
    const ground = groundOf(course.outline.procedure, MAP, inWords);
    const moment = momentOf(course, minutes(45));
    const wording = { say: inWords, detail: "full" } as const;
    const first = worksiteScene(ground, moment, wording);
    expect(worksiteScene(ground, moment, wording, first)).toEqual(first);
  });

  it("are in the same slots when the same is played again", () => {
    const played = () => [...playedScenes(course, 60)].map(slotsIn);
    expect(played()).toEqual(played());
  });

  it("go to another slot in pictures on the way, nearer each time, and arrive", () => {
    const ground = groundOf(course.outline.procedure, MAP, inWords);
    const scene = worksiteScene(ground, momentOf(course, minutes(45)), { say: inWords, detail: "full" });
    const [view] = scene.views;
    const elsewhere = {
      ...scene,
      views: [
        {
          ...(view as (typeof scene.views)[number]),
          people: planPeople(scene).map((one) => ({ ...one, box: { ...one.box, left: one.box.left - 64 } })),
        },
      ],
    };
    let before: WorksiteScene = elsewhere;
    const lefts = Array.from({ length: 8 }, () => {
      before = slidingFrom(before, scene, 0.5);
      return Math.round((planPeople(scene)[0]?.box.left ?? 0) - (planPeople(before)[0]?.box.left ?? 0));
    });
    expect(lefts).toEqual([32, 16, 8, 4, 2, 1, 0, 0]);
    expect(planPeople(before)).toEqual(planPeople(scene));
    expect(slidingFrom(null, scene, 0.5)).toBe(scene);
  });
});
