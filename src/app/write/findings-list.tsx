import type { Finding } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { Answer } from "./use-answers.ts";

interface FindingsListProps {
  readonly findings: Answer<readonly Finding[]> | null;
  readonly onStep: (step: string) => void;
  readonly onMend: (finding: Finding) => void;
}

/** The findings of what is written; each leads to its step, and applies its mend, with one tap ([WRT4]). */
export function FindingsList({ findings: answer, onStep, onMend }: FindingsListProps) {
  const findings = answer?.value ?? null;
  const isOld = answer?.isOld === true;
  return (
    <section aria-labelledby="write-findings" className="write-findings" aria-busy={isOld}>
      <h2 id="write-findings">{words("read/findings")}</h2>
      {findings === null && <p className="hint">{words("write/checking")}</p>}
      {isOld && <p className="hint">{words("write/findings-before")}</p>}
      {findings?.length === 0 && <p className="hint">{words("read/no-findings")}</p>}
      <ul className="plain-list">
        {findings?.map((finding) => {
          const { code, pointer, level, message, steps, mendSays } = finding;
          const [step] = steps;
          return (
            <li key={`${code} ${pointer} ${inWords(message)}`} className="finding" data-level={level}>
              <p>
                <b>{words(`read/level-${level}`)}</b> {inWords(message)}
              </p>
              <div className="panel-acts">
                {step !== undefined && (
                  <button type="button" className="plain-button" onClick={() => onStep(step)}>
                    {words("write/go-to-step")}
                  </button>
                )}
                {mendSays && (
                  <button
                    type="button"
                    className="plain-button"
                    // It was tried on the text before.
                    disabled={isOld}
                    onClick={() => onMend(finding)}
                  >
                    {words("write/mend", { what: mendSays })}
                  </button>
                )}
              </div>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
