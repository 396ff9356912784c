import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Finding, PathPart, ProcedureFile } from "../procedure/index.ts";
import { FORMAT, finding, hasErrors, jsonPointer, parseProcedure } from "../procedure/index.ts";
import type { BlankValues } from "./blank-values.ts";
import { BRACED, blankNamed, withBlanksFilled } from "./blank-values.ts";
import type { Fragment } from "./fragment.ts";
import { FRAGMENT_FORMAT, fragmentSchema } from "./fragment.ts";

/** What reading a fragment came to: the fragment where nothing is wrong with it. */
export interface ReadFragment {
  readonly fragment: Fragment | null;
  readonly findings: readonly Finding[];
}

const wrong = (path: readonly PropertyKey[], said: Message): Finding =>
  finding("error", "fragment/wrong", jsonPointer(path), said);

/** Reads the text of a fragment; never throws. */
export function readFragment(text: string): ReadFragment {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return refused([wrong([], message("fragment/not-json"))]);
  }
  const { format } = (value ?? {}) as { readonly format?: unknown };
  if (typeof format === "string" && format !== FRAGMENT_FORMAT && format.startsWith("tetherline.fragment/"))
    return refused([wrong(["format"], message("fragment/newer"))]);
  const read = fragmentSchema.safeParse(value);
  if (!read.success)
    return refused(
      read.error.issues.map((issue) => {
        if (issue.code === "custom" && issue.path.length === 0)
          return wrong(issue.path, message("fragment/steps-or-tasks"));
        const key = issue.code === "unrecognized_keys" ? issue.keys[0] : issue.path.at(-1);
        return wrong(issue.path, message("fragment/unusable", { key: String(key ?? "format") }));
      }),
    );
  const findings = [...blankFindings(read.data), ...stepFindings(read.data)];
  return hasErrors(findings) ? refused(findings) : { fragment: read.data, findings };
}

const refused = (findings: readonly Finding[]): ReadFragment => ({ fragment: null, findings });

/** What is wrong with the blanks: two of one id, one that is not there, a time within a text. */
function blankFindings({ blanks, steps, tasks }: Fragment): Finding[] {
  const kinds = new Map(blanks.map(({ id, kind }) => [id, kind]));
  const doubled = blanks.flatMap(({ id }, index) =>
    blanks.findIndex((one) => one.id === id) < index
      ? [wrong(["blanks", index, "id"], message("fragment/blank-doubled", { blank: id }))]
      : [],
  );
  const inPart = (part: unknown, path: readonly PathPart[]): Finding[] => {
    if (typeof part === "string") {
      return [...part.matchAll(BRACED)].flatMap(([, id = ""]) => {
        const kind = kinds.get(id);
        if (kind === undefined) return [wrong(path, message("fragment/no-such-blank", { blank: id }))];
        return kind === "time" ? [wrong(path, message("fragment/time-in-text", { blank: id }))] : [];
      });
    }
    if (typeof part !== "object" || part === null) return [];
    const id = blankNamed(part);
    if (id !== null)
      return kinds.has(id) ? [] : [wrong(path, message("fragment/no-such-blank", { blank: id }))];
    return Object.entries(part).flatMap(([key, value]) =>
      inPart(value, [...path, Array.isArray(part) ? Number(key) : key]),
    );
  };
  return [...doubled, ...inPart(steps, ["steps"]), ...inPart(tasks, ["tasks"])];
}

/** What the reader of procedures says of the steps and tasks, filled with what the blanks are themselves. */
function stepFindings(fragment: Fragment): Finding[] {
  const of = (kind: string) => fragment.blanks.filter((blank) => blank.kind === kind);
  const file: ProcedureFile = {
    format: FORMAT,
    id: fragment.id,
    title: fragment.title,
    crew: [
      // A procedure has somebody, also where the fragment leaves open nobody.
      { id: "nobody-else", call: "–", station: "inside" },
      ...of("crew").map(({ id, label }) => ({ id, call: label, station: "inside" as const })),
    ],
    places: of("place").map(({ id, label }) => ({ id, label })),
    items: of("item").map(({ id, label }) => ({ id, label, start: { crew: "nobody-else" } })),
    tasks: [],
  };
  const values = Object.fromEntries(
    fragment.blanks.map(({ id, kind }) => [id, kind === "time" ? { time: "PT1M" } : { [kind]: id }]),
  ) as BlankValues;
  const tasks = withBlanksFilled(fragment, file, values).map(({ task, steps }) => ({
    ...(task ?? { id: "steps", title: fragment.title }),
    steps,
  }));
  const { findings } = parseProcedure({ ...file, tasks });
  if (fragment.tasks) return findings.filter(({ pointer }) => pointer.startsWith("/tasks/"));
  const head = "/tasks/0/steps";
  return findings
    .filter(({ pointer }) => pointer.startsWith(head))
    .map((one) => ({ ...one, pointer: `/steps${one.pointer.slice(head.length)}` }));
}
