import type { FindingsEffect } from "../../core/effect/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";
import "./effect.css";

/** The findings that come and those that go where one procedure takes the place of another. */
export function FindingChanges({ findings }: { readonly findings: FindingsEffect }) {
  return (
    <>
      {findings.new.length === 0 && findings.gone.length === 0 && (
        <p className="hint">{words("effect/no-findings")}</p>
      )}
      <FindingList title={words("effect/findings-new")} findings={findings.new} />
      <FindingList title={words("effect/findings-gone")} findings={findings.gone} />
    </>
  );
}

function FindingList({ title, findings }: { readonly title: string; readonly findings: readonly Finding[] }) {
  if (findings.length === 0) return null;
  return (
    <>
      <h4>{title}</h4>
      <ul className="effect-findings">
        {findings.map(({ code, pointer, level, message }) => (
          <li key={`${code} ${pointer} ${inWords(message)}`} data-level={level}>
            {inWords(message)}
          </li>
        ))}
      </ul>
    </>
  );
}
