import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { ProcedureFile } from "../procedure/index.ts";
import type { Fragment, FragmentBlank } from "./fragment.ts";
import { groupsOf } from "./fragment.ts";

type FileTask = ProcedureFile["tasks"][number];
type FileStep = FileTask["steps"][number];

/** Some steps as a procedure has them, and the task that they stand in; `null` where the fragment has none. */
export interface FilledGroup {
  readonly task: Omit<FileTask, "steps"> | null;
  readonly steps: readonly FileStep[];
}

/** Where a step of a file came from. */
export type Origin = NonNullable<FileStep["from"]>;

/** What blanks are filled with, by their ids. */
export type BlankValues = Origin["blanks"];

/** What a value is of its kind: an id, or a time; `null` where it is of another kind. */
function valueOfKind(kind: FragmentBlank["kind"], value: BlankValues[string] | undefined): unknown {
  return value && kind in value ? (value as Record<string, unknown>)[kind] : null;
}

/** What a blank's value is called within a text. */
function nameOf(file: ProcedureFile, { kind }: FragmentBlank, value: BlankValues[string]): string | null {
  const id = valueOfKind(kind, value);
  if (kind === "crew") return file.crew.find((one) => one.id === id)?.call ?? null;
  const things = kind === "place" ? file.places : kind === "item" ? file.items : [];
  const found = (things ?? []).find((one) => one.id === id);
  return found ? (found.label ?? found.id) : null;
}

/** The first blank that has no value of its kind in a procedure, as a sentence; `null` when all of them have. */
export function blankProblem(fragment: Fragment, file: ProcedureFile, values: BlankValues): Message | null {
  for (const blank of fragment.blanks) {
    const value = values[blank.id];
    if (!value || valueOfKind(blank.kind, value) === null)
      return message("fragment/blank-empty", { label: blank.label });
    if (blank.kind !== "time" && nameOf(file, blank, value) === null)
      return message("fragment/blank-not-there", { label: blank.label });
  }
  return null;
}

/** The groups of a fragment with its blanks filled; all of them must have values. */
export function withBlanksFilled(
  fragment: Fragment,
  file: ProcedureFile,
  values: BlankValues,
): readonly FilledGroup[] {
  const blanks = new Map(fragment.blanks.map((blank) => [blank.id, blank]));
  const inText = (text: string) =>
    text.replace(BRACED, (whole, id: string) => {
      const [blank, value] = [blanks.get(id), values[id]];
      return (blank && value && nameOf(file, blank, value)) ?? whole;
    });
  const filled = (part: unknown): unknown => {
    if (typeof part === "string") return inText(part);
    if (Array.isArray(part)) return part.map(filled);
    if (typeof part !== "object" || part === null) return part;
    const id = blankNamed(part);
    if (id !== null) {
      const blank = blanks.get(id);
      return blank ? valueOfKind(blank.kind, values[id]) : part;
    }
    return Object.fromEntries(Object.entries(part).map(([key, value]) => [key, filled(value)]));
  };
  return groupsOf(fragment).map((group) => filled(group) as FilledGroup);
}

/** The braces that stand for a blank within a text. */
export const BRACED = /\{([a-z0-9-]+)\}/g;

/** The blank that an object stands for; `null` for any other object. */
export function blankNamed(part: object): string | null {
  const { blank } = part as { readonly blank?: unknown };
  return typeof blank === "string" && Object.keys(part).length === 1 ? blank : null;
}
