import type { z } from "zod";
import { message } from "../../words/index.ts";
import type { Finding, Procedure } from "../procedure/index.ts";
import { finding, hasErrors, jsonPointer, outlineOf, readJsonText } from "../procedure/index.ts";
import { surpriseFindings } from "./surprise-findings.ts";
import { SURPRISES_FORMAT, type SurprisesFile, surprisesSchema } from "./surprises-file.ts";

/** What reading a file of surprises came to: the surprises where no finding is an error. */
export interface ReadSurprises {
  readonly surprises: SurprisesFile | null;
  /** In the order of the file, with line and column. */
  readonly findings: readonly Finding[];
}

/** True for a JSON value that says it is a file of surprises, of whatever version. */
export function areSurprises(value: unknown): boolean {
  const { format } = (value ?? {}) as { readonly format?: unknown };
  return typeof format === "string" && format.startsWith("tetherline.surprises/");
}

/** Reads the text of a file of surprises against the procedure that it is for; never throws ([TRN1]). */
export function readSurprises(text: string, procedure: Procedure): ReadSurprises {
  const json = readJsonText(text);
  const found = json.findings.length > 0 ? [] : findingsIn(json.value, procedure);
  const findings = [
    ...json.findings,
    ...found.map((one) => ({ ...one, position: json.positionOf(one.pointer) })),
  ];
  if (hasErrors(findings)) return { surprises: null, findings };
  return { surprises: surprisesSchema.parse(json.value), findings };
}

function findingsIn(value: unknown, procedure: Procedure): readonly Finding[] {
  const { format } = (value ?? {}) as { readonly format?: unknown };
  if (format !== SURPRISES_FORMAT && areSurprises(value)) {
    return [finding("error", "surprises/newer", "/format", message("surprises/newer"))];
  }
  const read = surprisesSchema.safeParse(value);
  if (read.success) return surpriseFindings(read.data, outlineOf(procedure));
  return read.error.issues.flatMap(issuesMeant).map((issue) => {
    const key = issue.code === "unrecognized_keys" ? issue.keys[0] : issue.path.findLast(isKey);
    const path = issue.code === "unrecognized_keys" ? [...issue.path, key ?? ""] : issue.path;
    const said =
      issue.code === "unrecognized_keys"
        ? message("surprises/unknown-key", { key: String(key) })
        : message("surprises/unusable", { key: String(key ?? "format") });
    return finding("error", "surprises/unusable", jsonPointer(path), said);
  });
}

type Issue = z.core.$ZodIssue;

/** What is wrong with the form that was meant, where a value may have one of several: that of its kind, or of its keys. */
function issuesMeant(issue: Issue): readonly Issue[] {
  if (issue.code !== "invalid_union") return [issue];
  const meant = issue.errors.filter(
    (issues) =>
      !issues.some(({ path, code }) => path[0] === "kind" || (path.length === 0 && code === "invalid_type")),
  );
  const [first] = meant;
  if (meant.length !== 1 || !first) return [issue];
  return first.flatMap((one) => issuesMeant({ ...one, path: [...issue.path, ...one.path] }));
}

const isKey = (part: PropertyKey): boolean => typeof part === "string";
