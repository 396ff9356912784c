import type { Finding } from "../../core/procedure/index.ts";

/** Says why a procedure cannot be read, finding by finding. */
export function FindingsOfUnreadable({ findings }: { readonly findings: readonly Finding[] }) {
  return (
    <>
      <h1>This procedure cannot be read</h1>
      <ul className="plain-list">
        {findings.map(({ pointer, message, position, code }) => (
          <li key={`${code} ${pointer} ${message}`}>
            {message}
            <span className="hint">
              {position && ` Line ${position.line}, column ${position.column}.`} {pointer}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
