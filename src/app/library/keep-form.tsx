import { useState } from "react";
import type { KeptRevision, Library, LibraryProcedure } from "../../core/library/index.ts";
import { revisionHash } from "../../core/library/index.ts";
import type { KeptProcedure } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { storedFollower, storeFollower } from "../session/index.ts";
import { revisionName } from "./revision-words.ts";

/** What somebody wants to keep in the library. */
export interface Keeping {
  readonly text: string;
  readonly bases: readonly string[];
  readonly by: string;
  readonly why: string;
}

interface KeepFormProps {
  readonly library: Library;
  /** What is on this device's shelf, the latest first for each title. */
  readonly shelf: readonly KeptProcedure[];
  readonly onKeep: (keeping: Keeping) => void;
}

/** Chooses a revision of the shelf, says what it was made from and why, and keeps it in the library. */
export function KeepForm({ library, shelf, onKeep }: KeepFormProps) {
  const [key, setKey] = useState("");
  const chosen = shelf.find((one) => one.key === key) ?? shelf[0];
  if (!chosen) return <p className="hint">{words("library/keep-nothing")}</p>;
  const procedure = library.procedures.find(({ id }) => id === chosen.id) ?? null;
  return (
    <div className="library-keep">
      <SelectField
        label={words("library/keep-which")}
        choices={shelf.map((one) => ({ id: one.key, name: choiceWords(one) }))}
        value={chosen.key}
        onValue={setKey}
      />
      <KeepChosen
        key={`${chosen.key} ${procedure?.revisions.length ?? 0}`}
        chosen={chosen}
        procedure={procedure}
        shelf={shelf}
        onKeep={onKeep}
      />
    </div>
  );
}

interface KeepChosenProps {
  readonly chosen: KeptProcedure;
  /** The procedure in the library; `null` while nothing of it is there. */
  readonly procedure: LibraryProcedure | null;
  readonly shelf: readonly KeptProcedure[];
  readonly onKeep: (keeping: Keeping) => void;
}

function KeepChosen({ chosen, procedure, shelf, onKeep }: KeepChosenProps) {
  const [bases, setBases] = useState<ReadonlySet<string>>(() => likelyBases(chosen, procedure, shelf));
  const [isOfNone, setIsOfNone] = useState(false);
  const [by, setBy] = useState(() => chosen.saved?.by ?? storedFollower() ?? "");
  const [why, setWhy] = useState(() => chosen.saved?.why ?? "");
  const hash = revisionHash(chosen.text);
  if (procedure?.revisions.some((one) => one.hash === hash)) {
    return <p className="hint">{words("library/keep-known")}</p>;
  }
  const isSaid = procedure === null || bases.size > 0 || isOfNone;
  const isStale = procedure !== null && [...bases].some((base) => !isHead(procedure, base));
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        storeFollower(by.trim());
        onKeep({ text: chosen.text, bases: [...bases], by: by.trim(), why: why.trim() });
      }}
    >
      {procedure === null ? (
        <p className="hint">{words("library/keep-new")}</p>
      ) : (
        <fieldset className="choices">
          <legend>{words("library/keep-bases")}</legend>
          {procedure.revisions.toReversed().map((one) => (
            <BaseChoice
              key={one.hash}
              revision={one}
              isHead={isHead(procedure, one.hash)}
              isChosen={bases.has(one.hash)}
              onChoose={(isChosen) => {
                const others = [...bases].filter((base) => base !== one.hash);
                setBases(new Set(isChosen ? [...others, one.hash] : others));
                setIsOfNone(false);
              }}
            />
          ))}
          <label className="choice">
            <input
              type="checkbox"
              checked={isOfNone}
              onChange={({ target }) => {
                setIsOfNone(target.checked);
                if (target.checked) setBases(new Set());
              }}
            />
            <span>{words("library/keep-from-none")}</span>
          </label>
          <p className="hint">{words("library/keep-bases-how")}</p>
        </fieldset>
      )}
      {isStale && (
        <p className="library-apart" role="status">
          {words("library/keep-stale")}
        </p>
      )}
      <label className="field">
        <span>{words("library/keep-who")}</span>
        <input value={by} maxLength={60} autoComplete="off" onChange={(event) => setBy(event.target.value)} />
      </label>
      <label className="field">
        <span>{words("library/keep-why")}</span>
        <textarea value={why} maxLength={2000} rows={2} onChange={(event) => setWhy(event.target.value)} />
      </label>
      {!isSaid && <p>{words("library/keep-say")}</p>}
      <button type="submit" className="main-button" disabled={!isSaid || by.trim() === ""}>
        {words("library/keep")}
      </button>
    </form>
  );
}

interface BaseChoiceProps {
  readonly revision: KeptRevision;
  readonly isHead: boolean;
  readonly isChosen: boolean;
  readonly onChoose: (isChosen: boolean) => void;
}

function BaseChoice({ revision, isHead: isLatest, isChosen, onChoose }: BaseChoiceProps) {
  return (
    <label className="choice">
      <input type="checkbox" checked={isChosen} onChange={({ target }) => onChoose(target.checked)} />
      <span>
        {inWords(revisionName(revision))}
        {isLatest && <span className="hint"> {words("library/latest")}</span>}
      </span>
    </label>
  );
}

const isHead = ({ heads }: LibraryProcedure, hash: string): boolean => heads.some((one) => one.hash === hash);

/** What a revision was made from where it can be told: the one revision of the library that was on the shelf before it. With several of them nobody knows. */
function likelyBases(
  { importedAt }: KeptProcedure,
  procedure: LibraryProcedure | null,
  shelf: readonly KeptProcedure[],
): ReadonlySet<string> {
  const before = new Set(
    shelf.filter((one) => one.importedAt < importedAt).map(({ text }) => revisionHash(text)),
  );
  const known = (procedure?.revisions ?? []).filter(({ hash }) => before.has(hash));
  const goneOnFrom = new Set(known.flatMap(({ bases }) => bases));
  const latest = known.filter(({ hash }) => !goneOnFrom.has(hash));
  return new Set(latest.length === 1 ? latest.map(({ hash }) => hash) : []);
}

const choiceWords = ({ title, revision }: KeptProcedure): string =>
  revision === null
    ? words("library/keep-choice-bare", { title })
    : words("library/keep-choice", { title, revision });
