import { useState } from "react";
import type { Remark } from "../../core/remarks/index.ts";
import { writeRemarks } from "../../core/remarks/index.ts";
import { pickFiles, saveFile } from "../../io/browser-files/index.ts";
import { inWords, words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";
import { takeInRemarks } from "./take-in-remarks.ts";

const TYPES = ".jsonl,application/jsonl,text/plain";

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
      lines.push(...(await takeInRemarks(store, text)));
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
