import type { KeptRevision, Library, LibraryProcedure, RevisionsApart } from "../../core/library/index.ts";
import { inWords, message, words } from "../../words/index.ts";
import { revisionName } from "./revision-words.ts";

interface LibraryListProps {
  readonly library: Library;
  /** The hashes of what is on this device's shelf. */
  readonly onShelf: ReadonlySet<string>;
  readonly onTake: (revision: KeptRevision) => void;
  readonly onBringTogether: (apart: RevisionsApart) => void;
}

/** The procedures of a library with their revisions, the latest first, and which of them are apart. */
export function LibraryList({ library, onShelf, onTake, onBringTogether }: LibraryListProps) {
  const { procedures, unreadable } = library;
  return (
    <>
      {procedures.length === 0 && <p className="hint">{words("library/empty")}</p>}
      {procedures.map((procedure) => (
        <section key={procedure.id} className="library-procedure" aria-labelledby={`library-${procedure.id}`}>
          <h2 id={`library-${procedure.id}`}>{procedure.title}</h2>
          <Apart procedure={procedure} onBringTogether={onBringTogether} />
          <ul className="plain-list">
            {procedure.revisions.toReversed().map((revision) => (
              <Revision
                key={revision.hash}
                revision={revision}
                isHead={procedure.heads.includes(revision)}
                isOnShelf={onShelf.has(revision.hash)}
                onTake={onTake}
              />
            ))}
          </ul>
        </section>
      ))}
      {unreadable > 0 && <p>{words("library/unreadable", { count: unreadable })}</p>}
    </>
  );
}

interface ApartProps {
  readonly procedure: LibraryProcedure;
  readonly onBringTogether: (apart: RevisionsApart) => void;
}

function Apart({ procedure: { apart, heads }, onBringTogether }: ApartProps) {
  if (!apart) return null;
  const [one, other] = [revisionName(apart.one), revisionName(apart.other)];
  return (
    <div className="library-apart">
      <p>
        {apart.base
          ? words("library/apart", { one, other, base: revisionName(apart.base) })
          : words("library/apart-no-base", { one, other })}
      </p>
      {heads.length > 2 && <p>{words("library/more-heads", { count: heads.length - 2 })}</p>}
      <p className="hint">{words("library/bring-how")}</p>
      <button type="button" className="plain-button" onClick={() => onBringTogether(apart)}>
        {words("library/bring-together")}
      </button>
    </div>
  );
}

interface RevisionProps {
  readonly revision: KeptRevision;
  readonly isHead: boolean;
  readonly isOnShelf: boolean;
  readonly onTake: (revision: KeptRevision) => void;
}

function Revision({ revision, isHead, isOnShelf, onTake }: RevisionProps) {
  const name = revisionName(revision);
  return (
    <li className="library-revision">
      <div>
        <b>{inWords(name)}</b>
        <p>{revision.why}</p>
        <p className="hint">
          {[
            words("library/kept", { at: revision.at }),
            ...(isHead ? [words("library/latest")] : []),
            ...(isOnShelf ? [words("library/on-shelf")] : []),
          ].join(" · ")}
        </p>
      </div>
      {!isOnShelf && (
        <button
          type="button"
          className="plain-button"
          aria-label={inWords(message("library/take-which", { name }))}
          onClick={() => onTake(revision)}
        >
          {words("library/take")}
        </button>
      )}
    </li>
  );
}
