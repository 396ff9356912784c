import type { Outline } from "../../core/procedure/index.ts";
import type { FoldedAgreement, Remark } from "../../core/remarks/index.ts";
import { words } from "../../words/index.ts";
import { aboutWords } from "./about-words.ts";

interface AgreementListProps {
  readonly outline: Outline;
  readonly agreements: readonly FoldedAgreement[];
  /** Who speaks: they can take back what is their own. */
  readonly by: Remark["by"];
  readonly onWithdraw: (agreement: Remark) => void;
}

/** Who agreed to what, and whether that holds for the text at hand. */
export function AgreementList({ outline, agreements, by, onWithdraw }: AgreementListProps) {
  return (
    <>
      <h3>{words("remarks/agreed")}</h3>
      {!agreements.some(({ holds }) => holds) && <p className="hint">{words("remarks/nobody")}</p>}
      <ul className="plain-list remarks-list">
        {agreements.map(({ agreement, holds }) => {
          const { name, role } = agreement.by;
          const what = aboutWords(outline, agreement);
          return (
            <li key={agreement.id} data-holds={holds || undefined}>
              <p>
                {words("remarks/agreement", { name, role, what })}{" "}
                <b>
                  {holds
                    ? words("remarks/holds")
                    : words("remarks/holds-not", { revision: agreement.revision ?? "–" })}
                </b>
              </p>
              {name === by.name && role === by.role && (
                <button
                  type="button"
                  className="plain-button"
                  aria-label={words("remarks/withdraw-whose", { name, what })}
                  onClick={() => onWithdraw(agreement)}
                >
                  {words("remarks/withdraw")}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
