import type { Speed } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { useWrittenAt } from "../worksite/index.ts";

interface ClockProps {
  readonly shown: ShownPet;
  /** How fast it is played; 0 while it stands. */
  readonly speed: Speed | 0;
}

/** For how long a time that is played stands, in ms: nobody reads one that changes with each picture. */
const READABLE = 100;

/** The PET that is shown, large. While it is played it is behind by a tenth of a second of the reader's time at most. */
export function Clock({ shown, speed }: ClockProps) {
  const grain = (READABLE * speed) as Duration;
  return <b ref={useWrittenAt(shown, writeClock, grain)} className="brief-clock" />;
}

function writeClock(element: HTMLElement, pet: Duration): void {
  const text = words("brief/clock", { pet });
  if (element.textContent !== text) element.textContent = text;
}
