import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { useWrittenAt } from "../worksite/index.ts";

/** The PET that is shown, large. */
export function Clock({ shown }: { readonly shown: ShownPet }) {
  return <b ref={useWrittenAt(shown, writeClock)} className="brief-clock" />;
}

function writeClock(element: HTMLElement, pet: Duration): void {
  const text = words("brief/clock", { pet });
  if (element.textContent !== text) element.textContent = text;
}
