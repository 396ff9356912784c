import type { CrewId, DecisionId, ItemId, PlaceId, StepId, TaskId } from "../units/index.ts";
import type { CrewMember, Decision, Item, Place, Procedure, Step, Task } from "./schema.ts";

/** A step with its place in the procedure. */
export interface OutlineStep {
  /** Index in reading order, from 0, over all tasks outside contingencies. */
  readonly index: number;
  readonly step: Step;
  readonly task: Task;
  /** The number as printed: task and step, both counted from 1, such as `3.2`. */
  readonly number: string;
  /** JSON Pointer to the step in the file. */
  readonly pointer: string;
  readonly getAhead: boolean;
  /** The performers as indices into `crew`, in the order of `by`. */
  readonly performers: readonly number[];
}

/** A decision and the step that makes it. */
export interface OutlineDecision {
  readonly decision: Decision;
  readonly madeBy: OutlineStep;
}

/** A procedure prepared for use: its steps in reading order ([PRO1]), with every id resolved once. */
export interface Outline {
  readonly procedure: Procedure;
  readonly steps: readonly OutlineStep[];
  readonly crew: readonly CrewMember[];
  readonly decisions: readonly OutlineDecision[];
  /** The step with this id; `null` when it is not in the main tasks. */
  step(id: string): OutlineStep | null;
  /** Index of a crew member in `crew`; -1 when there is none. */
  lane(id: string): number;
  crewMember(id: CrewId): CrewMember | null;
  place(id: PlaceId): Place | null;
  item(id: ItemId): Item | null;
  decision(id: string): OutlineDecision | null;
}

/**
 * Prepares a procedure for use. Contingencies are left out, because their steps are not performed until they are
 * brought in.
 */
export function outlineOf(procedure: Procedure): Outline {
  const lanes = new Map(procedure.crew.map(({ id }, index) => [id as string, index]));
  const steps: OutlineStep[] = [];
  for (const [taskIndex, task] of procedure.tasks.entries()) {
    for (const [stepIndex, step] of task.steps.entries()) {
      steps.push({
        index: steps.length,
        step,
        task,
        number: `${taskIndex + 1}.${stepIndex + 1}`,
        pointer: `/tasks/${taskIndex}/steps/${stepIndex}`,
        getAhead: task.priority === "get-ahead",
        performers: step.by.map((crew) => lanes.get(crew) ?? -1),
      });
    }
  }
  const byId = new Map<string, OutlineStep>(steps.map((entry) => [entry.step.id, entry]));
  const decisions = steps.flatMap((entry) =>
    entry.step.decide ? [{ decision: entry.step.decide, madeBy: entry }] : [],
  );
  const decisionById = new Map<string, OutlineDecision>(decisions.map((entry) => [entry.decision.id, entry]));
  const places = new Map(procedure.places.map((place) => [place.id, place]));
  const items = new Map(procedure.items.map((item) => [item.id, item]));
  return {
    procedure,
    steps,
    crew: procedure.crew,
    decisions,
    step: (id: StepId | string) => byId.get(id) ?? null,
    lane: (id) => lanes.get(id) ?? -1,
    crewMember: (id) => procedure.crew[lanes.get(id) ?? -1] ?? null,
    place: (id) => places.get(id) ?? null,
    item: (id) => items.get(id) ?? null,
    decision: (id: DecisionId | string) => decisionById.get(id) ?? null,
  };
}

/**
 * Returns the outline without some tasks. What comes `after` one of their steps no longer waits for it. The same outline
 * comes back when there is nothing to leave out.
 */
export function withoutTasks(outline: Outline, leftOut: ReadonlySet<TaskId>): Outline {
  if (leftOut.size === 0) return outline;
  const { procedure } = outline;
  return outlineOf({ ...procedure, tasks: procedure.tasks.filter(({ id }) => !leftOut.has(id)) });
}
