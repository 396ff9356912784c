import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { useMemo, useState } from "react";
import { useSearchParams } from "react-router-dom";
import { writtenOver } from "../../core/changes/index.ts";
import { lightFrom } from "../../core/plan/index.ts";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { Instant } from "../../core/units/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import type { RevisionNote } from "../../io/store/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { Choice, Compared } from "../compare/index.ts";
import { CompareChoice, CompareView, MergeView, RevisionTable, useCompared } from "../compare/index.ts";
import { HelpButton } from "../help/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { keepOutside } from "../outside-files/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { FindingsOfUnreadable } from "../read/index.ts";
import { useServices, useStartChoice } from "../session/index.ts";
import { revisionsOf, useRevisions, useShelfRevisions } from "../shelf/index.ts";
import { markedInText, TextsContext, TextsTurn, useTexts } from "../texts/index.ts";
import { freeRevision } from "../what-if/index.ts";

/** What may be chosen on the page; each is a part of its address. */
const PARTS = ["before", "after", "base"] as const;
type Part = (typeof PARTS)[number];

/** The page that compares two revisions, and merges them where the one that both were made from is chosen too. */
export function ComparePage() {
  const [query, setQuery] = useSearchParams();
  const { store } = useServices();
  const router = useIonRouter();
  const [told, setTold] = useState<string | null>(null);
  const all = useShelfRevisions();
  const keys = Object.fromEntries(PARTS.map((part) => [part, query.get(part) ?? ""])) as Record<Part, string>;
  const choose = (chosen: Partial<Record<Part, string>>) => {
    setTold(null);
    const next = Object.entries({ ...keys, ...chosen }).filter(([, key]) => key !== "");
    setQuery(
      next.map(([part, key]): [string, string] => [part, key]),
      { replace: true },
    );
  };
  const id = all?.find(({ key }) => key === keys.after || key === keys.before)?.id ?? null;
  const { choice: lightChoice, start: ownStart } = useProcedureLight(id);
  const start = useStartChoice(keys.after) ?? ownStart;
  const options = useMemo(
    () => ({ start, light: lightChoice && start !== null ? lightFrom(lightChoice, start) : null }),
    [start, lightChoice],
  );
  const before = useCompared(keys.before, options);
  const after = useCompared(keys.after, options);
  const base = useCompared(keys.base, options);
  const [ours, theirs, common] = [readable(after), readable(before), readable(base)];
  const texts = useTexts(ours?.outline ?? null, markedInText, theirs?.outline ?? null);
  const taken = useRevisions(ours?.file.id ?? null);
  const fromFile = async (part: Part) => {
    const [given] = await pickFiles();
    if (!given) return;
    if (given.text === null) setTold(inWords(given.problem));
    else choose({ [part]: keepOutside({ name: inWords(given.name), text: given.text }) });
  };
  const save = async (text: string, note: RevisionNote) => {
    const file = JSON.parse(text) as ProcedureFile;
    // Another tab may have taken the letter since it was shown.
    const free = freeRevision(ours?.file.revision, await revisionsOf(store, file.id));
    const added = await store.shelf.addProcedure(
      writtenOver(text, { ...file, revision: free }),
      undefined,
      note,
    );
    if (added.kind === "added" || added.kind === "known")
      setTold(words("merge/saved", { revision: added.procedure.revision ?? "–" }));
    else
      setTold(
        words("merge/not-kept", {
          why:
            added.kind === "not-kept" ? inWords(troubleMessage(added.reason)) : words("parts/unknown-error"),
        }),
      );
  };
  const revision = freeRevision(ours?.file.revision, taken);
  return (
    <IonPage>
      <IonContent>
        <main>
          <ScreenHead title={words("compare/title")} what={words("compare/what")}>
            {keys.after !== "" && (
              <button
                type="button"
                className="plain-button"
                onClick={() => router.push(`/read/${keys.after}`)}
              >
                {words("parts/read")}
              </button>
            )}
            {ours && theirs && (
              <>
                <button
                  type="button"
                  className="plain-button"
                  onClick={() => router.push(`/brief/plan/${keys.after}?beside=plan:${keys.before}`)}
                >
                  {words("compare/brief-both")}
                </button>
                <a className="plain-button" href={printedAddress(keys, start)}>
                  {words("compare/print")}
                </a>
              </>
            )}
            <button type="button" className="plain-button" onClick={() => router.push("/library")}>
              {words("library/title")}
            </button>
            <button type="button" className="plain-button" onClick={() => router.push("/")}>
              {words("parts/shelf")}
            </button>
            <TextsContext value={texts}>
              <TextsTurn />
            </TextsContext>
            <HelpButton screen="compare" />
          </ScreenHead>
          <div className="compare-page">
            <div className="compare-choose">
              <CompareChoice
                label={words("compare/before")}
                all={all ?? []}
                value={keys.before}
                onValue={(key) => choose({ before: key })}
              />
              <CompareChoice
                label={words("compare/after")}
                all={all ?? []}
                value={keys.after}
                onValue={(key) => choose({ after: key })}
              />
              <div className="panel-acts">
                <button
                  type="button"
                  className="plain-button"
                  onClick={() => choose({ before: keys.after, after: keys.before })}
                >
                  {words("compare/swap")}
                </button>
                <button
                  type="button"
                  className="plain-button"
                  onClick={() => void fromFile(keys.before === "" ? "before" : "after")}
                >
                  {words("compare/from-file")}
                </button>
              </div>
            </div>
            <p role="status">{told ?? standing([before, after])}</p>
            {[before, after, base].map((one, place) => (
              <Unreadable key={PARTS[place]} choice={one} />
            ))}
            <TextsContext value={texts}>
              {ours && theirs && <CompareView before={theirs} after={ours} options={options} />}
              {ours && theirs && (
                <section className="compare-merge-section" aria-labelledby="compare-merge">
                  <h2 id="compare-merge">{words("merge/title")}</h2>
                  <p className="hint">
                    {words("merge/how")} {words("merge/nothing-chosen")}
                  </p>
                  <div className="compare-choose">
                    <CompareChoice
                      label={words("compare/base")}
                      all={all ?? []}
                      value={keys.base}
                      onValue={(key) => choose({ base: key })}
                    />
                    <button type="button" className="plain-button" onClick={() => void fromFile("base")}>
                      {words("merge/from-file")}
                    </button>
                  </div>
                  {common && (
                    <MergeView
                      // What was decided about three is not decided about three others.
                      key={`${keys.base} ${keys.after} ${keys.before}`}
                      base={common}
                      ours={ours}
                      theirs={theirs}
                      options={options}
                      revision={revision}
                      onSave={(text, note) => void save(text, note)}
                    />
                  )}
                </section>
              )}
            </TextsContext>
            <RevisionTable revisions={(all ?? []).filter((one) => one.id === id)} />
          </div>
        </main>
      </IonContent>
    </IonPage>
  );
}

