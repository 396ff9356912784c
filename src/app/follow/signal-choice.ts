import type { AlertLevel } from "../../core/walk/index.ts";

const STORED_AS = "tetherline.signals";

/** The levels whose alerts sound and vibrate on this device. */
export type SignalChoice = Readonly<Record<AlertLevel, boolean>>;

const ALL: SignalChoice = { "act-now": true, "look-soon": true, know: false };

let chosen: SignalChoice | null = null;

/** Which levels sound here: as chosen before, or else those that ask for something. */
export function signalChoice(): SignalChoice {
  if (chosen) return chosen;
  try {
    const stored = JSON.parse(localStorage.getItem(STORED_AS) ?? "{}") as Partial<
      Record<AlertLevel, unknown>
    >;
    const of = (level: AlertLevel) => (typeof stored[level] === "boolean" ? stored[level] : ALL[level]);
    chosen = { "act-now": of("act-now"), "look-soon": of("look-soon"), know: of("know") };
  } catch {
    chosen = ALL;
  }
  return chosen;
}

/** Chooses whether alerts of a level sound here, and stores the choice; without a store it lasts for this visit. */
export function chooseSignal(level: AlertLevel, sounds: boolean): SignalChoice {
  chosen = { ...signalChoice(), [level]: sounds };
  try {
    localStorage.setItem(STORED_AS, JSON.stringify(chosen));
  } catch {
    // Without a store the choice lasts for this visit.
  }
  return chosen;
}
