import { message } from "../../words/index.ts";
import type { Finding } from "./finding.ts";
import { finding } from "./finding.ts";
import type { RawPart } from "./raw-file.ts";
import { entries, member, members } from "./raw-file.ts";

/** The limits on the size of a procedure that is read ([PRO12]). */
export const SIZE_LIMITS = {
  steps: 5000,
  crew: 200,
  items: 2000,
  decisions: 20,
  languages: 40,
  bytes: 10 * 1024 * 1024,
} as const;

/**
 * Returns an error for each limit of {@link SIZE_LIMITS} that the file exceeds. Bytes are counted where the text is
 * read.
 */
export function sizeFindings(file: unknown): Finding[] {
  const root: RawPart = { value: file, path: [] };
  const listOf = (holder: RawPart, key: string) => entries(member(holder, key));
  const steps = [root, ...listOf(root, "contingencies")]
    .flatMap((holder) => listOf(holder, "tasks"))
    .flatMap((task) => listOf(task, "steps"));
  const counts = {
    steps: steps.length,
    crew: listOf(root, "crew").length,
    items: listOf(root, "items").length,
    decisions: steps.filter((step) => member(step, "decide").value !== undefined).length,
    languages: members(member(root, "words")).length,
  };
  return Object.entries(counts).flatMap(([what, count]) => {
    const list = what as keyof typeof counts;
    const most = SIZE_LIMITS[list];
    if (count <= most) return [];
    const oversize = message(`file/too-many-${list}`, { count, most });
    return [finding("error", "file/too-large", "", oversize, { things: [what] })];
  });
}
