import { useEffect, useState } from "react";
import { inWords, words } from "../../words/index.ts";
import type { AskSeal } from "./ask-seal-worker.ts";
import { askSealWorker } from "./ask-seal-worker.ts";
import { ExtractEntries } from "./extract-entries.tsx";
import { HeardField } from "./heard-field.tsx";
import type { ExtractRead } from "./seal-request.ts";
import "./seal.css";
import { SourceList } from "./source-list.tsx";
import { TrustForm } from "./trust-form.tsx";
import { useTrustedHubs } from "./trusted-hubs.ts";
import { VoiceCode } from "./voice-code.tsx";

export interface ExtractViewProps {
  /** What stands in the file. */
  readonly text: string;
  readonly ask?: AskSeal;
}

type Reading = ExtractRead | "working" | "failed";

/**
 * The file of an extract: what it is worth and of which walk it is, by device, what it does not prove, the entries that it has in full, and the voice code of its checkpoint
 * ([SEL7], [SEL9], [SEL6]). Nothing of it is taken in.
 */
export function ExtractView({ text, ask = askSealWorker }: ExtractViewProps) {
  const hubs = useTrustedHubs();
  const reading = useExtract(text, hubs.keys, ask);
  if (reading === "working") return <p role="status">{words("seal/working-quick")}</p>;
  if (reading === "failed") return <p role="alert">{words("seal/failed")}</p>;
  const { found, entries, problems } = reading;
  return (
    <section className="seal extract-page" aria-label={words("seal/extract-page")}>
      <div role="status">
        {found ? (
          <>
            <p className="seal-log" data-verdict={found.verdict}>
              {words(`seal/extract-${found.verdict}`)}
            </p>
            <p>
              {found.checkpoint
                ? words("seal/extract-of", {
                    walk: found.walk,
                    entries: found.entries,
                    held: found.checkpoint.entries,
                  })
                : words("seal/extract-of-unproven", { walk: found.walk, entries: found.entries })}
            </p>
          </>
        ) : (
          <p className="seal-log" data-verdict="broken">
            {words("seal/extract-nothing")}
          </p>
        )}
        {problems.map(({ line, problem }) => (
          <p key={line} className="seal-newer">
            {words("shelf/line-left-out", { line, why: inWords(problem) })}
          </p>
        ))}
      </div>
      {found && (
        <>
          <p className="seal-proves-not">{words("seal/extract-proves-not")}</p>
          <ExtractEntries entries={entries} found={found} />
          <h2>{words("seal/devices")}</h2>
          <SourceList {...found} />
          {found.leftOut.map(({ source, numbers }) => (
            <p key={source} className="hint">
              {words("seal/extract-left-out", { source, numbers: numbers.replaceAll(",", ", ") })}
            </p>
          ))}
        </>
      )}
      {found?.checkpoint && (
        <>
          <h2>{words("seal/code-title")}</h2>
          <VoiceCode
            coded={{ ...found.checkpoint, walk: found.walk, sources: found.sources }}
            of={words("seal/extract-code-of", { entries: found.checkpoint.entries })}
          />
          <HeardField
            coded={{ ...found.checkpoint, checkpoints: [] }}
            same={words("seal/extract-heard-same")}
          />
        </>
      )}
      <TrustForm hubs={hubs} sources={found?.sources ?? []} />
    </section>
  );
}

/** What is read from the file of an extract, in a worker; anew for other trusted keys. */
function useExtract(text: string, trust: readonly string[], ask: AskSeal): Reading {
  const [reading, setReading] = useState<Reading>("working");
  useEffect(() => {
    async function* readFile() {
      yield text;
    }
    return ask({ kind: "verify-extract", trust }, readFile, {
      onTold: (told) => {
        if (told.kind === "extract-verified") setReading(told.read);
      },
      onFail: () => setReading("failed"),
    });
  }, [text, trust, ask]);
  return reading;
}
