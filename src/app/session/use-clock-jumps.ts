import { useEffect } from "react";
import type { WalkPhase } from "../../core/walk/index.ts";
import { watchClockJumps } from "../../io/clock/index.ts";
import { storedFollower } from "./follower-role.ts";
import { jumpDraft } from "./jump-draft.ts";
import type { WalkSession } from "./walk-session.ts";

/**
 * Logs each jump of this device's clock while a walk runs or is held, so that its PET goes on ([OFF6]). `phase` is `null`
 * on a device that may not enter anything, and in a rehearsal, which has a clock of its own.
 */
export function useClockJumps(session: WalkSession, phase: WalkPhase | null): void {
  const isOn = phase === "running" || phase === "held";
  useEffect(() => {
    if (!isOn) return;
    return watchClockJumps((jump) => {
      const draft = jumpDraft(jump, storedFollower() ?? "follower");
      if (draft) void session.enter([draft]);
    });
  }, [session, isOn]);
}
