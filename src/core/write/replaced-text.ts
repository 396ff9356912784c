import { message } from "../../words/index.ts";
import type { Change, Fields, ProcedureFile } from "../procedure/index.ts";
import type { Proposal } from "./proposal.ts";
import { impossible, proposed } from "./proposal.ts";
import { taskKey, tasksOf } from "./sheet.ts";

/** What is looked for in the texts of a procedure. */
export interface Wanted {
  readonly text: string;
  /** True where capital and small letters differ. */
  readonly isExact: boolean;
}

/** The fields of steps and tasks that a person reads, and in which entries of lists. */
const STEP_TEXTS = ["do", "brief", "alerts", "records", "check", "refs", "confirm", "decide"] as const;
const TASK_TEXTS = ["title", "brief"] as const;

/** Within a field, the keys under which there are texts for people. */
const READ_KEYS: ReadonlySet<string> = new Set(["text", "label", "ask"]);

const pattern = ({ text, isExact }: Wanted) =>
  new RegExp(text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&"), isExact ? "gu" : "giu");

/** A field with its texts put through `replace`; the same value where nothing comes out otherwise. */
function replacedIn(value: unknown, replace: (text: string) => string): unknown {
  if (typeof value === "string") return replace(value);
  if (Array.isArray(value)) {
    const next = value.map((one: unknown) => replacedIn(one, replace));
    return next.some((one, index) => one !== value[index]) ? next : value;
  }
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).map(([key, one]) => [
    key,
    READ_KEYS.has(key) ? replacedIn(one, replace) : one,
  ]);
  return entries.some(([key, one]) => one !== (value as Fields)[String(key)])
    ? Object.fromEntries(entries)
    : value;
}

function fieldsReplaced(member: Fields, keys: readonly string[], replace: (text: string) => string): Fields {
  return Object.fromEntries(
    keys.flatMap((key) => {
      const next = replacedIn(member[key], replace);
      return next === member[key] ? [] : [[key, next]];
    }),
  );
}

/** Every text of a member put through `replace`, as changes of the tasks and steps in which something comes out otherwise. */
function changesOfTexts(file: ProcedureFile, replace: (text: string) => string) {
  return tasksOf(file).flatMap((task): { readonly row: string; readonly change: Change }[] => {
    const own = fieldsReplaced(task, TASK_TEXTS, replace);
    return [
      ...(Object.keys(own).length > 0
        ? [{ row: taskKey(task.id), change: { change: task.id, list: "tasks" as const, set: own } }]
        : []),
      ...task.steps.flatMap((step) => {
        const set = fieldsReplaced(step, STEP_TEXTS, replace);
        return Object.keys(set).length > 0 ? [{ row: step.id, change: { change: step.id, set } }] : [];
      }),
    ];
  });
}

/** The rows in whose texts something is found, in reading order; none for an empty text. */
export function rowsWith(file: ProcedureFile, wanted: Wanted): readonly string[] {
  if (wanted.text === "") return [];
  const found = pattern(wanted);
  // Whatever is found comes out otherwise, since no text holds this letter before.
  return changesOfTexts(file, (text) => text.replace(found, "\uFFFF")).map(({ row }) => row);
}

/** Replaces what is wanted in the texts of all tasks and steps, or of some rows ([WRT2]). Ids stay as they are. */
export function textReplaced(
  file: ProcedureFile,
  wanted: Wanted,
  by: string,
  rows: ReadonlySet<string> | null = null,
): Proposal {
  if (wanted.text === "") return impossible(message("write/nothing-wanted"));
  const found = pattern(wanted);
  const made = changesOfTexts(file, (text) => text.replace(found, () => by)).filter(
    ({ row }) => rows === null || rows.has(row),
  );
  if (made.length === 0) return impossible(message("write/not-found", { text: wanted.text }));
  return proposed(
    made.map(({ change }) => change),
    made.map(({ row }) => row),
  );
}
