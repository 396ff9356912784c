import type { Entry } from "../../core/log/index.ts";
import { isOfHubs, keyOf } from "../../core/log/index.ts";
import type { ExtractVerified } from "../../core/seal/index.ts";
import { factMessage } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { Fact } from "../parts/index.ts";
import { sourceName } from "./source-name.ts";

interface ExtractEntriesProps {
  readonly entries: readonly Entry[];
  readonly found: ExtractVerified;
}

/** The entries that an extract has in full, in the order of its file; what hubs entered, by which the others are proven, stands behind a heading of its own. */
export function ExtractEntries({ entries, found }: ExtractEntriesProps) {
  const byHubs = entries.filter(({ wire }) => isOfHubs(wire.type));
  return (
    <>
      <h2>{words("seal/extract-entries")}</h2>
      <EntryList entries={entries.filter((entry) => !byHubs.includes(entry))} found={found} />
      {byHubs.length > 0 && (
        <details className="seal-checkpoints">
          <summary>{words("seal/extract-hub-entries", { count: byHubs.length })}</summary>
          <EntryList entries={byHubs} found={found} />
        </details>
      )}
    </>
  );
}

function EntryList({ entries, found: { sources } }: ExtractEntriesProps) {
  const nameOf = (source: string) => {
    const one = sources.find((other) => other.source === source);
    return one ? sourceName(one) : source;
  };
  return (
    <ol className="plain-list seal-entries">
      {entries.map((entry) => (
        <li key={`${keyOf(entry)} ${entry.wire.sequence}`}>
          <p>
            <b>{inWords(factMessage(entry.read.fact?.name ?? null))}</b>
          </p>
          <p className="hint">
            {[
              words("figures/utc", { at: entry.at }),
              ...(entry.wire.actor === undefined ? [] : [entry.wire.actor]),
              words("seal/extract-number", {
                name: nameOf(entry.wire.source),
                number: Number(entry.wire.sequence),
              }),
            ].join(" · ")}
          </p>
          <EntryData data={entry.wire.data} />
        </li>
      ))}
    </ol>
  );
}

/** What an entry says, as it stands in the log. */
function EntryData({ data }: { readonly data: unknown }) {
  if (typeof data !== "object" || data === null) return null;
  const parts = Object.entries(data);
  if (parts.length === 0) return null;
  return (
    <dl className="facts">
      {parts.map(([name, value]) => (
        <Fact key={name} name={name}>
          {typeof value === "string" ? value : <code>{JSON.stringify(value)}</code>}
        </Fact>
      ))}
    </dl>
  );
}
