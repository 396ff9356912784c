import { planOf } from "../../../src/core/plan/index.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { outlineOf } from "../../../src/core/procedure/index.ts";
import { procedureOf, step, task } from "../procedure-builder.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** Where somebody is in minutes-long ways: at a place, or so many minutes beyond one and before another. */
export type Spot =
  | { readonly at: string }
  | { readonly from: string; readonly to: string; readonly gone: number; readonly left: number };

/** A moment at which the work is broken off: the PET in minutes, what is complete, and where everybody outside is. */
export interface BrokenOff {
  readonly pet: number;
  readonly complete: ReadonlyMap<string, number>;
  readonly spots: ReadonlyMap<string, Spot>;
}

/** The least minutes from each place to each other, over the routes of a file (Floyd 1962). */
function quickest(file: ProcedureFile, spots: BrokenOff["spots"]): (a: string, b: string) => number {
  const legs = (file.routes ?? []).map(({ between, time }) => [...between, minutesOf(time ?? "")] as const);
  const names = [...(file.places ?? []).map(({ id }) => id)];
  const extra: (readonly [string, string, number])[] = [];
  for (const [crew, spot] of spots) {
    if ("at" in spot) continue;
    names.push(`x-${crew}`);
    extra.push([`x-${crew}`, spot.from, spot.gone], [`x-${crew}`, spot.to, spot.left]);
  }
  const far = new Map<string, number>();
  const at = (a: string, b: string) => (a === b ? 0 : (far.get(`${a} ${b}`) ?? Number.POSITIVE_INFINITY));
  for (const [a, b, cost] of [...legs, ...extra]) {
    far.set(`${a} ${b}`, Math.min(at(a, b), cost));
    far.set(`${b} ${a}`, Math.min(at(b, a), cost));
  }
  for (const k of names)
    for (const a of names)
      for (const b of names) far.set(`${a} ${b}`, Math.min(at(a, b), at(a, k) + at(k, b)));
  return at;
}

const minutesOf = (time: string) => Number(/^PT(\d+)M$/.exec(time)?.[1] ?? Number.NaN);

/**
 * The finish in minutes of PET when the work is broken off, worked out by brute force: a new procedure is written with
 * what is left, every way walked as a step of its own with its time, and planned from PET 0 by the ordinary plan. `null`
 * when it has no timeline. `before` says where the procedure has each performer at each step.
 */
export function finishBrokenOff(
  file: ProcedureFile,
  { pet, complete, spots }: BrokenOff,
  before: (step: string, crew: string) => string | null,
): number | null {
  const time = quickest(file, spots);
  const where = new Map([...spots].map(([crew, spot]) => [crew, "at" in spot ? spot.at : `x-${crew}`]));
  const written: FileStep[] = [
    step(
      "wait",
      file.crew.map(({ id }) => id),
      pet,
    ),
  ];
  const left = file.tasks
    .flatMap((one) => (one.closeout ? one.steps : []))
    .filter(({ id }) => !complete.has(id));
  const isLeft = new Set(left.map(({ id }) => id));
  let ways = 0;
  const walk = (crew: string, to: string) => {
    const from = where.get(crew);
    if (from === undefined || from === to) return;
    written.push(step(`way-${++ways}`, crew, time(from, to)));
    where.set(crew, to);
  };
  for (const one of left) {
    const by = one.by.filter((crew) => where.has(crew));
    for (const crew of by) {
      const planned = before(one.id, crew);
      if (one.at !== undefined) walk(crew, one.at);
      else if (one.to === undefined && planned !== null) walk(crew, planned);
    }
    const { to } = one;
    let minutes = typeof one.time === "string" ? minutesOf(one.time) : 0;
    if (to !== undefined) {
      for (const crew of by) {
        minutes = Math.max(minutes, time(where.get(crew) ?? to, to));
        where.set(crew, to);
      }
    }
    const after = (one.after ?? []).flatMap((link): NonNullable<FileStep["after"]> => {
      const { step: id, lag } = typeof link === "string" ? { step: link, lag: undefined } : link;
      if (isLeft.has(id)) return [link];
      // A lag after something complete ends at a PET of its own.
      const done = complete.get(id);
      return done !== undefined && lag ? [{ step: "zero", lag: `PT${done + minutesOf(lag)}M` }] : [];
    });
    written.push({
      id: one.id,
      by: one.by,
      do: one.do,
      time: `PT${minutes}M`,
      after,
      within: one.within ?? [],
    });
  }
  const refuges = (file.places ?? []).filter(({ refuge }) => refuge).map(({ id }) => id);
  for (const [crew, from] of where) {
    const least = Math.min(...refuges.map((refuge) => time(from, refuge)));
    if (least > 0) written.push(step(`home-${crew}`, crew, least));
  }
  const zero = step("zero", "clock", 0);
  const timeline = planOf(
    outlineOf(
      procedureOf({
        format: "tetherline.procedure/1",
        id: "broken-off",
        title: "Broken off",
        crew: [
          ...file.crew.map(({ id, call }) => ({ id, call, station: "inside" as const })),
          { id: "clock", call: "Clock", station: "ground" as const },
        ],
        windows: file.windows ?? [],
        tasks: [task("left", [zero, ...written])],
      }),
    ),
  ).timeline;
  return timeline && timeline.course.finish / 60_000;
}
