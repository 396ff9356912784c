import { words } from "../../words/index.ts";
import type { CrewMember, Outline, ProcedureFile, Step } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

/** The ids of all steps of a procedure, those of contingencies included. */
export function stepIdsOf({ procedure: { tasks, contingencies } }: Outline): Set<string> {
  return new Set(
    [tasks, ...contingencies.map((one) => one.tasks)]
      .flat()
      .flatMap((task) => task.steps.map(({ id }) => id as string)),
  );
}

/**
 * A new translation of a crew member to a place, as it is added to a file. Its id is none of those `taken`. It has the
 * conditions of the step that it is for.
 */
export function translationStep(
  outline: Outline,
  taken: ReadonlySet<string>,
  { member, to, when }: { readonly member: CrewMember; readonly to: PlaceId; readonly when: Step["when"] },
): FileStep {
  const base = `${member.id}-to-${to}`;
  let id = base;
  for (let count = 2; taken.has(id); count += 1) id = `${base}-${count}`;
  return {
    id,
    by: [member.id],
    // The text becomes the author's own once the change is made: it is written in the language in use.
    do: words("place/move-to", { place: outline.place(to)?.label ?? to }),
    to,
    ...(when ? { when } : {}),
  };
}
