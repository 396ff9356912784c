import { useCallback, useEffect, useRef, useState } from "react";
import type { Entry } from "../../core/log/index.ts";
import type { Verification } from "../../core/seal/index.ts";
import type { AskSeal, ReadLog } from "./ask-seal-worker.ts";
import type { SealTold } from "./seal-request.ts";

/** Where a verification is: not asked for, on the way, put off by the reader, not to be had, or over. */
export type VerifyingState =
  | { readonly kind: "idle" | "cancelled" | "failed" }
  | { readonly kind: "working"; readonly isQuick: boolean; readonly done: number; readonly of: number }
  | {
      readonly kind: "found";
      readonly found: Verification;
      /** The keys that were trusted. */
      readonly trust: readonly string[];
      /** The entries that were looked at. */
      readonly entries: readonly Entry[];
    };

/** A verification that can be asked for and cancelled. */
export interface Verifier {
  readonly state: VerifyingState;
  readonly verify: (how: { readonly isQuick: boolean }) => void;
  readonly cancel: () => void;
}

/**
 * Verifies a log in a worker, as it is when it is asked for. Asking again ends what is on the way, and so does leaving the
 * screen. `entries` are those that the screen knows of.
 */
export function useVerification(
  entries: readonly Entry[],
  readLog: ReadLog,
  trust: readonly string[],
  ask: AskSeal,
): Verifier {
  const [state, setState] = useState<VerifyingState>({ kind: "idle" });
  const end = useRef<(() => void) | null>(null);
  const stop = useCallback(() => {
    end.current?.();
    end.current = null;
  }, []);
  useEffect(() => stop, [stop]);
  const verify = useCallback(
    ({ isQuick }: { readonly isQuick: boolean }) => {
      stop();
      // The list of a walk's entries grows in place, and what was found is of those that are there now.
      const asked = [...entries];
      setState({ kind: "working", isQuick, done: 0, of: asked.length });
      const fail = () => setState({ kind: "failed" });
      const onTold = (told: SealTold) => {
        if (told.kind === "progress") setState({ ...told, kind: "working", isQuick });
        if (told.kind !== "verified") return;
        if (told.found) setState({ kind: "found", found: told.found, trust, entries: asked });
        else fail();
      };
      end.current = ask({ kind: "verify", trust, isQuick }, readLog, { onTold, onFail: fail });
    },
    [entries, readLog, trust, ask, stop],
  );
  const cancel = useCallback(() => {
    stop();
    setState({ kind: "cancelled" });
  }, [stop]);
  return { state, verify, cancel };
}
