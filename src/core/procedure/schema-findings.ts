import type { z } from "zod";
import type { Finding, PatchOperation } from "./finding.ts";
import { finding } from "./finding.ts";
import { jsonPointer } from "./json-pointer.ts";
import { knownKeys, nearest, surelyMeant } from "./known-keys.ts";

type Issue = z.core.$ZodIssue;

const valueAt = (root: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, part) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[part] : undefined,
    root,
  );

const KIND_OF_VALUE: Readonly<Record<string, string>> = {
  string: "text",
  number: "a number",
  boolean: "true or false",
  array: "a list",
  object: "an object",
  tuple: "a list",
  record: "an object",
  int: "a whole number",
};

const kindOf = (value: unknown): string => {
  if (value === null) return "null";
  if (Array.isArray(value)) return "a list";
  return KIND_OF_VALUE[typeof value] ?? typeof value;
};

/** Of the branches of a union, the one whose shape the value has, else the one with fewest complaints. */
function likeliestBranch(issue: z.core.$ZodIssueInvalidUnion): Issue[] | null {
  const ranked = issue.errors
    .map((issues) => ({
      issues,
      rank: issues.reduce(
        (sum, { path, code }) => sum + (path.length === 0 && code === "invalid_type" ? 100 : 1),
        0,
      ),
    }))
    .sort((a, b) => a.rank - b.rank);
  const [best, next] = ranked;
  if (!best || best.rank >= 100) return null;
  return next && next.rank === best.rank && best.rank > 1 ? null : best.issues;
}

const UNION_IN_WORDS: Readonly<Record<string, string>> = {
  start: 'a location: {"place": …}, {"crew": …} or {"item": …}',
  end: 'a location: {"place": …}, {"crew": …} or {"item": …}',
  to: 'a location: {"place": …}, {"crew": …} or {"item": …}',
  time: 'a duration such as "PT5M", or {"low", "likely", "high"}',
};

/** The forms of an entry, by the list it stands in. */
const ENTRY_IN_WORDS: Readonly<Record<string, string>> = {
  spans: '{"from", "to"}, both PETs such as "PT10M" or both instants with an offset or Z',
  after: 'the id of a step, or {"step", "lag"}',
};

function messageOf(issue: Issue, path: readonly PropertyKey[], value: unknown): string {
  const last = String(path.at(-1) ?? "");
  const name = typeof path.at(-1) === "number" ? `entry ${last}` : `"${last}"`;
  const shown = typeof value === "string" ? ` (it says "${value.slice(0, 60)}")` : "";
  if (value === undefined && path.length > 0) return `The key ${name} is missing.`;
  switch (issue.code) {
    case "invalid_type":
      return `${path.length ? name : "The file"} must be ${KIND_OF_VALUE[issue.expected] ?? issue.expected}, not ${kindOf(value)}.`;
    case "invalid_format":
      return `${name} must be ${issue.format === "regex" ? issue.message : issue.format}${shown}.`;
    case "invalid_value":
      return `${name} must be ${issue.values.map((known) => `"${String(known)}"`).join(" or ")}${shown}.`;
    case "too_small":
      return issue.origin === "number"
        ? `${name} must be at least ${issue.minimum}.`
        : `${name} must not be ${issue.origin === "array" && Number(issue.minimum) > 1 ? `shorter than ${issue.minimum}` : "empty"}.`;
    case "too_big":
      return issue.origin === "number"
        ? `${name} must be at most ${issue.maximum}.`
        : `${name} is longer than ${issue.maximum}.`;
    case "invalid_union": {
      const words = UNION_IN_WORDS[last] ?? ENTRY_IN_WORDS[String(path.at(-2) ?? "")];
      return words ? `${name} must be ${words}.` : `${name} has none of the forms it may have.`;
    }
    case "custom":
      return `${name} must be ${issue.message}${shown}.`;
    default:
      return `${name} is not valid: ${issue.message}.`;
  }
}

/** The patch that gives a key its right name; `null` when the name is not sure or already there. */
function renamed(
  holder: unknown,
  path: readonly PropertyKey[],
  key: string,
  meant: string | null,
): PatchOperation[] | null {
  if (meant === null || typeof holder !== "object" || holder === null || Object.hasOwn(holder, meant))
    return null;
  return [{ op: "move", from: jsonPointer([...path, key]), path: jsonPointer([...path, meant]) }];
}

function findingsOf(root: unknown, issue: Issue, above: readonly PropertyKey[]): Finding[] {
  const path = [...above, ...issue.path];
  if (issue.code === "unrecognized_keys") {
    const known = knownKeys(path);
    return issue.keys.map((key) => {
      const meant = nearest(key, known);
      const hint = meant ? ` Did you mean "${meant}"?` : "";
      const pointer = jsonPointer([...path, key]);
      return finding("error", "file/unknown-key", pointer, `The key "${key}" is not known here.${hint}`, {
        repair: renamed(valueAt(root, path), path, key, surelyMeant(key, known)),
      });
    });
  }
  if (issue.code === "invalid_union") {
    const branch = likeliestBranch(issue);
    if (branch) return branch.flatMap((inner) => findingsOf(root, inner, path));
  }
  const value = valueAt(root, path);
  const code = value === undefined && path.length > 0 ? "file/missing-key" : "file/wrong-value";
  return [finding("error", code, jsonPointer(path), messageOf(issue, path, value))];
}

/** The findings that a failed Zod parse of the file `root` amounts to, in the order Zod met them. */
export function schemaFindings(root: unknown, error: z.ZodError): Finding[] {
  return error.issues.flatMap((issue) => findingsOf(root, issue, []));
}
