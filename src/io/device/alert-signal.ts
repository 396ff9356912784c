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

/**
 * Sounds and vibrates for an alert of a level. A browser stays silent until its page was touched once, and a device
 * without sound or vibration leaves it out; what is on the screen does not depend on it.
 */
export function signalAlert(level: SignalLevel): void {
  const { frequencies, tone, pause, vibration } = SIGNALS[level];
  try {
    navigator.vibrate?.([...vibration]);
    context ??= new AudioContext();
    void context.resume();
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
