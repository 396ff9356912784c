import type { Site } from "../../core/light/index.ts";
import type { RecordedLight } from "../../core/plan/index.ts";
import { StoredChoice } from "./stored-choice.ts";

/** The source of day and night chosen on this device; `null` when none is chosen. */
export const lightChoice = new StoredChoice<RecordedLight | null>("tetherline.light", null);

const NO_SITES: readonly Site[] = [];

/** The ground sites chosen on this device, for contact by whatever orbit is in use. */
export const contactSites = new StoredChoice<readonly Site[]>("tetherline.sites", NO_SITES);

const NOTHING_OFF: readonly string[] = [];

/** The procedures, by their id, whose own orbit the reader has taken off. */
const lightsOff = new StoredChoice<readonly string[]>("tetherline.light.off", NOTHING_OFF);

/** True when the reader has taken off the orbit that comes with a procedure, by the procedure's id. */
export const isLightOff = (procedure: string): boolean => lightsOff.current().includes(procedure);

/** Takes the orbit that comes with a procedure off on this device, or puts it back. */
export function setLightOff(procedure: string, isOff: boolean): void {
  const others = lightsOff.current().filter((id) => id !== procedure);
  lightsOff.choose(isOff ? [...others, procedure] : others.length > 0 ? others : NOTHING_OFF);
}

/** Calls back when the orbit of some procedure is taken off or put back; returns a function that ends that. */
export const watchLightOff = lightsOff.watch;

/** Stores the source for later plans and walks of this device, or removes it. */
export const chooseLight = (choice: RecordedLight | null): void => lightChoice.choose(choice);

/** Stores the ground sites for later plans and walks of this device. */
export const chooseSites = (sites: readonly Site[]): void =>
  contactSites.choose(sites.length > 0 ? sites : NO_SITES);

/** A source with the ground sites of this device; they count with an orbit only. */
export function withSites(light: RecordedLight | null, sites: readonly Site[]): RecordedLight | null {
  return light === null || "site" in light || sites.length === 0 ? light : { ...light, sites };
}
