import { applyChanges, changesByTask, conflictMessage } from "../../core/changes/index.ts";
import type { Fragment } from "../../core/fragment/index.ts";
import { fragmentOffers } from "../../core/fragment/index.ts";
import type { Change, ProcedureFile } from "../../core/procedure/index.ts";
import { inWords, words } from "../../words/index.ts";

interface OfferListProps {
  readonly file: ProcedureFile;
  /** All revisions at hand. */
  readonly fragments: readonly Fragment[];
  readonly onChanges: (changes: readonly Change[], about: string) => void;
}

/** What other revisions of the fragments that were put in come to, each use by itself. */
export function OfferList({ file, fragments, onChanges }: OfferListProps) {
  const offers = fragments.flatMap((fragment) =>
    fragmentOffers(file, fragment, fragments).map((offer) => ({ fragment, offer })),
  );
  if (offers.length === 0) return null;
  return (
    <section aria-labelledby="fragment-offers">
      <h3 id="fragment-offers">{words("fragments/offers")}</h3>
      {offers.map(({ fragment, offer: { use, revision, changes, conflicts, problem, isBlind } }) => (
        <section
          key={`${fragment.id} ${fragment.revision} ${use}`}
          className="fragments-offer"
          aria-label={words("fragments/take-which", { fragment: fragment.title, use })}
        >
          <p>
            {words("fragments/offer", { fragment: fragment.title, revision, use, newer: fragment.revision })}
          </p>
          {isBlind && <p role="note">{words("fragments/blind")}</p>}
          {problem && <p>{inWords(problem)}</p>}
          {conflicts.length > 0 && (
            <>
              <p>{words("fragments/conflicts")}</p>
              <ul>
                {conflicts.map((conflict) => (
                  <li key={inWords(conflictMessage(conflict))}>{inWords(conflictMessage(conflict))}</li>
                ))}
              </ul>
            </>
          )}
          {changes && <Changes file={file} changes={changes} />}
          {changes && (
            <button
              type="button"
              className="plain-button"
              aria-label={words("fragments/take-which", { fragment: fragment.title, use })}
              onClick={() =>
                onChanges(
                  changes,
                  words("fragments/taken", { fragment: fragment.title, revision: fragment.revision }),
                )
              }
            >
              {words("fragments/take")}
            </button>
          )}
        </section>
      ))}
    </section>
  );
}

/** What would change, in words, but for what the steps remember of the fragment. */
function Changes({ file, changes }: { readonly file: ProcedureFile; readonly changes: readonly Change[] }) {
  const told = changes.flatMap((change): Change[] => {
    if (!("change" in change)) return [change];
    const { from: _, ...set } = change.set ?? {};
    return Object.keys(set).length === 0 && !change.unset?.length ? [] : [{ ...change, set }];
  });
  const { file: after } = applyChanges(file, changes);
  if (told.length === 0 || !after) return <p className="hint">{words("fragments/nothing-new")}</p>;
  return (
    <ul>
      {changesByTask(file, after, told).flatMap(({ task, changes: said }) =>
        said.map(({ message }) => <li key={`${task} ${inWords(message)}`}>{inWords(message)}</li>),
      )}
    </ul>
  );
}