/** The printable page of what is compared, with the start that it is planned with here. The page is loaded anew. */
function printedAddress({ before, after }: Record<Part, string>, start: Instant | null): string {
  const query = new URLSearchParams({ before, ...(start === null ? {} : { start: formatInstant(start) }) });
  return `/print-compare/${encodeURIComponent(after)}?${query}`;
}

/** What has to be said before there is something to compare; `null` where there is. */
function standing(two: readonly Choice[]): string | null {
  if (two.includes(null)) return words("compare/choose");
  if (two.includes("gone")) return words("compare/is-gone");
  return two.includes("opening") ? words("parts/opening-procedure") : null;
}

/** What was chosen, where it reads as a procedure. */
function readable(choice: Choice) {
  if (typeof choice !== "object" || choice === null) return null;
  const { name, text, checked } = choice;
  const { file, outline } = checked;
  return file && outline ? { name, text, file, outline } : null;
}

const isCompared = (choice: Choice): choice is Compared => typeof choice === "object" && choice !== null;

function Unreadable({ choice }: { readonly choice: Choice }) {
  if (!isCompared(choice) || choice.checked.outline) return null;
  return (
    <div role="alert">
      <p>{words("compare/cannot-be-read", { name: choice.name })}</p>
      <FindingsOfUnreadable findings={choice.checked.findings} />
    </div>
  );
}
