import type { Network } from "../order/index.ts";
import { laneWaysOf } from "./lane-ways.ts";
import type { Split } from "./layout.ts";
import type { MixedProgram } from "./mixed-program.ts";
import { ProgramWriter } from "./mixed-program.ts";
import type { ModelStand, ModelStep, SplitModel } from "./split-model.ts";
import { sureTasks, sureTimes } from "./sure-order.ts";

/** The splits of a model that are complete by a limit, as a program. */
export interface SplitProgram {
  readonly program: MixedProgram;
  /** How many yes-or-no choices it has. */
  readonly choices: number;
  /** The split that values stand for; `null` when they are none. */
  read(values: ArrayLike<number>): Split | null;
}

/** A program counts in seconds. */
const SECOND = 1_000;

type Term = readonly [column: number, factor: number];

/** Something that holds or not: a sum of columns that is 0 or 1, and what is added to it. */
interface Condition {
  readonly terms: readonly Term[];
  readonly plus: number;
}

const ALWAYS: Condition = { terms: [], plus: 1 };

/**
 * Writes down the splits that are complete by a limit in ms, or `null` when none can be. Every one is in it; some that
 * cannot be laid out may be in it as well ([FIT3]), so that what it proves of all holds of them.
 */
export function splitProgram(model: SplitModel, network: Network, limit: number): SplitProgram | null {
  const { steps, tasks, groups, groupOf, seatOf, laneCount, now, spans } = model;
  const { head, least, tail } = sureTimes(model, network);
  const sure = sureTasks(model);
  const ways = laneWaysOf(model);
  const count = tasks.length;
  if (steps.some((_, at) => over(at) + (tail[at] as number) > limit)) return null;
  const writer = new ProgramWriter();
  const end = writer.column(0, limit / SECOND);
  const starts = steps.map((_, at) =>
    writer.column(
      (head[at] as number) / SECOND,
      (limit - (tail[at] as number) - (least[at] as number)) / SECOND,
    ),
  );
  const options = groups.map((group) =>
    group.options.length < 2 ? [] : group.options.map(() => writer.choice()),
  );
  for (const columns of options)
    if (columns.length > 0)
      writer.row(
        columns.map((column) => [column, 1]),
        1,
        1,
      );
  const orders = new Map<number, number>();
  const lengths = steps.map(lengthOf);

  for (const [at, step] of steps.entries()) {
    const finish = finishOf(at);
    writer.row([[end, 1], ...negative(finish.terms)], (tail[at] as number) / SECOND + finish.plus);
    if (step.past) continue;
    bounds(at, step);
    windows(at, step);
  }
  for (let lane = 0; lane < laneCount; lane += 1) load(lane);
  for (const one of steps.keys())
    for (const other of steps.keys()) if (one !== other && !steps[other]?.past) pair(one, other);
  uses();
  return { program: writer, choices: writer.choices, read };

  /** When a step is complete at the earliest, in ms. */
  function over(at: number): number {
    return (head[at] as number) + (least[at] as number);
  }

  /** Whether a step is in a stand. */
  function isIn(at: number, stand: number): Condition {
    const group = groupOf[at] as number;
    const columns = options[group] ?? [];
    if (columns.length === 0) return ALWAYS;
    const seat = seatOf[at] as number;
    return {
      terms: columns.flatMap((column, option): Term[] =>
        groups[group]?.options[option]?.[seat] === stand ? [[column, 1]] : [],
      ),
      plus: 0,
    };
  }

  /** How long a step takes, in seconds; nothing for a translation by the way, which counts from its end on. */
  function lengthOf({ stands, past }: ModelStep, at: number): Condition {
    if (past) return { terms: [], plus: (least[at] as number) / SECOND };
    const parts = stands.map(({ time }, stand) => {
      const { terms, plus } = isIn(at, stand);
      const seconds = Math.max(0, time) / SECOND;
      return {
        terms: terms.map(([column, factor]): Term => [column, factor * seconds]),
        plus: plus * seconds,
      };
    });
    return {
      terms: parts.flatMap(({ terms }) => terms),
      plus: parts.reduce((sum, { plus }) => sum + plus, 0),
    };
  }

  function finishOf(at: number): Condition {
    const { terms, plus } = lengths[at] as Condition;
    return { terms: [[starts[at] as number, 1], ...terms], plus };
  }

  /** One step starts so many ms after another is complete, at least while conditions hold. */
  function follows(one: number, other: number, gap: number, conditions: readonly Condition[] = []): void {
    const finish = finishOf(one);
    const terms: Term[] = [[starts[other] as number, 1], ...negative(finish.terms)];
    const latest = limit - (tail[one] as number);
    const slack = Math.max(0, gap + latest - (head[other] as number)) / SECOND;
    if (slack === 0) return;
    const open = conditions.filter((one) => one.terms.length > 0);
    // A condition without columns holds always or never.
    if (conditions.some((one) => one.terms.length === 0 && one.plus === 0)) return;
    const missing = open.reduce((sum, { plus }) => sum + 1 - plus, 0);
    writer.row(
      [
        ...terms,
        ...open.flatMap((one) => one.terms.map(([column, factor]): Term => [column, -slack * factor])),
      ],
      gap / SECOND + finish.plus - slack * missing,
    );
  }

  /** What a step waits for, by when it must be complete, and how soon each stand can be there. */
  function bounds(at: number, step: ModelStep): void {
    const finish = finishOf(at);
    for (const [link, from] of step.after.entries()) {
      follows(from, at, step.lags[link] as number);
      const most = step.within[link] as number;
      const before = finishOf(from);
      if (Number.isFinite(most) && step.stands.every(({ time }) => time >= 0))
        writer.row([...before.terms, [starts[at] as number, -1]], -most / SECOND - before.plus);
    }
    if (Number.isFinite(step.doneBy)) writer.row(negative(finish.terms), finish.plus - step.doneBy / SECOND);
    if (step.stands.length < 2) return;
    const ready = step.stands.flatMap((stand, number): Term[] => {
      const seconds = ways.readyIn(step, stand) / SECOND;
      return Number.isFinite(seconds)
        ? isIn(at, number).terms.map(([column, factor]): Term => [column, -seconds * factor])
        : [];
    });
    writer.row([[starts[at] as number, 1], ...ready], 0);
  }

  /** A step lies in one span of each window that it names. */
  function windows(at: number, step: ModelStep): void {
    if (step.stands.some(({ time }) => time < 0)) return;
    const finish = finishOf(at);
    for (const window of step.windows) {
      const open = spans.get(window)?.filter(({ from }) => from <= limit);
      if (!open) continue;
      const columns = open.map(() => writer.choice());
      writer.row(
        columns.map((column) => [column, 1]),
        1,
        1,
      );
      const sumOf = (bound: "from" | "to") =>
        columns.map((column, span): Term => [column, -Math.min(open[span]?.[bound] ?? 0, limit) / SECOND]);
      writer.row([[starts[at] as number, 1], ...sumOf("from")], 0);
      writer.row([...negative(finish.terms), ...negative(sumOf("to"))], finish.plus);
    }
  }

  /** A lane does all its work between now and the end. */
  function load(lane: number): void {
    const terms: Term[] = [];
    let sum = 0;
    for (const [at, { stands, past }] of steps.entries()) {
      if (past?.isOver) continue;
      for (const [stand, { lanes, time }] of stands.entries()) {
        if (!lanes.includes(lane)) continue;
        const seconds = (past ? (least[at] as number) : Math.max(0, time)) / SECOND;
        const is = isIn(at, stand);
        sum += is.plus * seconds;
        terms.push(...is.terms.map(([column, factor]): Term => [column, -factor * seconds]));
      }
    }
    writer.row([[end, 1], ...terms], now / SECOND + sum);
  }

  /** Two steps of a lane follow one another, in every pair of stands in which they are in one. */
  function pair(one: number, other: number): void {
    const [a, b] = [steps[one] as ModelStep, steps[other] as ModelStep];
    const order = orderOf(a, b);
    if (order === null) return;
    for (const [first, stand] of a.stands.entries())
      for (const [second, another] of b.stands.entries()) {
        if (!canBeTogether(one, other, first, second)) continue;
        const gap = ways.gapBetween({ step: a, stand }, { step: b, stand: another });
        if (gap === null || !Number.isFinite(gap)) continue;
        follows(one, other, gap, [order(), isIn(one, first), isIn(other, second)]);
      }
  }

  function canBeTogether(one: number, other: number, first: number, second: number): boolean {
    const group = groupOf[one] as number;
    if (group !== groupOf[other]) return true;
    const [a, b] = [seatOf[one] as number, seatOf[other] as number];
    return groups[group]?.options.some((option) => option[a] === first && option[b] === second) === true;
  }

  /** Whether one step stands before another; `null` when it never does. The column is made only where it is needed. */
  function orderOf(a: ModelStep, b: ModelStep): (() => Condition) | null {
    if (a.task === b.task) return a.index < b.index ? () => ALWAYS : null;
    if (sure[a.task * count + b.task] === 1) return () => ALWAYS;
    if (sure[b.task * count + a.task] === 1) return null;
    return () => {
      const [low, high] = a.task < b.task ? [a.task, b.task] : [b.task, a.task];
      const key = low * count + high;
      const column = orders.get(key) ?? writer.choice();
      orders.set(key, column);
      return a.task < b.task ? { terms: [[column, 1]], plus: 0 } : { terms: [[column, -1]], plus: 1 };
    };
  }

  /** A step that needs something as only one other step leaves it comes behind that one. */
  function uses(): void {
    const things = new Map<number, { step: number; from: Set<number>; to: Set<number> }[]>();
    for (const [step, { stands }] of steps.entries()) {
      const own = new Map<number, { from: Set<number>; to: Set<number> }>();
      for (const { uses: used } of stands as readonly ModelStand[])
        for (let use = 0; use < used.length; use += 3) {
          const [thing, from, to] = used.slice(use, use + 3) as unknown as [number, number, number];
          const known = own.get(thing) ?? { from: new Set(), to: new Set() };
          own.set(thing, known);
          known.from.add(from);
          if (to !== from) known.to.add(to);
        }
      for (const [thing, known] of own) things.set(thing, [...(things.get(thing) ?? []), { step, ...known }]);
    }
    for (const [thing, users] of things)
      for (const { step, from } of users) {
        if (steps[step]?.past || from.has(model.held[thing] as number)) continue;
        const makers = users.filter(
          (one) => one.step !== step && [...from].some((value) => one.to.has(value)),
        );
        const [maker] = makers;
        if (maker && makers.length === 1) follows(maker.step, step, 0);
      }
  }

  function read(values: ArrayLike<number>): Split | null {
    const choice = Int32Array.from(options, (columns) =>
      Math.max(
        0,
        columns.findIndex((column) => (values[column] ?? 0) > 0.5),
      ),
    );
    const first = tasks.map((task) =>
      Math.min(...task.steps.map((step) => values[starts[step] as number] ?? 0)),
    );
    const isBefore = (one: number, other: number) => {
      if (sure[one * count + other] === 1) return true;
      const column = orders.get(Math.min(one, other) * count + Math.max(one, other));
      return column !== undefined && (values[column] ?? 0) > 0.5 === one < other;
    };
    const left = new Set(tasks.keys());
    const order: number[] = [];
    while (left.size > 0) {
      const open = [...left].filter((one) =>
        [...left].every((other) => other === one || !isBefore(other, one)),
      );
      // Of those that may come next the one that starts first; a task without steps stands where it may first.
      const [next] = open.sort((a, b) => timeOf(a) - timeOf(b) || a - b);
      if (next === undefined) return null;
      left.delete(next);
      order.push(next);
    }
    return { order: Int32Array.from(order), choice };

    function timeOf(task: number): number {
      return tasks[task]?.steps.length === 0 ? Number.NEGATIVE_INFINITY : (first[task] as number);
    }
  }
}

const negative = (terms: readonly Term[]): Term[] => terms.map(([column, factor]) => [column, -factor]);
