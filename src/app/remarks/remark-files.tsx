import { useState } from "react";
import type { Remark } from "../../core/remarks/index.ts";
import { readRemarks, writeRemarks } from "../../core/remarks/index.ts";
import { pickFiles, saveFile } from "../../io/browser-files/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";

const TYPES = ".jsonl,application/jsonl,text/plain";
const MOST_LINES = 6;

interface RemarkFilesProps {
  readonly procedure: string;
  readonly all: readonly Remark[];
}

/** Saves the remarks about a procedure as a file, and takes in those of others. */
export function RemarkFiles({ procedure, all }: RemarkFilesProps) {
  const { store } = useServices();
  const [told, setTold] = useState<readonly string[]>([]);
  const takeIn = async () => {
    const lines: string[] = [];
    for (const { text, problem } of await pickFiles(TYPES)) {
      if (text === null) {
        lines.push(inWords(problem));
        continue;
      }
      const { remarks, problems } = readRemarks(text);
      const added = await store.remarks.addRemarks(remarks);
      lines.push(
        added.kind === "kept"
          ? words("remarks/taken-in", { added: added.added, known: added.known })
          : words("remarks/not-kept", { why: troubleMessage(added.reason) }),
      );
      const elsewhere = remarks.filter((one) => one.procedure !== procedure).length;
      if (elsewhere > 0) lines.push(words("remarks/other-procedure", { count: elsewhere }));
      for (const { line, problem: why } of problems.slice(0, MOST_LINES))
        lines.push(words("remarks/line", { line, why }));
    }
    setTold(lines);
  };
  return (
    <>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={all.length === 0}
          onClick={() => void saveFile(`${procedure}.remarks.jsonl`, writeRemarks(all), "application/jsonl")}
        >
          {words("remarks/export")}
        </button>
        <button type="button" className="plain-button" onClick={() => void takeIn()}>
          {words("remarks/import")}
        </button>
      </div>
      <div role="status">
        {told.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </>
  );
}
