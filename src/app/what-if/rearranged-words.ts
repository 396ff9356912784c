import type { Outline } from "../../core/procedure/index.ts";
import type { CrewId, Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { Rearranged } from "./rearranged.ts";

/** What is tried elsewhere than in the file, a text for each. */
export function rearrangedWords({ moved, shifted, swapped }: Rearranged, outline: Outline): string[] {
  const { tasks, windows } = outline.procedure;
  const titleOf = (id: string) => tasks.find((task) => task.id === id)?.title ?? id;
  const callOf = (id: CrewId) => outline.crewMember(id)?.call ?? id;
  return [
    ...[...moved].map(([task, behind]) =>
      behind === null
        ? words("what-if/task-first", { task: titleOf(task) })
        : words("what-if/task-behind", { task: titleOf(task), behind: titleOf(behind) }),
    ),
    ...[...swapped].map(([task, [one, other]]) =>
      words("what-if/task-swapped", { task: titleOf(task), one: callOf(one), other: callOf(other) }),
    ),
    ...[...shifted].map(([id, by]) => {
      const window = windows.find((one) => one.id === id)?.label ?? id;
      return words(by > 0 ? "what-if/window-later" : "what-if/window-earlier", {
        window,
        by: Math.abs(by) as Duration,
      });
    }),
  ];
}
