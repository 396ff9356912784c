import { useEffect } from "react";
import type { Entry } from "../../core/log/index.ts";
import type { RecordKnown } from "../../core/review/index.ts";
import type { Verification } from "../../core/seal/index.ts";
import { words } from "../../words/index.ts";
import type { AskSeal, ReadLog } from "./ask-seal-worker.ts";
import { askSealWorker } from "./ask-seal-worker.ts";
import { ExtractForm, type ExtractTask } from "./extract-form.tsx";
import { HeardField } from "./heard-field.tsx";
import "./seal.css";
import { SourceList } from "./source-list.tsx";
import { sourceName } from "./source-name.ts";
import { TrustForm } from "./trust-form.tsx";
import { useTrustedHubs } from "./trusted-hubs.ts";
import type { Verifier, VerifyingState } from "./use-verification.ts";
import { useVerification } from "./use-verification.ts";
import { VoiceCode } from "./voice-code.tsx";

export interface SealSectionProps {
  readonly entries: readonly Entry[];
  readonly readLog: ReadLog;
  readonly tasks: readonly ExtractTask[];
  /** Told what is known of the log as a record, each time that it is another thing. */
  readonly onKnown: (known: RecordKnown) => void;
  readonly onSaveExtract: (text: string) => void;
  readonly ask?: AskSeal;
}

/**
 * Whether the log of a walk is as it was entered: the verdict in a sentence, by device, what it does not prove, and the voice code ([SEL7], [SEL9], [SEL6]). It
 * takes a quick look by itself, and looks at every seal when it is asked to.
 */
export function SealSection({
  entries,
  readLog,
  tasks,
  onKnown,
  onSaveExtract,
  ask = askSealWorker,
}: SealSectionProps) {
  const hubs = useTrustedHubs();
  const verifier = useVerification(entries, readLog, hubs.keys, ask);
  const { state, verify } = verifier;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a log that grows is looked at again when the reader asks.
  useEffect(() => verify({ isQuick: true }), [hubs.keys]);
  const { length } = entries;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list of a walk's entries grows in place.
  useEffect(() => onKnown(knownBy(state, entries)), [state, entries, length, onKnown]);
  const found = state.kind === "found" ? state.found : null;
  return (
    <section className="review-part seal" aria-labelledby="review-seal">
      <h2 id="review-seal" tabIndex={-1}>
        {words("seal/title")}
      </h2>
      <Looking verifier={verifier} entries={entries} />
      {found && (
        <>
          <h3>{words("seal/devices")}</h3>
          <SourceList {...found} />
          <CheckpointList found={found} />
          <p className="seal-proves-not">{words("seal/proves-not")}</p>
          <h3>{words("seal/code-title")}</h3>
          <VoiceCode coded={found} />
          <HeardField coded={found} />
        </>
      )}
      <TrustForm hubs={hubs} sources={found?.sources ?? []} />
      <ExtractForm entries={entries} readLog={readLog} tasks={tasks} onSave={onSaveExtract} ask={ask} />
    </section>
  );
}

/** The verdict, or how far looking for it is, and what can be done about it. */
function Looking({ verifier, entries }: { readonly verifier: Verifier; readonly entries: readonly Entry[] }) {
  const { state, verify, cancel } = verifier;
  if (state.kind === "working") {
    const { isQuick, done, of } = state;
    return (
      <div className="seal-looking">
        <p role="status">{words(isQuick ? "seal/working-quick" : "seal/working-full", { done, of })}</p>
        <progress value={done} max={of} aria-label={words("seal/title")} />
        <button type="button" className="plain-button" onClick={cancel}>
          {words("seal/cancel")}
        </button>
      </div>
    );
  }
  return (
    <>
      {state.kind === "found" ? (
        <Verdict state={state} entries={entries} />
      ) : (
        <p role="status">{state.kind !== "idle" && words(`seal/${state.kind}`)}</p>
      )}
      <div className="seal-acts">
        <button type="button" className="plain-button" onClick={() => verify({ isQuick: true })}>
          {words("seal/look-quick")}
        </button>
        <button type="button" className="plain-button" onClick={() => verify({ isQuick: false })}>
          {words("seal/look-full")}
        </button>
      </div>
    </>
  );
}

type Found = Extract<VerifyingState, { kind: "found" }>;

function Verdict({ state, entries }: { readonly state: Found; readonly entries: readonly Entry[] }) {
  const { verdict, isQuick } = state.found;
  const newer = entries.length - state.entries.length;
  return (
    <div role="status">
      <p className="seal-log" data-verdict={verdict}>
        {words(`seal/log-${verdict}`)}
      </p>
      {state.found.mayBeKeptBack && <p>{words("seal/may-be-kept-back")}</p>}
      <p className="hint">{words(isQuick ? "seal/quick" : "seal/looked-full")}</p>
      {!isOf(state, entries) && (
        <p className="seal-newer">
          {newer > 0 ? words("seal/newer", { count: newer }) : words("seal/changed-since")}
        </p>
      )}
    </div>
  );
}

/** Whether what was found is of these entries. */
const isOf = (state: Found, entries: readonly Entry[]): boolean =>
  state.entries.length === entries.length && state.entries.every((one, index) => one === entries[index]);

const FAILED: RecordKnown = { found: null, why: "failed" };
const NOT_ASKED: RecordKnown = { found: null, why: "not-asked" };
const NOT_FINISHED: RecordKnown = { found: null, why: "not-finished" };

/** The same object until it is another thing, so that whoever shows it draws nothing anew as the looking gets on. */
function knownBy(state: VerifyingState, entries: readonly Entry[]): RecordKnown {
  if (state.kind === "found" && isOf(state, entries)) return state;
  if (state.kind === "failed") return FAILED;
  return state.kind === "idle" ? NOT_ASKED : NOT_FINISHED;
}

function CheckpointList({ found: { checkpoints, sources } }: { readonly found: Verification }) {
  if (checkpoints.length === 0) return null;
  const nameOf = (source: string) => {
    const one = sources.find((other) => other.source === source);
    return one ? sourceName(one) : source;
  };
  return (
    <details className="seal-checkpoints">
      <summary>{words("seal/checkpoints", { count: checkpoints.length })}</summary>
      <ul className="plain-list">
        {checkpoints.map(({ code, by, entries, state, trusted }, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: checkpoints have no identity but their place.
          <li key={index}>
            {words("seal/checkpoint", {
              code,
              entries,
              by: nameOf(by),
              trust: words(trusted ? "seal/trusted" : "seal/not-trusted"),
              state: words(`seal/checkpoint-${state}`),
            })}
          </li>
        ))}
      </ul>
    </details>
  );
}
