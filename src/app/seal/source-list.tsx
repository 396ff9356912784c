import type { SealFinding, Verification } from "../../core/seal/index.ts";
import { words } from "../../words/index.ts";
import { sourceWords } from "./source-name.ts";

/** Each source of a log with its name and role, its verdict, and what is wrong with it. */
export function SourceList({ sources, findings }: Pick<Verification, "sources" | "findings">) {
  return (
    <ul className="plain-list seal-sources">
      {sources.map((one) => (
        <li key={one.source}>
          <p className="seal-source">
            <b>{sourceWords(one)}</b>
            <span className="seal-verdict" data-verdict={one.verdict}>
              {words(`seal/verdict-${one.verdict}`)}
            </span>
          </p>
          <p className="hint">
            {[
              words("seal/device-entries", { entries: one.entries }),
              words("seal/device-sealed", { sealed: one.sealed }),
              ...(one.behind > 0 ? [words("seal/device-behind", { behind: one.behind })] : []),
            ].join(" · ")}
          </p>
          {findings
            .filter(({ source }) => source === one.source)
            .map((finding) => (
              <p key={`${finding.kind} ${finding.number}`}>{findingWords(finding)}</p>
            ))}
        </li>
      ))}
    </ul>
  );
}

function findingWords({ kind, number }: SealFinding): string {
  const what = words(`seal/found-${kind}`);
  return number === null ? words("seal/found-source", { what }) : words("seal/found-at", { number, what });
}
