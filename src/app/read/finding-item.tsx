import type { Finding } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";

/** A finding with its level, its message and its line in the file. */
export function FindingItem({ finding }: { readonly finding: Finding }) {
  return (
    <li className="finding" data-level={finding.level}>
      <b>{words(`read/level-${finding.level}`)}</b> {inWords(finding.message)}
      {finding.position && <span className="hint"> {words("read/line", finding.position)}</span>}
    </li>
  );
}
