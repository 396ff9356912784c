import type { Finding } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";

/** A finding with its level, its message and its line in the file; one that follows from another is set in under it. */
export function FindingItem({ finding }: { readonly finding: Finding }) {
  return (
    <li className="finding" data-level={finding.level} data-follows={finding.follows !== null}>
      <b>{words(`read/level-${finding.level}`)}</b> {inWords(finding.message)}
      {finding.follows && <span className="hint"> {words("read/follows")}</span>}
      {finding.position && <span className="hint"> {words("read/line", finding.position)}</span>}
    </li>
  );
}
