import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Outline } from "../procedure/index.ts";
import type { Instant } from "../units/index.ts";
import { later } from "../units/index.ts";
import { callsOf, windowLabel } from "./called.ts";
import type { HoldUp } from "./hold-ups.ts";

/**
 * What somebody waits for at a moment, as a sentence without its subject: `waits for EV2`, `waits for Darkness at 2:14
 * (11:29 UTC)`; several stand beside one another, the crew members as one. Times are also given in UTC where PET 0 is known.
 * `null` when nothing holds anybody up.
 */
export function heldByMessage(
  outline: Outline,
  holdUps: readonly HoldUp[],
  petZero: Instant | null = null,
): Message | null {
  const crew = [...new Set(holdUps.flatMap((one) => (one.kind === "crew" ? [one.crew] : [])))];
  const others = holdUps.flatMap((one) => (one.kind === "crew" ? [] : [otherMessage(outline, one, petZero)]));
  const each = [
    ...(crew.length > 0 ? [message("course/held-by-crew", { crew: callsOf(outline, crew) })] : []),
    ...others,
  ];
  return each.length > 1 ? message("course/held-by-each", { each }) : (each[0] ?? null);
}

function otherMessage(
  outline: Outline,
  holdUp: Exclude<HoldUp, { readonly kind: "crew" }>,
  petZero: Instant | null,
): Message {
  if (holdUp.kind === "hold") return message("course/held-by-hold");
  const pet = holdUp.until;
  const at = petZero === null ? null : later(petZero, pet);
  if (holdUp.kind === "window") {
    const window = windowLabel(outline, holdUp.window);
    return at === null
      ? message("course/held-by-window", { window, pet })
      : message("course/held-by-window-utc", { window, pet, at });
  }
  if (holdUp.kind === "notBefore")
    return at === null
      ? message("course/held-by-not-before", { pet })
      : message("course/held-by-not-before-utc", { pet, at });
  return at === null
    ? message("course/held-by-lag", { pet })
    : message("course/held-by-lag-utc", { pet, at });
}
