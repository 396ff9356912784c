import { formatInstant } from "../units/index.ts";
import type { Light } from "./light-source.ts";
import { SHADOW_EARTH_RADIUS } from "./shadow.ts";

/** Where day and night come from and how good that is, in a sentence. */
export function lightWords({ source, age, isOld }: Light): string {
  if (source.kind === "site") {
    const { latitude, longitude } = source.site;
    return `Sunrise and sunset of the site at ${latitude}°, ${longitude}°, upper limb with standard refraction.`;
  }
  const { name, object, epoch, form } = source.elements;
  const days =
    age === null
      ? ""
      : `, ${Math.abs(age / 86_400_000).toFixed(1)} days ${age < 0 ? "after" : "before"} the start`;
  const old = isOld ? " That is more than 14 days: take the times as rough." : "";
  return `${form} of ${name ?? `object ${object}`}, epoch ${formatInstant(epoch).slice(0, 16).replace("T", " ")} UTC${days}; SGP4, conical shadow of a sphere of ${SHADOW_EARTH_RADIUS} km.${old}`;
}
