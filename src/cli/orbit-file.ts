import type { ElementSet } from "../core/light/index.ts";
import { readOrbit } from "../core/light/index.ts";
import { readText } from "../io/files/index.ts";
import { plainText } from "./plain-text.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The element set in a file; rejects with one sentence that names the field and the reason when it is refused. */
export async function orbitFile(file: string): Promise<ElementSet> {
  const { elements, problems } = readOrbit(await readText(file));
  if (elements) return elements;
  const [first] = problems;
  const more = problems.length > 1 ? ` (and ${problems.length - 1} more)` : "";
  throw new UnusableInputError(
    `${file} is refused as an orbit: ${plainText(first ? `${first.field}: ${first.reason}` : "it cannot be read")}${more}.`,
  );
}
