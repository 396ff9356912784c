import { Listeners } from "../../core/units/index.ts";
/** Whether the screen is kept awake: `absent` when the browser cannot, `denied` when it would not (low battery, no secure context). */
export type WakeStatus = "awake" | "resting" | "denied" | "absent";

/** Keeps the screen awake for as long as it is wanted. */
export interface WakeKeeper {
  readonly status: () => WakeStatus;
  /** Calls back after each change of the status; returns a function that ends it. */
  readonly watch: (onChange: () => void) => () => void;
  /** Lets the screen sleep again; for good. */
  readonly release: () => void;
}

/** As much of the page and the Screen Wake Lock API (W3C) as is used. */
export interface WakeParts {
  readonly wakeLock: Pick<WakeLock, "request"> | undefined;
  readonly page: Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;
}

/**
 * Keeps the screen awake from now on. The browser takes the lock away whenever the page is hidden; it is asked for anew
 * when the page is shown again.
 */
export function keepAwake(parts: WakeParts = { wakeLock: navigator.wakeLock, page: document }): WakeKeeper {
  const { wakeLock, page } = parts;
  const watchers = new Listeners();
  let status: WakeStatus = wakeLock ? "resting" : "absent";
  let sentinel: WakeLockSentinel | null = null;
  let isWanted = true;
  let isAsking = false;

  const become = (next: WakeStatus) => {
    if (next === status) return;
    status = next;
    watchers.tell();
  };

  const acquire = async () => {
    if (!wakeLock || !isWanted || isAsking || sentinel || page.visibilityState !== "visible") return;
    isAsking = true;
    try {
      const lock = await wakeLock.request("screen");
      if (!isWanted) return void lock.release();
      sentinel = lock;
      lock.addEventListener("release", () => {
        if (sentinel === lock) sentinel = null;
        become("resting");
      });
      become("awake");
    } catch {
      become("denied");
    } finally {
      isAsking = false;
    }
  };
  const onVisibility = () => void acquire();

  page.addEventListener("visibilitychange", onVisibility);
  void acquire();

  return {
    status: () => status,
    watch: watchers.add,
    release: () => {
      isWanted = false;
      page.removeEventListener("visibilitychange", onVisibility);
      void sentinel?.release();
    },
  };
}
