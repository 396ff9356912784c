import { message } from "../../words/index.ts";
import { sameJson } from "../changes/index.ts";
import type { Change, Fields, ProcedureFile } from "../procedure/index.ts";
import type { Duration } from "../units/index.ts";
import { formatDuration, NO_TIME, parseDuration, plus } from "../units/index.ts";
import { chosenIn } from "./chosen-rows.ts";
import { freeIdsIn } from "./free-id.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import type { FileStep } from "./sheet.ts";
import { placedStep, tasksOf } from "./sheet.ts";

type FileTime = NonNullable<FileStep["time"]>;

const SECOND = 1000;

/** A time with each of its durations put through `change`. */
function eachDuration(
  time: FileTime,
  change: (duration: Duration, key: "low" | "likely" | "high") => Duration,
) {
  const one = (text: string, key: "low" | "likely" | "high") =>
    formatDuration(change(parseDuration(text) ?? NO_TIME, key));
  return typeof time === "string"
    ? one(time, "likely")
    : { low: one(time.low, "low"), likely: one(time.likely, "likely"), high: one(time.high, "high") };
}

/** The two halves of a time, in whole seconds where it has them; together they are the time. */
function halvesOf(time: FileTime): readonly [FileTime, FileTime] {
  const half = (duration: Duration) => (Math.ceil(duration / 2 / SECOND) * SECOND) as Duration;
  const first = (duration: Duration) => (half(duration) > duration ? duration : half(duration));
  return [
    eachDuration(time, first),
    eachDuration(time, (duration) => (duration - first(duration)) as Duration),
  ];
}

/** What holds when a step is done goes with the second half. */
const OF_THE_END = ["moves", "anchor", "to", "records", "confirm", "decide", "sets", "doneBy"] as const;

/** The changes by which what came after some steps, and watches that ended with one of them, wait for another one. */
function handedOn(file: ProcedureFile, from: ReadonlySet<string>, to: string): Change[] {
  const ofSteps = tasksOf(file)
    .flatMap(({ steps }) => steps)
    .flatMap(({ id, after: waits }): Change[] => {
      if (from.has(id) || !waits?.some((one) => from.has(nameOf(one)))) return [];
      const next = waits.map((one) =>
        from.has(nameOf(one)) ? (typeof one === "string" ? to : { ...one, step: to }) : one,
      );
      return [{ change: id, set: { after: eachOnce(next) } }];
    });
  const ofWatches = (file.watches ?? []).flatMap(({ id, until }): Change[] =>
    until !== undefined && from.has(until) ? [{ change: id, list: "watches", set: { until: to } }] : [],
  );
  return [...ofSteps, ...ofWatches];
}

type Wait = NonNullable<FileStep["after"]>[number];

const nameOf = (one: Wait) => (typeof one === "string" ? one : one.step);

/** Waits with those left out that stand there already. */
const eachOnce = (waits: readonly Wait[]) =>
  waits.filter((one, at) => waits.findIndex((other) => sameJson(one, other)) === at);

/**
 * Splits a step in two ([WRT2]): the first keeps the id and what must hold before it, the second has what holds when it is done. Each takes
 * half of the time, and what came after the step comes after the second.
 */
export function stepSplit(
  file: ProcedureFile,
  row: string,
  [first, second]: readonly [string, string],
): Proposal {
  const placed = placedStep(file, row);
  if (!placed) return impossible(message("write/nothing-chosen"));
  const { step } = placed;
  const fields: Fields = step;
  const id = freeIdsIn(file, "steps").next(second);
  const ending = OF_THE_END.filter((key) => fields[key] !== undefined);
  const [one, other] = step.time === undefined ? [undefined, undefined] : halvesOf(step.time);
  const add: Fields = {
    id,
    by: step.by,
    do: second,
    ...(other === undefined ? {} : { time: other }),
    ...(step.at === undefined ? {} : { at: step.at }),
    ...(step.within === undefined ? {} : { within: step.within }),
    ...(step.when === undefined ? {} : { when: step.when }),
    ...Object.fromEntries(ending.map((key) => [key, fields[key]])),
  };
  return proposed(
    [
      { change: step.id, set: { do: first, ...(one === undefined ? {} : { time: one }) }, unset: ending },
      { add, behind: step.id },
      ...handedOn(file, new Set([step.id]), id),
    ],
    [step.id, id],
  );
}

