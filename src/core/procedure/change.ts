import { z } from "zod";

/** The lists of a procedure whose members a change can name ([CHG1]). */
export const CHANGE_LISTS = [
  "tasks",
  "steps",
  "crew",
  "places",
  "routes",
  "items",
  "windows",
  "supplies",
  "watches",
  "states",
  "contingencies",
  "pictures",
  "words",
] as const;

/** The name of a list whose members a change can name. */
export type ListName = (typeof CHANGE_LISTS)[number];

const list = z.enum(CHANGE_LISTS).optional().describe("The list the id stands in; steps, unless given");

const id = z
  .union([z.string().min(1), z.tuple([z.string().min(1), z.string().min(1)])])
  .transform((written) => (typeof written === "string" ? written : written.join(" ")))
  .describe("An id; of a route its two places, of a supply its crew member and its id: with a blank between");

const fields = z.record(z.string(), z.unknown()).readonly();
const unset = z.array(z.string()).readonly().optional().describe("Fields that are removed");
const behind = id.optional().describe("The member it stands behind");
const first = z
  .union([z.literal(true), z.string().min(1)])
  .optional()
  .describe("First in the task (steps) or contingency (tasks) with this id; true in all other lists");

interface Placing {
  readonly behind?: string | undefined;
  readonly first?: string | true | undefined;
}
const hasOnePlace = ({ behind, first }: Placing) => (behind === undefined) !== (first === undefined);

/** The forms of a change, by the key that tells them apart. */
export const changeForms = {
  add: z.strictObject({ add: fields, list, behind, first }).refine(hasOnePlace),
  drop: z.strictObject({ drop: id, list }),
  move: z.strictObject({ move: id, list, behind, first }).refine(hasOnePlace),
  change: z.strictObject({ change: id, list, set: fields.optional(), unset }),
  rename: z.strictObject({ rename: id, list, to: id }),
  bring: z.strictObject({ bring: z.string().min(1), behind: z.string().min(1) }),
  head: z.strictObject({ head: fields, unset }),
} as const;

/** One change to a procedure. It names what it changes by list and id, never by index ([CHG1]). */
export const changeSchema = z.union([
  changeForms.add,
  changeForms.drop,
  changeForms.move,
  changeForms.change,
  changeForms.rename,
  changeForms.bring,
  changeForms.head,
]);

type Form<Name extends keyof typeof changeForms> = Readonly<z.output<(typeof changeForms)[Name]>>;

/** Adds a member to a list, after another member or first. */
export type AddChange = Form<"add">;
/** Removes a member. The `after` entries and watches that name a dropped step lose that reference. */
export type DropChange = Form<"drop">;
/** Moves a member to another position. */
export type MoveChange = Form<"move">;
/** Sets or removes fields of a member as whole values. Its id stays. */
export type FieldChange = Form<"change">;
/** Gives a member another id, both in the member and in everything that names it. */
export type RenameChange = Form<"rename">;
/** Brings the tasks of a contingency into the plan, after the task of the named step. */
export type BringChange = Form<"bring">;
/** Sets or removes fields at the head of the file as whole values. */
export type HeadChange = Form<"head">;

/**
 * One change to a procedure ([CHG1]). The id of a route is its two places in either order, and the id of a supply is
 * its crew member and its own id, each pair separated by a blank: `"hatch boom"`, `"ev1 oxygen"`.
 */
export type Change =
  | AddChange
  | DropChange
  | MoveChange
  | FieldChange
  | RenameChange
  | BringChange
  | HeadChange;

/** The fields of a member of a list, or of the head of the file, as written. */
export type Fields = Readonly<Record<string, unknown>>;
