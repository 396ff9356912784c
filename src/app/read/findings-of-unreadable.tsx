import type { Finding } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";

/** The findings that explain why a procedure cannot be read. */
export function FindingsOfUnreadable({ findings }: { readonly findings: readonly Finding[] }) {
  return (
    <>
      <h1>{words("read/unreadable")}</h1>
      <ul className="plain-list">
        {findings.map(({ pointer, message, position, code }) => (
          <li key={`${code} ${pointer} ${inWords(message)}`}>
            {inWords(message)}
            <span className="hint">
              {position && ` ${words("read/line-column", position)}`} {pointer}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
