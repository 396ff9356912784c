import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Light } from "../light/index.ts";
import type { Procedure } from "../procedure/index.ts";
import type { WindowId } from "../units/index.ts";

/** Matches what people call a window in which the ground can be heard. */
const CONTACT = /\b(?:aos|comms?|communications?|contact|coverage)\b/i;

/**
 * The windows of contact of a procedure ([CHK5]): the listed ones that a step with the ground must lie in, and those
 * that are called so.
 */
export function contactWindowsOf({ crew, tasks, windows }: Procedure): readonly WindowId[] {
  const ground = new Set(crew.filter(({ station }) => station === "ground").map(({ id }) => id));
  const named = new Set(
    tasks.flatMap(({ steps }) =>
      steps.flatMap(({ by, within }) => (by.some((id) => ground.has(id)) ? within : [])),
    ),
  );
  return windows
    .filter(
      ({ id, kind, label = "" }) => kind === "listed" && (named.has(id) || CONTACT.test(`${id} ${label}`)),
    )
    .map(({ id }) => id);
}

/**
 * Says where contact comes from when a light has ground sites: the windows that it is worked out for, the sites and
 * their masks. `null` for a light without sites.
 */
export function contactMessage(procedure: Procedure, light: Light): Message | null {
  const sites = light.source.kind === "orbit" ? (light.source.sites ?? []) : [];
  if (sites.length === 0 || light.contact === null) return null;
  const windows = contactWindowsOf(procedure).map(
    (id) => procedure.windows.find((one) => one.id === id)?.label ?? id,
  );
  return windows.length === 0
    ? message("light/contact-nowhere")
    : message("light/contact", {
        windows,
        sites: sites.map(({ latitude, longitude, height, mask }) =>
          message("light/contact-site", { latitude, longitude, height, mask }),
        ),
      });
}
