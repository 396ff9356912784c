import type { Fields, ListName } from "./change.ts";
import type { Procedure, ProcedureFile } from "./schema.ts";

/** What has texts that a reader is shown: the members of a list, the decisions of steps, the head of the file. */
export type TextList = Exclude<ListName, "routes" | "words"> | "decisions" | "head";

/** A member with texts that a reader is shown. */
export interface TextHolder {
  readonly list: TextList;
  /** Its id as a change writes it; that of a supply has its crew member in front. Of the head `"."`, which no id can be. */
  readonly id: string;
  readonly member: Fields;
}

/** The key of a member's words with its list in front: no other member has it. */
export const listedKey = ({ list, id }: Pick<TextHolder, "list" | "id">): string => `${list} ${id}`;

/** Which text of a field it is: its place in a list, the id of a record, `null` where the field is one text. */
export type TextPart = number | string | null;

/** The id under which the head of the file stands among the words of a language. */
export const HEAD_KEY = ".";

const ONE_TEXT = ["do", "brief", "ask", "title", "summary", "when", "call", "label", "size"] as const;

/** The fields that hold texts which a reader is shown. */
export type TextField = (typeof ONE_TEXT)[number] | "alerts" | "confirm" | "check" | "records";

/** By list, the fields that hold texts; a field of a newer format is one word more. */
export const TEXT_FIELDS: Readonly<Record<TextList, readonly TextField[]>> = {
  head: ["title", "summary"],
  tasks: ["title", "brief"],
  steps: ["alerts", "do", "check", "records", "confirm", "brief"],
  decisions: ["ask"],
  contingencies: ["title", "when"],
  crew: ["call"],
  places: ["label"],
  items: ["label", "size"],
  states: ["label"],
  windows: ["label"],
  supplies: ["label"],
  watches: ["do"],
  pictures: ["label"],
};

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const listed = (holder: Fields, key: string): readonly Fields[] => {
  const value = holder[key];
  return Array.isArray(value) ? value.filter(isFields) : [];
};

const held = (list: TextList, member: Fields): TextHolder => {
  const id = list === "supplies" ? `${String(member["crew"])} ${String(member["id"])}` : String(member["id"]);
  return { list, id, member };
};

const ofTask = (task: Fields): TextHolder[] => [
  held("tasks", task),
  ...listed(task, "steps").flatMap((step) => [
    held("steps", step),
    ...(isFields(step["decide"]) ? [held("decisions", step["decide"])] : []),
  ]),
];

/** Everything in a procedure, as read or as written, that has texts which a reader is shown, in reading order. */
export function textHolders(procedure: Procedure | ProcedureFile): TextHolder[] {
  const root: Fields = procedure;
  const plain = ["crew", "places", "items", "states", "windows", "supplies", "watches", "pictures"] as const;
  return [
    { list: "head", id: HEAD_KEY, member: root },
    ...listed(root, "tasks").flatMap(ofTask),
    ...listed(root, "contingencies").flatMap((one) => [
      held("contingencies", one),
      ...listed(one, "tasks").flatMap(ofTask),
    ]),
    ...plain.flatMap((list) => listed(root, list).map((member) => held(list, member))),
  ];
}

/** The texts of one field of a member, each with its part; none where the member has not got the field. */
export function textsOfField(field: TextField, member: Fields): readonly (readonly [TextPart, string])[] {
  const value = member[field];
  switch (field) {
    case "alerts":
      return listed(member, field).map(({ text }, place) => [place, String(text)] as const);
    case "check":
      return Array.isArray(value) ? value.map((text, place) => [place, String(text)] as const) : [];
    case "records":
      return listed(member, field).flatMap(({ id, label }) =>
        typeof label === "string" ? [[String(id), label] as const] : [],
      );
    case "confirm":
      return isFields(value) ? [[null, String(value["text"])]] : [];
    default:
      return typeof value === "string" ? [[null, value]] : [];
  }
}

/** A member with other texts in a field; `textOf` gives the text of a part, `null` to leave it. */
export function withTexts(
  member: Fields,
  field: TextField,
  textOf: (part: TextPart) => string | null,
): Fields {
  const value = member[field];
  switch (field) {
    case "alerts":
      return {
        ...member,
        [field]: listed(member, field).map((one, place) => ({ ...one, text: textOf(place) ?? one["text"] })),
      };
    case "check":
      return {
        ...member,
        [field]: (value as readonly string[]).map((one, place) => textOf(place) ?? one),
      };
    case "records":
      return {
        ...member,
        [field]: listed(member, field).map((one) => {
          const label = textOf(String(one["id"]));
          return label === null ? one : { ...one, label };
        }),
      };
    case "confirm":
      return {
        ...member,
        [field]: { ...(value as Fields), text: textOf(null) ?? (value as Fields)["text"] },
      };
    default:
      return { ...member, [field]: textOf(null) ?? value };
  }
}
