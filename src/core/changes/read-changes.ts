import type { z } from "zod";
import type { Change } from "../procedure/index.ts";
import { changeForms } from "../procedure/index.ts";

type FormName = keyof typeof changeForms;
const FORM_NAMES = Object.keys(changeForms) as FormName[];

/** Why a JSON value is no list of changes; `index` counts from 0. */
export type UnreadableChanges =
  /** It is neither a list nor an object with a list under `changes`. */
  | { readonly code: "no-list" }
  /** An entry has none of the keys that say what a change does, or several. */
  | { readonly code: "no-form"; readonly index: number; readonly forms: readonly string[] }
  /** An entry has a key that its form does not know. */
  | { readonly code: "unknown-key"; readonly index: number; readonly form: string; readonly key: string }
  /** An entry says neither, or both, of `behind` and `first`. */
  | { readonly code: "no-position"; readonly index: number; readonly form: string }
  /** What an entry has under a key is missing or not what belongs there. */
  | { readonly code: "wrong-value"; readonly index: number; readonly form: string; readonly key: string };

/** A list of changes, or why a value is none. */
export type ReadChanges =
  | { readonly changes: readonly Change[]; readonly problem: null }
  | { readonly changes: null; readonly problem: UnreadableChanges };

function problemOf(index: number, form: FormName, issue: z.core.$ZodIssue | undefined): UnreadableChanges {
  if (issue?.code === "unrecognized_keys") {
    return { code: "unknown-key", index, form, key: issue.keys[0] ?? "" };
  }
  const key = String(issue?.path[0] ?? "");
  return key === "" ? { code: "no-position", index, form } : { code: "wrong-value", index, form, key };
}

function readChange(value: unknown, index: number): Change | UnreadableChanges {
  const isObject = typeof value === "object" && value !== null;
  const forms = isObject ? FORM_NAMES.filter((name) => Object.hasOwn(value, name)) : [];
  const [form] = forms;
  if (form === undefined || forms.length > 1) return { code: "no-form", index, forms };
  const parsed = changeForms[form].safeParse(value);
  return parsed.success ? (parsed.data as Change) : problemOf(index, form, parsed.error.issues[0]);
}

/** Reads a JSON value as changes: a list of them, or an object that has the list under `changes`, as a comparison has. */
export function readChanges(value: unknown): ReadChanges {
  const listed =
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? (value as { changes?: unknown }).changes
      : value;
  if (!Array.isArray(listed)) return { changes: null, problem: { code: "no-list" } };
  const changes: Change[] = [];
  for (const [index, entry] of listed.entries()) {
    const read = readChange(entry, index);
    if ("code" in read) return { changes: null, problem: read };
    changes.push(read);
  }
  return { changes, problem: null };
}
