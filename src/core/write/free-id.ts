import { rollOf } from "../changes/index.ts";
import type { ListName, ProcedureFile } from "../procedure/index.ts";

const LONGEST_ID = 32;

/** A text as an id: small letters, digits and hyphens; the fallback where none of it can stand in one. */
function idOfText(text: string, fallback: string): string {
  const id = text
    .normalize("NFKD")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST_ID)
    .replaceAll(/^-+|-+$/g, "");
  return id === "" ? fallback : id;
}

/** Gives ids that nobody has, each once. */
export class FreeIds {
  readonly #taken: Set<string>;

  constructor(taken: Iterable<string>) {
    this.#taken = new Set(taken);
  }

  /** An id that is made of a text; where that is taken, with a number from 2 on behind it. */
  next(text: string, fallback = "step"): string {
    const base = idOfText(text, fallback);
    let id = base;
    for (let number = 2; this.#taken.has(id); number += 1) id = `${base}-${number}`;
    this.#taken.add(id);
    return id;
  }
}

/** The ids that are free in a list of a file. */
export const freeIdsIn = (file: ProcedureFile, list: ListName): FreeIds =>
  new FreeIds([...rollOf(file, list).members.values()].map(({ id }) => id));

/** The ids of decisions that are free in a file. */
export const freeDecisionIds = (file: ProcedureFile): FreeIds =>
  new FreeIds(
    [...rollOf(file, "steps").members.values()].flatMap(({ member }) => {
      const decide = member["decide"] as { id?: string } | undefined;
      return decide?.id ?? [];
    }),
  );
