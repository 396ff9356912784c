import { useMemo, useState } from "react";
import type { KeptRevision, RevisionsApart } from "../../core/library/index.ts";
import { LIBRARY, libraryOf, revisionHash } from "../../core/library/index.ts";
import { mayLead } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { AddedProcedure, KeptProcedure } from "../../io/store/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { JoinForm, LinkPanel, useLink } from "../link/index.ts";
import { errorWords } from "../parts/index.ts";
import { useServices, useWalkSession } from "../session/index.ts";
import { KeepForm, type Keeping } from "./keep-form.tsx";
import "./library.css";
import { LibraryList } from "./library-list.tsx";
import { revisionName } from "./revision-words.ts";
import { useKeptProcedures } from "./use-kept-procedures.ts";

interface LibraryViewProps {
  /** Compares two procedures of the shelf, by key, and merges them where what both were made from is there. */
  readonly onCompare: (keys: {
    readonly before: string;
    readonly after: string;
    readonly base: string | null;
  }) => void;
}

/** The library of a hub: how it is linked, what is in it, and what is put there. It works without a link too. */
export function LibraryView({ onCompare }: LibraryViewProps) {
  const { store, now } = useServices();
  const { session, folded, isRead, problem } = useWalkSession(LIBRARY);
  const link = useLink(LIBRARY);
  const shelf = useKeptProcedures();
  const [told, setTold] = useState<string | null>(null);
  const [isLinkOpen, setIsLinkOpen] = useState(false);
  // The list of entries grows in place: it is what was folded that changes.
  const library = useMemo(() => libraryOf(folded.entries), [folded]);
  const onShelf = useMemo(() => new Set(shelf.map(({ text }) => revisionHash(text))), [shelf]);
  const tried = (work: () => Promise<string | null>) => {
    setTold(null);
    work().then(setTold, (error: unknown) =>
      setTold(words("parts/did-not-work", { why: errorWords(error) })),
    );
  };
  const onTheShelf = ({ text, by, why }: KeptRevision) =>
    store.shelf.addProcedure(text, undefined, { by, why });
  const take = (revision: KeptRevision) => tried(async () => takenWords(await onTheShelf(revision)));
  const bringTogether = ({ one, other, base }: RevisionsApart) =>
    tried(async () => {
      const added = await Promise.all([one, other, ...(base ? [base] : [])].map(onTheShelf));
      const refused = added.find((each) => keptOf(each) === null);
      if (refused) return takenWords(refused);
      const [after, before, common] = added.map((each) => keptOf(each)?.key ?? "");
      onCompare({ after: after ?? "", before: before ?? "", base: common ?? null });
      return null;
    });
  const keep = ({ by, ...data }: Keeping) =>
    tried(async () => {
      await session.enter([{ name: "revision.kept", data, at: now(), actor: by }]);
      const { revision = null } = JSON.parse(data.text) as { readonly revision?: string };
      return words("library/keep-done", { name: revisionName({ revision, by }) });
    });
  return (
    <div className="library">
      {link.kind === "alone" ? (
        <section className="library-part">
          <p>{words("library/alone")}</p>
          <JoinForm
            code=""
            wanted={LIBRARY}
            label={words("library/join")}
            how={words("library/join-how")}
            onJoined={() => {}}
          />
        </section>
      ) : (
        <section className="library-part library-link">
          <p>
            {words("library/linked", {
              hub: link.hubName ?? "",
              state: words(`link/state-${link.kind}`),
              role: link.role === null ? "" : words(`parts/role-${link.role}`),
            })}
          </p>
          {link.unsent > 0 && <p role="status">{words("library/unsent", { count: link.unsent })}</p>}
          <button type="button" className="plain-button" onClick={() => setIsLinkOpen(true)}>
            {words("library/link")}
          </button>
        </section>
      )}
      <div role="status">{told !== null && <p className="library-told">{told}</p>}</div>
      {problem !== null && <p role="alert">{words("library/not-read", { why: problem })}</p>}
      {isRead ? (
        <LibraryList library={library} onShelf={onShelf} onTake={take} onBringTogether={bringTogether} />
      ) : (
        <p role="status">{words("library/reading")}</p>
      )}
      <section className="library-part" aria-labelledby="library-keep">
        <h2 id="library-keep">{words("library/keep-title")}</h2>
        {link.role === null || mayLead(link.role) ? (
          <KeepForm library={library} shelf={shelf} onKeep={keep} />
        ) : (
          <p className="hint">{words("library/keep-may-not")}</p>
        )}
      </section>
      {isLinkOpen && (
        <LinkPanel
          walk={LIBRARY}
          link={link}
          petZero={null}
          now={now() as Instant}
          onClose={() => setIsLinkOpen(false)}
        />
      )}
    </div>
  );
}

/** What came of taking a revision to the shelf, in words. */
function takenWords(added: AddedProcedure): string {
  switch (added.kind) {
    case "added":
      return words("shelf/procedure-taken-in", { title: added.procedure.title });
    case "known":
      return words("shelf/procedure-known", { title: added.procedure.title });
    case "not-kept":
      return inWords(troubleMessage(added.reason));
    case "refused":
      return words("library/refused");
  }
}

const keptOf = (added: AddedProcedure): KeptProcedure | null =>
  added.kind === "added" || added.kind === "known" ? added.procedure : null;
