import { Listeners } from "../../core/units/index.ts";

const STORED_AS = "tetherline.light.off";
const listeners = new Listeners();

let inMemory = "[]";

function stored(): string {
  try {
    return localStorage.getItem(STORED_AS) ?? "[]";
  } catch {
    return inMemory;
  }
}

function keysOff(): readonly string[] {
  try {
    const keys: unknown = JSON.parse(stored());
    return Array.isArray(keys) ? keys.filter((key) => typeof key === "string") : [];
  } catch {
    return [];
  }
}

/** True when the reader has taken off the orbit that comes with a procedure, by its key on the shelf. */
export const isLightOff = (procedure: string): boolean => keysOff().includes(procedure);

/** Takes the orbit that comes with a procedure off on this device, or puts it back. */
export function setLightOff(procedure: string, isOff: boolean): void {
  const others = keysOff().filter((key) => key !== procedure);
  inMemory = JSON.stringify(isOff ? [...others, procedure] : others);
  try {
    localStorage.setItem(STORED_AS, inMemory);
  } catch {
    // Without a store it lasts for this visit.
  }
  listeners.tell();
}

/** Calls back after each change; returns a function that ends the subscription. */
export const watchLightOff = listeners.add;
