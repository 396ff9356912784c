import type { z } from "zod";
import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Finding, PatchOperation } from "./finding.ts";
import { finding } from "./finding.ts";
import { jsonPointer } from "./json-pointer.ts";
import { knownKeys, nearest, surelyMeant } from "./known-keys.ts";
import { TEXT_FORMS } from "./schema-values.ts";

type Issue = z.core.$ZodIssue;

const valueAt = (root: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce<unknown>(
    (value, part) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[part] : undefined,
    root,
  );

const KIND_OF_VALUE: Readonly<Record<string, Message>> = {
  string: message("file/kind-string"),
  number: message("file/kind-number"),
  boolean: message("file/kind-boolean"),
  array: message("file/kind-list"),
  object: message("file/kind-object"),
  tuple: message("file/kind-list"),
  record: message("file/kind-object"),
  int: message("file/kind-int"),
};

const kindOf = (value: unknown): Message | string => {
  if (value === null) return message("file/kind-null");
  if (Array.isArray(value)) return message("file/kind-list");
  return KIND_OF_VALUE[typeof value] ?? typeof value;
};

/**
 * Chooses the branch of a union that a value was meant for: the branch whose shape the value has, otherwise the branch
 * with the fewest issues.
 */
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

/** The forms that a value may have, by the key it stands under. */
const UNION_FORMS: Readonly<Record<string, Message>> = {
  start: message("file/form-location"),
  end: message("file/form-location"),
  to: message("file/form-location"),
  time: message("file/form-time"),
};

/** The forms that an entry may have, by the list it stands in. */
const ENTRY_FORMS: Readonly<Record<string, Message>> = {
  spans: message("file/form-span"),
  after: message("file/form-predecessor"),
  or: message("file/form-stand"),
};

/** The form that the schema names in an issue. A message that Zod wrote itself is returned unchanged. */
function formOf(said: string): Message | string {
  const form = TEXT_FORMS.find((one) => one === said);
  return form ? message(`file/form-${form}`) : said;
}

function mustBe(part: Message, form: Message | string, value: unknown): Message {
  return typeof value === "string"
    ? message("file/must-be-says", { part, form, says: value.slice(0, 60) })
    : message("file/must-be", { part, form });
}

function partOf(path: readonly PropertyKey[]): Message {
  const last = path.at(-1);
  if (last === undefined) return message("file/part-file");
  return typeof last === "number"
    ? message("file/part-entry", { index: last })
    : message("file/part-key", { key: String(last) });
}

function messageOf(issue: Issue, path: readonly PropertyKey[], value: unknown): Message {
  const last = String(path.at(-1) ?? "");
  const part = partOf(path);
  if (value === undefined && path.length > 0) return message("file/missing-key", { part });
  switch (issue.code) {
    case "invalid_type":
      return message("file/wrong-kind", {
        part,
        kind: KIND_OF_VALUE[issue.expected] ?? issue.expected,
        found: kindOf(value),
      });
    case "invalid_format":
      return mustBe(part, issue.format === "regex" ? formOf(issue.message) : issue.format, value);
    case "invalid_value": {
      const known = issue.values.map((one) => `"${String(one)}"`);
      return typeof value === "string"
        ? message("file/must-be-one-of-says", { part, known, says: value.slice(0, 60) })
        : message("file/must-be-one-of", { part, known });
    }
    case "too_small": {
      const least = Number(issue.minimum);
      if (issue.origin === "number") return message("file/too-small", { part, least });
      return issue.origin === "array" && least > 1
        ? message("file/too-short", { part, least })
        : message("file/must-not-be-empty", { part });
    }
    case "too_big": {
      const most = Number(issue.maximum);
      return message(issue.origin === "number" ? "file/too-big" : "file/too-long", { part, most });
    }
    case "invalid_union": {
      const form = UNION_FORMS[last] ?? ENTRY_FORMS[String(path.at(-2) ?? "")];
      return form ? message("file/must-be", { part, form }) : message("file/no-form", { part });
    }
    case "custom":
      return mustBe(part, formOf(issue.message), value);
    default:
      return message("file/not-valid", { part, why: issue.message });
  }
}

/** The patch that corrects the name of a key; `null` when the right name is uncertain or already present. */
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
      const pointer = jsonPointer([...path, key]);
      const unknown = meant
        ? message("file/unknown-key-meant", { key, meant })
        : message("file/unknown-key", { key });
      return finding("error", "file/unknown-key", pointer, unknown, {
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

/** Turns the issues of a failed Zod parse of the file `root` into findings, in the order in which Zod met them. */
export function schemaFindings(root: unknown, error: z.ZodError): Finding[] {
  return error.issues.flatMap((issue) => findingsOf(root, issue, []));
}
