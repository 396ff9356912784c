import type { Fields, ListName, ProcedureFile } from "../../core/procedure/index.ts";
import { procedureJsonSchema } from "../../core/procedure/index.ts";
import { DURATION_PATTERN, INSTANT_PATTERN } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";

/** What the schema of the file says of one field: as much of JSON Schema as the file's needs. */
export interface FieldSchema {
  readonly type?: string;
  readonly enum?: readonly string[];
  readonly const?: string | number;
  readonly pattern?: string;
  readonly maxLength?: number;
  readonly properties?: Readonly<Record<string, FieldSchema>>;
  readonly required?: readonly string[];
  readonly items?: FieldSchema | false;
  readonly prefixItems?: readonly FieldSchema[];
  readonly anyOf?: readonly FieldSchema[];
  readonly additionalProperties?: FieldSchema | false;
}

const NO_SCHEMA: FieldSchema = {};

const root = procedureJsonSchema() as FieldSchema;

const entryOf = (schema: FieldSchema | undefined): FieldSchema =>
  (schema?.items === false ? undefined : schema?.items) ?? NO_SCHEMA;
const task = entryOf(root.properties?.["tasks"]);

/** The schema of one member of a list. */
export function memberSchema(list: ListName): FieldSchema {
  if (list === "tasks") return task;
  return entryOf(list === "steps" ? task.properties?.["steps"] : root.properties?.[list]);
}

/** The schema of the head of the file. */
export const headSchema: FieldSchema = root;

export const isDuration = ({ pattern }: FieldSchema): boolean => pattern === DURATION_PATTERN.source;
export const isInstant = ({ pattern }: FieldSchema): boolean => pattern === INSTANT_PATTERN.source;

/** The list whose members a field names, by the keys on the way to it; `null` for a field that names none. */
export function listNamedBy(list: ListName | "head", path: readonly string[]): ListName | null {
  const keys = path.filter((key) => key !== "*");
  const key = keys.at(-1);
  if (key === "start" && list === "crew") return "places";
  if ((key === "from" || key === "until") && list === "watches") return "steps";
  switch (key) {
    case "at":
    case "to":
    case "anchor":
    case "place":
    case "between":
      return "places";
    case "by":
    case "or":
    case "crew":
    case "crews":
      return "crew";
    case "item":
      return "items";
    case "after":
    case "step":
      return "steps";
    case "within":
      return "windows";
    case "pictures":
    case "picture":
      return "pictures";
    default:
      return null;
  }
}

/** One of several that a field may name. */
export interface Choice {
  readonly id: string;
  readonly name: string;
}

const nameOf = (member: Fields): string => {
  const name = member["call"] ?? member["label"] ?? member["title"] ?? member["do"] ?? member["id"];
  return String(name);
};

/** The members of a list of a file, as a field may name them. */
export function choicesIn(file: ProcedureFile, list: ListName): readonly Choice[] {
  if (list === "steps")
    return file.tasks.flatMap((one, at) =>
      one.steps.map((step, index) => ({ id: step.id, name: `${at + 1}.${index + 1} ${step.do}` })),
    );
  const members = (file as Fields)[list];
  return (Array.isArray(members) ? (members as readonly Fields[]) : []).map((member) => ({
    id: String(member["id"]),
    name: nameOf(member),
  }));
}

/** What a new value begins with: the least that the schema takes, with the first of those that it may name. */
export function firstValue(
  schema: FieldSchema,
  path: readonly string[],
  named: (path: readonly string[]) => readonly Choice[] | null,
): unknown {
  if (schema.const !== undefined) return schema.const;
  if (schema.anyOf) return firstValue(schema.anyOf[0] ?? NO_SCHEMA, path, named);
  if (schema.enum) return schema.enum[0];
  switch (schema.type) {
    case "string":
      if (isDuration(schema)) return "PT1M";
      if (isInstant(schema)) return "2031-01-01T00:00:00Z";
      if (schema.pattern) return named(path)?.[0]?.id ?? "new";
      return path.at(-1) === "unit" ? "1" : words("write/new-text");
    case "number":
      return 0;
    case "boolean":
      return true;
    case "array":
      return schema.prefixItems
        ? schema.prefixItems.map((_, index) => named(path)?.[index]?.id ?? "new")
        : [firstValue(entryOf(schema), [...path, "*"], named)];
    case "object":
      return Object.fromEntries(
        (schema.required ?? []).map((key) => [
          key,
          firstValue(schema.properties?.[key] ?? NO_SCHEMA, [...path, key], named),
        ]),
      );
    default:
      return null;
  }
}

/** Whether a value could be meant by a schema, looked at from the outside. */
export function isLike(schema: FieldSchema, value: unknown): boolean {
  if (schema.const !== undefined) return value === schema.const;
  if (schema.type === "string")
    return typeof value === "string" && (!schema.pattern || new RegExp(schema.pattern).test(value));
  if (schema.type === "array") return Array.isArray(value);
  if (schema.type === "object")
    return (
      typeof value === "object" &&
      value !== null &&
      !Array.isArray(value) &&
      (schema.required ?? []).every((key) => Object.hasOwn(value, key)) &&
      Object.entries(value).every(
        ([key, one]) => !schema.properties || (schema.properties[key] !== undefined && one !== undefined),
      )
    );
  return typeof value === schema.type;
}

/** Which of several forms a value has; the first where it has none. */
export function formOf(schema: FieldSchema, value: unknown): number {
  const forms = schema.anyOf ?? [];
  const exact = forms.findIndex(
    (one) =>
      isLike(one, value) &&
      (!one.properties ||
        Object.entries(one.properties).every(([key, inner]) => {
          const field = (value as Fields)[key];
          return field === undefined || inner.anyOf !== undefined || isLike(inner, field);
        })),
  );
  return Math.max(0, exact);
}
