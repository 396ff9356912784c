import type { ElementSet, Light } from "../core/light/index.ts";
import { lightFor, readOrbit } from "../core/light/index.ts";
import type { Instant } from "../core/units/index.ts";
import { HORIZON } from "../core/window/index.ts";
import { readText } from "../io/files/index.ts";
import { words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/**
 * Reads the element set in a file. When it is refused, rejects with one sentence that names the field and the reason.
 */
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

/**
 * Day and night from PET 0 on, computed from the orbit in a file; `null` when no file is named. Rejects when the
 * instant of PET 0 is not given.
 */
export async function lightFromFile(
  file: string | undefined,
  start: Instant | undefined,
): Promise<Light | null> {
  if (file === undefined) return null;
  if (start === undefined) throw new UnusableInputError(words("cli/orbit-needs-start"));
  return lightFor({ kind: "orbit", elements: await orbitFile(file) }, start, HORIZON);
}
