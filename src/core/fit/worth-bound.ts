import type { Task } from "../procedure/index.ts";
import type { Duration, TaskId } from "../units/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { FitCase } from "./fit-case.ts";

/** What a task counts for beside the others: its `worth`, 1 when it says nothing. */
export const worthOf = ({ worth }: Task): number => worth ?? 1;

/** What a search counts a task for: its worth, or something else that is to be as much as can be. */
export type ValueOf = (task: Task) => number;

/** Bounds what the choices can be worth, from the time of the people who do them. */
export interface WorthBound {
  /**
   * The most that choices at or behind a position can be worth together, when these choices are kept already: no set
   * that fits the limit is worth more.
   */
  beyond(kept: ReadonlySet<TaskId>, position: number): number;
}

/**
 * Relaxes the choice of tasks to one knapsack a lane: nobody works longer than there is time, tasks may be kept in part,
 * and nobody waits or moves (Dantzig 1957). The least of the lanes' bounds holds for all. `order` has the choices in the
 * order in which they are looked at, and `value` says what each counts for.
 */
export function worthBound(
  { outline, now, courseWith }: FitCase,
  order: readonly Task[],
  limit: Duration,
  value: ValueOf,
): WorthBound {
  const base = courseWith(new Set());
  const lanes = outline.crew.map((_, lane) => {
    const loads = new Map(order.map((task) => [task.id, loadOf(task, lane)]));
    const busy = [...(base?.steps.values() ?? [])].reduce((sum, { step, finish, stage }) => {
      const entry = outline.step(step);
      if (!entry?.performers.includes(lane) || stage === "done" || stage === "skipped") return sum;
      return sum + (stage === "in-work" ? Math.max(0, finish - now) : lengthOf(entry.step));
    }, 0);
    const densest = order
      .map((task, position) => ({ task, position, load: loads.get(task.id) ?? 0, worth: value(task) }))
      .sort((a, b) => b.worth * a.load - a.worth * b.load);
    return { loads, free: limit - now - busy, densest };
  });
  return {
    beyond: (kept, position) =>
      lanes.reduce((least, { loads, free, densest }) => {
        let left = free - [...kept].reduce((sum, id) => sum + (loads.get(id) ?? 0), 0);
        let worth = 0;
        for (const one of densest) {
          if (one.position < position) continue;
          const share = one.load <= left || one.load === 0 ? 1 : Math.max(0, left) / one.load;
          worth += share * one.worth;
          left -= share * one.load;
        }
        return Math.min(least, worth);
      }, Number.POSITIVE_INFINITY),
  };

  /** How long a task occupies a lane at least: steps that only a decision brings and ways that depend on others are not counted. */
  function loadOf(task: Task, lane: number): number {
    return task.steps.reduce((sum, step) => {
      const isIn = outline.step(step.id)?.performers.includes(lane) && step.when === undefined;
      return isIn ? sum + lengthOf(step) : sum;
    }, 0);
  }
}

const lengthOf = ({ time }: Task["steps"][number]): number => time?.likely ?? NO_TIME;
