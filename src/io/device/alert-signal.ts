import { pageAtRest } from "./page-at-rest.ts";

/** How urgent a signal is. */
export type SignalLevel = "act-now" | "look-soon" | "know";

/** The tones of a signal: the frequency of each, in Hz, and how long it and the pause after it last, in s. */
interface Tones {
  readonly frequencies: readonly number[];
  readonly tone: number;
  readonly pause: number;
  /** The vibration, in ms: on, off, on … */
  readonly vibration: readonly number[];
}

/** More tones and higher ones mean more urgent, so that levels are told apart without looking. */
const SIGNALS: Readonly<Record<SignalLevel, Tones>> = {
  "act-now": {
    frequencies: [880, 1175, 880, 1175],
    tone: 0.16,
    pause: 0.06,
    vibration: [300, 100, 300, 100, 300],
  },
  "look-soon": { frequencies: [660, 660], tone: 0.18, pause: 0.1, vibration: [200, 100, 200] },
  know: { frequencies: [523], tone: 0.12, pause: 0, vibration: [80] },
};

let context: AudioContext | null = null;

/** A signal that could not be sounded for so long, in ms, is left: it would tell of something as if it had just happened. */
const STALE = 1000;

/**
 * Sounds and vibrates for an alert of a level. A browser may stay silent until its page was touched once, and a device without
 * sound or vibration leaves it out; what is on the screen does not depend on it. To begin with sound may take a browser a third of a
 * second, in which no tap is taken: it begins once the page is at rest, half a second later at most.
 */
export async function signalAlert(level: SignalLevel): Promise<void> {
  const { frequencies, tone, pause, vibration } = SIGNALS[level];
  try {
    navigator.vibrate?.([...vibration]);
    if (context === null) await pageAtRest();
    context ??= new AudioContext();
    const asked = performance.now();
    await context.resume();
    if (performance.now() - asked > STALE) return;
    const volume = context.createGain();
    volume.gain.value = 0.2;
    volume.connect(context.destination);
    for (const [index, frequency] of frequencies.entries()) {
      const source = context.createOscillator();
      source.frequency.value = frequency;
      source.connect(volume);
      const start = context.currentTime + index * (tone + pause);
      source.start(start);
      source.stop(start + tone);
    }
  } catch {
    // No sound is to be had here; the alert is on the screen.
  }
}
