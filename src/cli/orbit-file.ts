import type { ElementSet, Light, Site } from "../core/light/index.ts";
import { lightFor, readOrbit } from "../core/light/index.ts";
import type { Procedure } from "../core/procedure/index.ts";
import type { Instant } from "../core/units/index.ts";
import { contactMessage, HORIZON } from "../core/window/index.ts";
import { readText } from "../io/files/index.ts";
import { inWords, words } from "../words/index.ts";
import { plainText } from "./plain-text.ts";
import type { Terminal } from "./terminal.ts";
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
 * Day and night from PET 0 on, computed from the orbit in a file, and contact with ground sites; `null` when no file is
 * named. Rejects when the instant of PET 0 is not given, or sites without an orbit are.
 */
export async function lightFromFile(
  file: string | undefined,
  start: Instant | undefined,
  sites: readonly Site[] = [],
): Promise<Light | null> {
  if (file === undefined && sites.length > 0) throw new UnusableInputError(words("cli/site-needs-orbit"));
  if (file === undefined) return null;
  if (start === undefined) throw new UnusableInputError(words("cli/orbit-needs-start"));
  return lightFor({ kind: "orbit", elements: await orbitFile(file), sites }, start, HORIZON);
}

/** Says beside the result where contact comes from, when ground sites are given. */
export function tellContact(
  file: string,
  procedure: Procedure,
  light: Light | null,
  terminal: Terminal,
): void {
  const said = light && contactMessage(procedure, light);
  if (said) terminal.err(`${words("cli/of-light", { file, what: inWords(said) })}\n`);
}
