import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Light } from "./light-source.ts";
import { SHADOW_EARTH_RADIUS } from "./shadow.ts";

const DAY = 86_400_000;

/** Says in one sentence where day and night come from and how accurate that is. */
export function lightMessage(light: Light): Message {
  const { source, isOld } = light;
  if (source.kind === "site") {
    const { latitude, longitude } = source.site;
    return message("light/of-site", { latitude, longitude });
  }
  const said = orbitMessage(source.elements, light.age);
  return isOld ? message("light/old", { light: said }) : said;
}

type Elements = Extract<Light["source"], { kind: "orbit" }>["elements"];

/**
 * Describes the orbit behind the light. `age` is the time from its epoch to the start, below zero when the epoch is
 * later.
 */
function orbitMessage({ name, object, epoch, form }: Elements, age: Light["age"]): Message {
  const orbit = {
    form,
    object: name ?? message("light/object", { number: String(object) }),
    epoch,
    radius: SHADOW_EARTH_RADIUS,
  };
  if (age === null) return message("light/of-orbit", orbit);
  const days = Math.abs(age / DAY);
  return message(age < 0 ? "light/of-orbit-after" : "light/of-orbit-before", { ...orbit, days });
}
