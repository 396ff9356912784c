import { useState } from "react";
import { readListedSpans } from "../../core/light/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import { inWords, words } from "../../words/index.ts";

interface ContactTimesProps {
  readonly file: ProcedureFile;
  /** Saves the changed procedure as another revision. */
  readonly onFile: (file: ProcedureFile) => void;
}

/** A procedure file in which the spans of one listed window are replaced. */
function withSpans(file: ProcedureFile, id: string, text: string) {
  const { spans, problems } = readListedSpans(text);
  const written = spans.map(({ start, end }) => ({ from: formatInstant(start), to: formatInstant(end) }));
  const windows = (file.windows ?? []).map((window) =>
    window.id === id ? { ...window, spans: written } : window,
  );
  return { file: { ...file, windows }, count: spans.length, problems };
}

/** Reads the spans of listed windows, such as contact, from a CSV list with the heading `start,end` ([LGT3]). */
export function ContactTimes({ file, onFile }: ContactTimesProps) {
  const [said, setSaid] = useState<readonly string[]>([]);
  const listed = (file.windows ?? []).filter(({ kind }) => kind === "listed");
  if (listed.length === 0) return null;
  const take = async (id: string) => {
    const [given] = await pickFiles(".csv,text/csv,text/plain");
    if (!given) return;
    if (given.text === null)
      return setSaid([words("light/file-problem", { file: given.name, why: given.problem ?? "" })]);
    const read = withSpans(file, id, given.text);
    setSaid([
      words("light/spans-taken", { count: read.count, file: given.name }),
      ...read.problems.map(({ row, reason }) => words("light/row-left-out", { row, why: inWords(reason) })),
    ]);
    if (read.count > 0) onFile(read.file);
  };
  return (
    <section aria-label={words("light/listed-windows")}>
      <div className="panel-acts">
        {listed.map(({ id, label }) => (
          <button key={id} type="button" className="plain-button" onClick={() => void take(id)}>
            {words("light/take-times", { window: label ?? id })}
          </button>
        ))}
      </div>
      <div role="status">
        {said.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </section>
  );
}