/** Lists of a step that are put together when steps are joined. */
const LISTS = ["alerts", "moves", "records", "check", "refs", "pictures"] as const;

/** Fields of which a step has one, so that only one of those joined may have it. */
const SINGLE = ["confirm", "decide", "anchor", "brief", "notBefore", "doneBy"] as const;

/** The sum of the times of steps; `undefined` when one of them has none. */
function sumOf(steps: readonly FileStep[]): FileTime | undefined {
  const times = steps.flatMap(({ time }) => time ?? []);
  if (times.length < steps.length) return undefined;
  const sum = (key: "low" | "likely" | "high") =>
    times.reduce(
      (total, time) => plus(total, parseDuration(typeof time === "string" ? time : time[key]) ?? NO_TIME),
      NO_TIME,
    );
  return times.every((time) => typeof time === "string")
    ? formatDuration(sum("likely"))
    : {
        low: formatDuration(sum("low")),
        likely: formatDuration(sum("likely")),
        high: formatDuration(sum("high")),
      };
}

/** Makes one step of several that follow each other in a task and are done by the same ([WRT2]); it keeps the id of the first. */
export function stepsJoined(file: ProcedureFile, rows: readonly string[]): Proposal {
  const { steps } = chosenIn(file, rows);
  const [first, ...others] = steps;
  const home = first && placedStep(file, first.id);
  if (!first || !home || others.length === 0) return impossible(message("write/join-several"));
  if (steps.some((step, index) => home.task.steps[home.index + index] !== step))
    return impossible(message("write/join-neighbours"));
  if (others.some(({ by }) => !sameJson([...by].sort(), [...first.by].sort())))
    return impossible(message("write/join-people"));
  if (others.some(({ when }) => !sameJson(when ?? {}, first.when ?? {})))
    return impossible(message("write/join-conditions"));
  if (others.some((step) => (step.at ?? first.at) !== first.at) || steps.slice(0, -1).some(({ to }) => to))
    return impossible(message("write/join-places"));
  if (
    SINGLE.some((key) => steps.filter((step) => step[key] !== undefined).length > 1) ||
    others.some((step) => (step.needs ?? step.or?.length) !== undefined) ||
    steps.slice(0, -1).some(({ sets }) => sets !== undefined)
  )
    return impossible(message("write/join-one-only"));
  const records = steps.flatMap((step) => step.records ?? []);
  if (new Set(records.map(({ id }) => id)).size < records.length)
    return impossible(message("write/join-records"));
  const own = new Set(steps.map(({ id }) => id));
  const waits = steps.flatMap((step) => step.after ?? []).filter((one) => !own.has(nameOf(one)));
  const time = sumOf(steps);
  const last = steps.at(-1);
  const set: Fields = {
    do: steps.map((step) => step.do).join("; "),
    ...(time === undefined ? {} : { time }),
    ...(waits.length > 0 ? { after: eachOnce(waits) } : {}),
    ...Object.fromEntries(
      LISTS.flatMap((key) => {
        const all = steps.flatMap((step): readonly unknown[] => step[key] ?? []);
        return all.length > 0 ? [[key, all]] : [];
      }),
    ),
    ...Object.fromEntries(
      SINGLE.flatMap((key) => {
        const value = steps.map((step) => step[key]).find((one) => one !== undefined);
        return value === undefined ? [] : [[key, value]];
      }),
    ),
    ...(last?.to === undefined ? {} : { to: last.to }),
    ...(last?.sets === undefined ? {} : { sets: last.sets }),
    ...(steps.some(({ within }) => within?.length)
      ? { within: [...new Set(steps.flatMap(({ within }) => within ?? []))] }
      : {}),
  };
  const unset = [
    ...(time === undefined && first.time !== undefined ? ["time"] : []),
    ...(waits.length === 0 && first.after !== undefined ? ["after"] : []),
  ];
  return proposed(
    [
      ...handedOn(file, new Set(others.map(({ id }) => id)), first.id),
      { change: first.id, set, unset },
      ...others.map(({ id }): Change => ({ drop: id })),
    ],
    [first.id],
  );
}
