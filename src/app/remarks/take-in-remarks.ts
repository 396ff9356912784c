import { readRemarks } from "../../core/remarks/index.ts";
import type { DeviceStore } from "../../io/store/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";

const MOST_LINES = 6;

/** Takes the remarks of a file in, of whatever procedures, and returns sentences on the result. */
export async function takeInRemarks(
  { remarks: kept }: Pick<DeviceStore, "remarks">,
  text: string,
): Promise<readonly string[]> {
  const { remarks, problems } = readRemarks(text);
  const added = await kept.addRemarks(remarks);
  return [
    added.kind === "kept"
      ? words("remarks/taken-in", { added: added.added, known: added.known })
      : words("remarks/not-kept", { why: troubleMessage(added.reason) }),
    ...problems.slice(0, MOST_LINES).map(({ line, problem: why }) => words("remarks/line", { line, why })),
  ];
}
