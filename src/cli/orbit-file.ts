import type { ElementSet } from "../core/light/index.ts";
import { readOrbit } from "../core/light/index.ts";
import { readText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** The element set in a file; rejects with one sentence that names the field and the reason when it is refused. */
export async function orbitFile(file: string): Promise<ElementSet> {
  const { elements, problems } = readOrbit(await readText(file));
  if (elements) return elements;
  const [first] = problems;
  const why = plainText(
    first ? words("orbit/problem", { field: first.field, why: first.reason }) : words("cli/orbit-not-read"),
  );
  throw new UnusableInputError(
    problems.length > 1
      ? words("cli/orbit-refused-more", { file, why, count: problems.length - 1 })
      : words("cli/orbit-refused", { file, why }),
  );
}
