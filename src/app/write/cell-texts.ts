import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { FileStep } from "../../core/write/index.ts";
import { sheetOf } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { minutesText } from "./minutes-text.ts";

/** The columns of the table, in their order. */
export const COLUMNS = ["do", "who", "time", "where", "after", "moves", "within"] as const;

/** The name of a column. */
export type Column = (typeof COLUMNS)[number];

/** What ids of a file are called in the cells of the table. */
export interface CellNames {
  readonly number: ReadonlyMap<string, string>;
  readonly place: ReadonlyMap<string, string>;
  readonly item: ReadonlyMap<string, string>;
  readonly window: ReadonlyMap<string, string>;
  readonly crew: ReadonlyMap<string, string>;
}

const named = (members: readonly { readonly id: string; readonly label?: string | undefined }[] = []) =>
  new Map(members.map(({ id, label }) => [id, label ?? id]));

/** The names of everything in a file. */
export function cellNames(file: ProcedureFile): CellNames {
  return {
    number: new Map(sheetOf(file).flatMap((row) => (row.kind === "step" ? [[row.step.id, row.number]] : []))),
    place: named(file.places),
    item: named(file.items),
    window: named(file.windows),
    crew: new Map(file.crew.map(({ id, call }) => [id, call])),
  };
}

const name = (names: ReadonlyMap<string, string>, id: string) => names.get(id) ?? id;

type FileLocation = NonNullable<FileStep["moves"]>[number]["to"];

function whereTo(names: CellNames, to: FileLocation): string {
  if ("place" in to) return name(names.place, to.place);
  if ("item" in to) return name(names.item, to.item);
  return ("crew" in to ? [to.crew] : to.crews).map((id) => name(names.crew, id)).join("+");
}

/** What stands in the cells of a step that are no action and no time. */
export type CellTexts = Readonly<Record<"who" | "where" | "after" | "moves" | "within", string>>;

/** The texts of a step's cells, with what the file calls the ids that it names. */
export function cellTexts(step: FileStep, names: CellNames): CellTexts {
  const [at, to] = [step.at, step.to].map((id) => (id === undefined ? null : name(names.place, id)));
  return {
    who: step.by.map((id) => name(names.crew, id)).join(" + "),
    where: to === null || to === undefined ? (at ?? "") : words("write/to-place", { place: to }),
    after: (step.after ?? [])
      .map((one) =>
        typeof one === "string"
          ? name(names.number, one)
          : one.lag === undefined
            ? name(names.number, one.step)
            : `${name(names.number, one.step)} + ${minutesText(one.lag)}`,
      )
      .join(", "),
    moves: (step.moves ?? [])
      .map(({ item, to: end }) => `${name(names.item, item)} → ${whereTo(names, end)}`)
      .join(", "),
    within: (step.within ?? []).map((id) => name(names.window, id)).join(", "),
  };
}
