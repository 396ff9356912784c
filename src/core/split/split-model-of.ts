import type { Course, CourseStep } from "../course/index.ts";
import { isPlaced, waysOf } from "../place/index.ts";
import { notBeforeOf } from "../plan/index.ts";
import type { OutlineStep } from "../procedure/index.ts";
import type { PlaceId, StepId } from "../units/index.ts";
import { optionsOf } from "./group-options.ts";
import { placesNeeded } from "./places-needed.ts";
import { relaidSteps } from "./relaid.ts";
import type { SplitCase } from "./split-case.ts";
import type { ModelStand, ModelStep, ModelTask, Past, SplitModel } from "./split-model.ts";
import type { Use } from "./stand.ts";
import { heldKey, lanesIn, substitutionFor, usesOf } from "./stand.ts";
import { standsOf } from "./stands-of.ts";
import { taskOrderOf } from "./task-order.ts";

/** The model of a case that is laid out as `course`. */
export function splitModelOf(splitCase: SplitCase, course: Course): SplitModel {
  const { outline, outcomes, now, standing, begun, pinned } = splitCase;
  const { procedure } = outline;
  const needOf = placesNeeded(course, outcomes);
  const relaid = relaidSteps(splitCase, needOf);
  const isLaid = ({ step }: OutlineStep) => course.steps.has(step.id);
  const entries = outline.steps.filter((entry) => isLaid(entry) && !relaid.has(entry.index));
  const local = new Map(entries.map(({ step }, index): [string, number] => [step.id, index]));
  const places = procedure.places.map(({ id }) => id);
  const placeIndex = new Map<string, number>(places.map((id, index) => [id, index]));
  const placeOf = (id: PlaceId | null | undefined) => (id == null ? -1 : (placeIndex.get(id) ?? -1));
  const order = orderToCome(course);
  const found = usesOf(outline, order, standing);
  const isSettled = settledUses(order, found.uses);
  const things = new Map<string, number>();
  const values = new Map<string, number>();
  const numbered = (map: Map<string, number>, key: string) => {
    const known = map.get(key) ?? map.size;
    map.set(key, known);
    return known;
  };
  const taskIndex = new Map(procedure.tasks.map(({ id }, index) => [id, index]));
  const usesFor = (entry: OutlineStep) =>
    (found.uses.get(entry.index) ?? []).filter(({ of }) => isSettled(of));
  const isFixed = (entry: OutlineStep) =>
    entry.task.closeout ||
    pinned.has(entry.step.id) ||
    (found.uses.get(entry.index) ?? []).some(({ of }) => !isSettled(of));
  const { begunBehind, begunIn } = begunByLane(splitCase, entries);
  const steps = entries.map((entry, position): ModelStep => {
    const { step, index } = entry;
    const uses = usesFor(entry);
    const written = standsOf(outline, entry, { isFixed: isFixed(entry), needOf });
    const stands = written.map((stand): ModelStand => {
      const substitution = substitutionFor(step, stand);
      return {
        lanes: Int32Array.from(lanesIn(outline, stand)),
        needs: Int32Array.from(stand.by, (crew, seat) => {
          const member = outline.crewMember(crew);
          return member && isPlaced(member) ? placeOf(needOf(entry, Math.min(seat, step.by.length - 1))) : -1;
        }),
        time: stand.time?.likely ?? step.time?.likely ?? -1,
        uses: Int32Array.from(
          uses.flatMap(({ of, from, to }) => [
            numbered(things, of),
            numbered(values, heldKey(from, substitution) ?? ""),
            numbered(values, heldKey(to, substitution) ?? ""),
          ]),
        ),
      };
    });
    const after = step.after.flatMap(({ step: id, lag, within }) => {
      const from = local.get(id);
      return from === undefined ? [] : [{ from, lag, within: within ?? Number.POSITIVE_INFINITY }];
    });
    return {
      index,
      id: step.id,
      task: taskIndex.get(entry.task.id) ?? 0,
      stands,
      writtenStands: written,
      to: placeOf(step.to),
      anchor: placeOf(step.anchor),
      notBefore: Math.max(notBeforeOf(entry), now),
      doneBy: step.doneBy ?? Number.POSITIVE_INFINITY,
      after: Int32Array.from(after, ({ from }) => from),
      lags: Float64Array.from(after, ({ lag }) => lag),
      within: Float64Array.from(after, ({ within }) => within),
      windows: step.within,
      past: pastOf(course.steps.get(step.id)),
      hasBegun: begun.has(step.id),
      ahead: begunBehind[position] as Int32Array,
    };
  });
  const tasks = procedure.tasks.map((task, number): ModelTask => {
    const own = steps.flatMap((step, index) => (step.task === number ? [index] : []));
    return {
      steps: own,
      isFree:
        task.order === "free" &&
        own.length > 0 &&
        !task.steps.some(({ id }) => {
          const entry = outline.step(id);
          return entry !== null && isLaid(entry) && isFixed(entry);
        }),
    };
  });
  const groups = optionsOf(steps, entries.map(usesFor));
  const groupOf = new Int32Array(steps.length);
  const seatOf = new Int32Array(steps.length);
  for (const [group, members] of groups.entries())
    for (const [seat, step] of members.steps.entries()) {
      groupOf[step] = group;
      seatOf[step] = seat;
    }
  const ways = waysOf(procedure);
  const matrix = (cost: (a: PlaceId, b: PlaceId) => number | undefined) =>
    Float64Array.from(
      places.flatMap((a) => places.map((b) => (a === b ? 0 : (cost(a, b) ?? Number.POSITIVE_INFINITY)))),
    );
  const keep = (crew: string) => crew as never;
  return {
    steps,
    tasks,
    groups,
    groupOf,
    seatOf,
    laneCount: outline.crew.length,
    now,
    begunIn,
    starts: Int32Array.from(outline.crew, (member) => (isPlaced(member) ? placeOf(member.start) : -1)),
    isPlaced: Uint8Array.from(outline.crew, (member) => (isPlaced(member) ? 1 : 0)),
    // A line that is too short in the file already is no reason to refuse what leaves it so.
    tethers: outline.crew.map(({ tether }) =>
      tether && !splitCase.hasShortTether ? { anchor: placeOf(tether.anchor), length: tether.length } : null,
    ),
    placeCount: places.length,
    travel: matrix((a, b) => ways.quickest(a, b)?.cost),
    reach: matrix((a, b) => ways.shortest(a, b)?.cost),
    held: Int32Array.from([...things.keys()], (of) => {
      const start = found.start.get(of);
      return start ? numbered(values, heldKey(start, keep) ?? "") : -1;
    }),
    spans: course.windows,
    ...taskOrderOf(outline, tasks),
    relaid,
    needOf,
  };
}

