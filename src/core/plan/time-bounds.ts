import { message } from "../../words/index.ts";
import type { Course } from "../course/index.ts";
import { placesAt } from "../course/index.ts";
import type { Network } from "../order/index.ts";
import { waysOf } from "../place/index.ts";
import type { Finding, OutlineStep } from "../procedure/index.ts";
import { finding } from "../procedure/index.ts";
import type { CrewId, Duration, PlaceId, StepId } from "../units/index.ts";
import { minus, NO_TIME, plus } from "../units/index.ts";

/** The PET before which a step does not start ([PRO17]). */
export function notBeforeOf({ step }: OutlineStep): Duration {
  return step.notBefore ?? NO_TIME;
}

/**
 * The findings for what a plan breaks of the bounds written in its procedure ([PRO17]): steps that are done too late,
 * that start too long after another, and crew members outside who are too far apart. Each says by how much, and who
 * binds it.
 */
export function boundFindings(course: Course): Finding[] {
  return [...doneLate(course), ...startedLate(course), ...tooFarApart(course)];
}

/** The predecessor that lets a step start last, and its performers' call signs; `null` for a step without predecessors. */
function binding({ network, steps }: Course, { index }: OutlineStep) {
  const { outline } = network;
  const lets = (network.before[index] ?? []).flatMap(({ from, lag }) => {
    const entry = outline.steps[from];
    const finish = entry && steps.get(entry.step.id)?.finish;
    return entry && finish !== undefined ? [{ entry, at: plus(finish, lag) }] : [];
  });
  const last = lets.reduce<(typeof lets)[number] | null>(
    (most, one) => (most && most.at >= one.at ? most : one),
    null,
  );
  return last && { step: last.entry.step.id, crew: callsOf(network, last.entry) };
}

const callsOf = ({ outline }: Network, { performers }: OutlineStep) =>
  performers.map((lane) => outline.crew[lane]?.call ?? "");

function doneLate(course: Course): Finding[] {
  return course.outline.steps.flatMap((entry) => {
    const { step, pointer } = entry;
    const finish = course.steps.get(step.id)?.finish;
    if (step.doneBy === undefined || finish === undefined || finish <= step.doneBy) return [];
    const late = { step: step.id, by: step.doneBy, at: finish, over: minus(finish, step.doneBy) };
    const bound = binding(course, entry);
    const said = bound
      ? message("time/done-late-bound", { ...late, other: bound.step, crew: bound.crew })
      : message("time/done-late", late);
    return [
      finding("error", "time/done-late", `${pointer}/doneBy`, said, {
        steps: bound ? [step.id, bound.step] : [step.id],
      }),
    ];
  });
}

function startedLate(course: Course): Finding[] {
  return course.outline.steps.flatMap((entry) =>
    entry.step.after.flatMap(({ step: named, within }, position) => {
      const start = course.steps.get(entry.step.id)?.start;
      const finish = course.steps.get(named)?.finish;
      if (within === null || start === undefined || finish === undefined) return [];
      const over = minus(start, plus(finish, within));
      if (over <= 0) return [];
      const bound = binding(course, entry);
      const late = { step: entry.step.id, after: named, within, over };
      const said =
        bound && bound.step !== named
          ? message("time/started-late-bound", { ...late, other: bound.step, crew: bound.crew })
          : message("time/started-late", late);
      return [
        finding("error", "time/started-late", `${entry.pointer}/after/${position}`, said, {
          steps: [entry.step.id, named],
        }),
      ];
    }),
  );
}

/** One finding for each pair, at the moment at which they are furthest apart; looked at whenever somebody is at a place. */
function tooFarApart(course: Course): Finding[] {
  const { outline } = course;
  const { apart } = outline.procedure.limits;
  const outside = outline.crew.filter(({ station }) => station === "outside").map(({ id }) => id);
  if (apart === undefined || outside.length < 2) return [];
  const ways = waysOf(outline.procedure);
  const worst = new Map<
    string,
    { pair: readonly [CrewId, CrewId]; step: StepId; at: Duration; metres: number }
  >();
  for (const { step, finish } of course.steps.values()) {
    const { crew } = placesAt(course, finish);
    const placeOf = (id: CrewId): PlaceId | null => {
      const found = crew.get(id);
      // Whoever is on a way is taken to be at its end, where they will be.
      if (!found || "place" in found) return found?.place ?? null;
      return found.share > 0 ? found.to : found.from;
    };
    for (const [position, one] of outside.entries()) {
      for (const other of outside.slice(position + 1)) {
        const [here, there] = [placeOf(one), placeOf(other)];
        const way = here !== null && there !== null ? ways.shortest(here, there) : null;
        const known = worst.get(`${one} ${other}`);
        if (!way || way.cost <= apart || (known && known.metres >= way.cost)) continue;
        worst.set(`${one} ${other}`, { pair: [one, other], step, at: finish, metres: way.cost });
      }
    }
  }
  return [...worst.values()].map(({ pair: [one, other], step, at, metres }) => {
    const said = message("place/too-far-apart", {
      one: outline.crewMember(one)?.call ?? one,
      other: outline.crewMember(other)?.call ?? other,
      step,
      at,
      metres,
      apart,
      over: metres - apart,
    });
    return finding("error", "place/too-far-apart", "/limits/apart", said, {
      steps: [step],
      things: [one, other],
    });
  });
}
