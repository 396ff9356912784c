import { z } from "zod";
import type { Fields } from "../procedure/index.ts";
import { described, taskSchema } from "../procedure/index.ts";
import { DURATION_PATTERN, ID_PATTERN } from "../units/index.ts";

/** The format that a fragment names. */
export const FRAGMENT_FORMAT = "tetherline.fragment/1";

/** The most blanks of a fragment, and the most steps over all its tasks. */
export const FRAGMENT_LIMITS = { blanks: 40, steps: 200 } as const;

const id = z.string().regex(ID_PATTERN);
const text = z.string().min(1).max(4000);
const duration = z.string().regex(DURATION_PATTERN);
const time = z.union([duration, z.strictObject({ low: duration, likely: duration, high: duration })]);

const blank = z.strictObject({
  id,
  kind: z.enum(["crew", "place", "item", "time"]),
  label: text.describe("What is to be put there, in words"),
  usual: time.optional().describe("What a time usually is"),
});

const steps = z.array(z.record(z.string(), z.unknown())).min(1).max(FRAGMENT_LIMITS.steps);

const { priority, closeout, worth, order, brief } = taskSchema.shape;
const task = z.strictObject({
  id,
  title: text,
  // As they are written: what is left out stays out of the procedure.
  priority: priority.unwrap().optional(),
  closeout: closeout.unwrap().optional(),
  worth,
  order,
  brief,
  steps,
});

interface Parts {
  readonly steps?: readonly unknown[] | undefined;
  readonly tasks?: readonly { readonly steps: readonly unknown[] }[] | undefined;
}
const hasOneForm = ({ steps, tasks }: Parts) => (steps === undefined) !== (tasks === undefined);
const hasFewSteps = ({ tasks = [] }: Parts) =>
  tasks.reduce((sum, one) => sum + one.steps.length, 0) <= FRAGMENT_LIMITS.steps;

/** A fragment as it stands in its file; its steps and tasks are looked at once their blanks are filled. */
export const fragmentSchema = z
  .strictObject({
    $schema: z.string().optional(),
    format: z.literal(FRAGMENT_FORMAT),
    id,
    title: text,
    revision: z.string().min(1).max(40),
    summary: text.optional(),
    blanks: z.array(blank).max(FRAGMENT_LIMITS.blanks).default([]),
    steps: steps.optional().describe("Put in behind a step, or as one task"),
    tasks: z.array(task).min(1).optional().describe("Put in behind a task, in place of steps"),
  })
  .refine(hasOneForm)
  .refine(hasFewSteps, { path: ["tasks"] });

/** The JSON Schema (2020-12) of a file of a fragment, made from the Zod schema. An author's text editor reads it. */
export function fragmentJsonSchema(): object {
  const schema = z.toJSONSchema(fragmentSchema, { io: "input", target: "draft-2020-12" });
  const either = { ...schema, oneOf: [{ required: ["steps"] }, { required: ["tasks"] }] };
  return described(either, "Tetherline fragment", `Steps or tasks with blanks, format ${FRAGMENT_FORMAT}`);
}

/** Steps, or tasks of steps, that are put into procedures with their blanks filled ([WRT9]). */
export type Fragment = z.output<typeof fragmentSchema>;
export type FragmentBlank = Fragment["blanks"][number];

/** Some steps of a fragment as written, and the task of it that they stand in; `null` where it has none. */
export interface FragmentGroup {
  readonly task: FragmentTask | null;
  readonly steps: readonly Fields[];
}

/** A task of a fragment but for its steps. */
type FragmentTask = Omit<NonNullable<Fragment["tasks"]>[number], "steps">;

/** The steps of a fragment by its tasks, in order; all in one group where it has no tasks. */
export function groupsOf({ steps, tasks }: Fragment): readonly FragmentGroup[] {
  return (
    tasks?.map(({ steps: own, ...task }) => ({ task, steps: own })) ?? [{ task: null, steps: steps ?? [] }]
  );
}