/** The steps that may still change what everything is, those in work first: a skipped or complete step has done so. */
function orderToCome({ outline, network, steps }: Course): readonly number[] {
  const stageOf = (index: number) => steps.get(outline.steps[index]?.step.id as StepId)?.stage;
  return ["in-work", "planned"].flatMap((stage) => network.order.filter((index) => stageOf(index) === stage));
}

const pastOf = (step: CourseStep | undefined): Past | null =>
  step === undefined || step.stage === "planned"
    ? null
    : { start: step.start, finish: step.finish, isOver: step.stage !== "in-work" };

/** The steps of each lane that have begun: all, and for each step those that stand behind it in lanes of its own. */
function begunByLane({ outline, begun }: SplitCase, entries: readonly OutlineStep[]) {
  const begunIn = new Int32Array(outline.crew.length);
  const begunBehind = entries.map(() => begunIn);
  for (const [position, { step, performers }] of [...entries.entries()].reverse()) {
    begunBehind[position] = begunIn.map((count, lane) => (performers.includes(lane) ? count : 0));
    if (begun.has(step.id)) for (const lane of performers) begunIn[lane] = (begunIn[lane] ?? 0) + 1;
  }
  return { begunBehind, begunIn };
}

/** Whether the steps use a thing in reading order, so that it can be followed from one to the next. */
function settledUses(order: readonly number[], uses: ReadonlyMap<number, readonly Use[]>) {
  const last = new Map<string, number>();
  const unsettled = new Set<string>();
  for (const index of order)
    for (const { of, from, to } of uses.get(index) ?? []) {
      const isOnlyNeeded = JSON.stringify(from) === JSON.stringify(to);
      if (!isOnlyNeeded && index < (last.get(of) ?? -1)) unsettled.add(of);
      last.set(of, Math.max(last.get(of) ?? -1, index));
    }
  return (of: string) => !unsettled.has(of);
}
