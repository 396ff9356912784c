import type { Entry } from "../../core/log/index.ts";
import { words } from "../../words/index.ts";
import type { AskSeal, ReadLog } from "./ask-seal-worker.ts";
import { askSealWorker } from "./ask-seal-worker.ts";
import { HeardField } from "./heard-field.tsx";
import "./seal.css";
import { useVerification } from "./use-verification.ts";
import { VoiceCode } from "./voice-code.tsx";

export interface WalkCodeProps {
  readonly entries: readonly Entry[];
  readonly readLog: ReadLog;
  readonly ask?: AskSeal;
}

/** Nobody is asked to be trusted for a code. */
const NOBODY: readonly string[] = [];

/** The voice code of a walk that goes on, worked out when it is asked for, and where the other site's is typed in. */
export function WalkCode({ entries, readLog, ask = askSealWorker }: WalkCodeProps) {
  const { state, verify } = useVerification(entries, readLog, NOBODY, ask);
  const newer = state.kind === "found" ? entries.length - state.entries.length : 0;
  return (
    <section aria-labelledby="walk-code">
      <h3 id="walk-code">{words("seal/code-title")}</h3>
      {state.kind === "found" && (
        <>
          {newer > 0 && <p className="seal-newer">{words("seal/newer", { count: newer })}</p>}
          <VoiceCode coded={state.found} />
          <HeardField coded={state.found} />
          <p className="hint">{words("seal/code-verdict")}</p>
        </>
      )}
      <p role="status">
        {state.kind === "working" && words("seal/code-working")}
        {state.kind === "failed" && words("seal/failed")}
      </p>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={state.kind === "working"}
          onClick={() => verify({ isQuick: true })}
        >
          {words(state.kind === "found" ? "seal/code-again" : "seal/code-make")}
        </button>
      </div>
    </section>
  );
}
