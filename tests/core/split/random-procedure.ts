import { fc } from "@fast-check/vitest";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import type { SplitCase } from "../../../src/core/split/index.ts";
import { splitCase } from "../../../src/core/split/index.ts";
import { procedureOf } from "../procedure-builder.ts";

const CREW = ["ev1", "ev2", "iv"] as const;
const PLACES = ["lock", "rail", "mast", "fin"] as const;
type Crew = (typeof CREW)[number];
type Place = (typeof PLACES)[number];

const minutes = (count: number) => `PT${count}M`;

const stepArb = fc.record({
  who: fc.constantFrom<readonly Crew[]>(["ev1"], ["ev2"], ["iv"], ["ev1", "ev2"], ["ev2", "iv"]),
  place: fc.constantFrom<Place>(...PLACES),
  says: fc.boolean(),
  time: fc.integer({ min: 0, max: 20 }),
  or: fc.option(
    fc.record({
      who: fc.constantFrom<readonly Crew[]>(["ev1"], ["ev2"], ["ev2", "ev1"]),
      time: fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined }),
    }),
    { nil: undefined },
  ),
  lag: fc.option(fc.integer({ min: 0, max: 10 }), { nil: undefined }),
  after: fc.nat(),
  window: fc.integer({ min: 0, max: 9 }).map((one) => one === 0),
  notBefore: fc.option(fc.integer({ min: 0, max: 40 }), { nil: undefined, freq: 6 }),
  tool: fc.constantFrom("none", "none", "none", "use", "state"),
});

const taskArb = fc.record({
  isFree: fc.boolean(),
  isGetAhead: fc.integer({ min: 0, max: 5 }).map((one) => one === 0),
  steps: fc.array(stepArb, { minLength: 1, maxLength: 3 }),
});

/** What a random procedure is made of. */
export const seedsArb = fc.record({
  tasks: fc.array(taskArb, { minLength: 1, maxLength: 4 }),
  times: fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 5, maxLength: 5 }),
  isTethered: fc.boolean(),
});

/**
 * A procedure in which everybody goes where their steps are, a tool passes from place to hand and back within a task,
 * and all come home at the end.
 */
export function randomFile({
  tasks,
  times,
  isTethered,
}: typeof seedsArb extends fc.Arbitrary<infer Value> ? Value : never): ProcedureFile {
  const at = new Map<Crew, Place>(CREW.map((crew) => [crew, "lock"]));
  const ids: string[] = [];
  const go = (crew: Crew, place: Place, id: string) => {
    if (crew === "iv" || at.get(crew) === place) return [];
    at.set(crew, place);
    return [{ id, by: [crew], do: "Go there", to: place }];
  };
  const writtenTasks = tasks.map((task, number) => {
    const before = new Map(at);
    const own: string[] = [];
    const steps = task.steps.flatMap((step, position) => {
      const id = `step-${number}-${position}`;
      const isOutside = step.who.some((crew) => crew !== "iv");
      const ways = step.who.flatMap((crew) => go(crew, step.place, `${id}-go-${crew}`));
      const named = ids[step.after % Math.max(1, ids.length)];
      const written = {
        id,
        by: [...step.who],
        do: "Work",
        time: minutes(step.time),
        ...(step.says && isOutside ? { at: step.place } : {}),
        ...(step.or
          ? {
              or: [
                step.or.time === undefined
                  ? [...step.or.who]
                  : { by: [...step.or.who], time: minutes(step.or.time) },
              ],
            }
          : {}),
        ...(step.lag !== undefined && named
          ? { after: [step.lag === 0 ? named : { step: named, lag: minutes(step.lag) }] }
          : {}),
        ...(step.window ? { within: ["light"] } : {}),
        ...(step.notBefore === undefined ? {} : { notBefore: minutes(step.notBefore) }),
        ...(step.tool === "state" ? { sets: { power: "on" } } : {}),
      };
      own.push(id);
      const user = step.who[0];
      // A tool is taken for the step and put back behind it, by the same person.
      const around =
        step.tool === "use" && step.who.length === 1 && user && step.place === "rail" && isOutside
          ? (part: "take" | "put") => [
              {
                id: `${id}-${part}`,
                by: [user],
                do: "Handle the tool",
                time: "PT1M",
                or: step.or ? [[step.or.who[0] ?? user]] : [],
                moves: [{ item: "tool", to: part === "take" ? { crew: user } : { place: "rail" } }],
              },
            ]
          : () => [];
      return [...ways, ...around("take"), written, ...around("put")];
    });
    if (task.isGetAhead) {
      // What is done only if time allows brings everybody back to where they were.
      const back = [...before].flatMap(([crew, place]) => go(crew, place, `back-${number}-${crew}`));
      return { task, number, steps: [...steps, ...back] };
    }
    ids.push(...own);
    return { task, number, steps };
  });
  const home = CREW.flatMap((crew) => (crew === "iv" ? [] : [crew])).map((crew) => ({
    id: `home-${crew}`,
    by: [crew],
    do: "Go home",
    to: "lock",
  }));
  const [a = 1, b = 1, c = 1, d = 1, e = 1] = times;
  return {
    format: "tetherline.procedure/2",
    id: "random",
    title: "Random",
    crew: [
      ...(["ev1", "ev2"] as const).map((id) => ({
        id,
        call: id.toUpperCase(),
        station: "outside" as const,
        start: "lock",
        ...(isTethered ? { tether: { anchor: "lock", length: 25 } } : {}),
      })),
      { id: "iv", call: "IV", station: "inside" },
    ],
    places: PLACES.map((id) => ({ id, refuge: id === "lock" })),
    routes: [
      { between: ["lock", "rail"], length: 5, time: minutes(a) },
      { between: ["rail", "mast"], length: 5, time: minutes(b) },
      { between: ["mast", "fin"], length: 5, time: minutes(c) },
      { between: ["fin", "lock"], length: 5, time: minutes(d) },
      { between: ["rail", "fin"], length: 5, time: minutes(e) },
    ],
    items: [{ id: "tool", start: { place: "rail" }, end: { place: "rail" } }],
    states: [{ id: "power", values: ["off", "on"], start: "off" }],
    windows: [
      {
        id: "light",
        kind: "listed",
        spans: [
          { from: "PT0S", to: "PT30M" },
          { from: "PT45M", to: "PT75M" },
          { from: "PT90M", to: "PT20H" },
        ],
      },
    ],
    tasks: [
      ...writtenTasks.map(({ task, number, steps }) => ({
        id: `task-${number}`,
        title: `Task ${number}`,
        ...(task.isFree ? { order: "free" as const } : {}),
        ...(task.isGetAhead ? { priority: "get-ahead" as const } : {}),
        steps,
      })),
      { id: "home", title: "Home", closeout: true, steps: home },
    ],
  } as ProcedureFile;
}

/** The case of a file. */
export function caseOf(file: ProcedureFile): SplitCase {
  return splitCase({ file, outline: outlineOf(procedureOf(file)) }, { start: null, light: null });
}
