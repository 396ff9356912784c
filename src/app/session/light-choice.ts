import type { RecordedLight } from "../../core/plan/index.ts";
import { Listeners } from "../../core/units/index.ts";

const STORED_AS = "tetherline.light";
const listeners = new Listeners();

let known: { readonly text: string | null; readonly choice: RecordedLight | null } = {
  text: null,
  choice: null,
};

function stored(): string | null {
  try {
    return localStorage.getItem(STORED_AS);
  } catch {
    return known.text;
  }
}

/**
 * The source of day and night chosen on this device; `null` when none is chosen. It is the same object until the choice
 * changes.
 */
export function currentLightChoice(): RecordedLight | null {
  const text = stored();
  if (text !== known.text) known = { text, choice: choiceOf(text) };
  return known.choice;
}

function choiceOf(text: string | null): RecordedLight | null {
  if (text === null) return null;
  try {
    // Only values that were read and found valid are stored, and every user of the value reads it again.
    return JSON.parse(text) as RecordedLight;
  } catch {
    return null;
  }
}

/** Stores the source for later plans and walks of this device, or removes it. */
export function chooseLight(choice: RecordedLight | null): void {
  const text = choice && JSON.stringify(choice);
  known = { text, choice };
  try {
    if (text === null) localStorage.removeItem(STORED_AS);
    else localStorage.setItem(STORED_AS, text);
  } catch {
    // Without a store the choice lasts for this visit.
  }
  listeners.tell();
}

/** Calls back after each change; returns a function that ends the subscription. */
export const watchLightChoice = listeners.add;
