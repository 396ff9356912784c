import type { FormEvent } from "react";
import { useId, useMemo, useState } from "react";
import type { Change, ProcedureFile } from "../../core/procedure/index.ts";
import { canonicalTag, languagesOf, textsInLanguage } from "../../core/procedure/index.ts";
import type { GestureName } from "../../core/write/index.ts";
import {
  languageAdded,
  languageDropped,
  languageTextChanges,
  openTexts,
  placeName,
} from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { languageName } from "../texts/index.ts";
import { fieldWords } from "./field-words.ts";
import { LanguageRow } from "./language-row.tsx";
import "./language-texts.css";

/** So many rows are drawn at a time; a long procedure has thousands. */
const ROWS_AT_A_TIME = 60;

interface LanguageTextsProps {
  readonly file: ProcedureFile;
  readonly onChanges: (name: GestureName, changes: readonly Change[]) => void;
}

/** The texts of a procedure in other languages, each beside its author's; every one that is entered is one gesture ([WRD4]). */
export function LanguageTexts({ file, onChanges }: LanguageTextsProps) {
  const languages = languagesOf(file);
  const [chosen, setChosen] = useState<string | null>(null);
  const language = languages.find((one) => one === chosen) ?? languages[0] ?? null;
  return (
    <div className="language-texts">
      <AddLanguage
        languages={languages}
        onAdd={(tag) => {
          if (!languages.includes(tag)) onChanges("add", [languageAdded(tag)]);
          setChosen(tag);
        }}
      />
      {language === null ? (
        <p className="hint">{words("write/none-yet")}</p>
      ) : (
        <>
          <SelectField
            label={fieldWords("language")}
            choices={languages.map((tag) => ({ id: tag, name: `${languageName(tag)} (${tag})` }))}
            value={language}
            onValue={setChosen}
          />
          <LanguageRows key={language} file={file} language={language} onChanges={onChanges} />
          <button
            type="button"
            className="plain-button"
            onClick={() => onChanges("drop", languageDropped(file, language))}
          >
            {words("write/take-out-field", { field: languageName(language) })}
          </button>
        </>
      )}
    </div>
  );
}

function LanguageRows({ file, language, onChanges }: LanguageTextsProps & { readonly language: string }) {
  const [show, setShow] = useState<"all" | "open">("all");
  const [most, setMost] = useState(ROWS_AT_A_TIME);
  const { texts } = useMemo(() => textsInLanguage(file, language), [file, language]);
  const open = openTexts(texts);
  // A row stays while it is worked on, though it lacks nothing any more.
  const [kept, setKept] = useState<ReadonlySet<string>>(new Set());
  const shown =
    show === "all" ? texts : texts.filter((one) => one.standing !== "there" || kept.has(placeName(one)));
  const rest = shown.length - most;
  const missing = open.filter(({ standing }) => standing === "missing").length;
  return (
    <>
      <SelectField
        label={words("languages/show")}
        choices={[
          { id: "all", name: words("languages/all") },
          { id: "open", name: words("languages/open") },
        ]}
        value={show}
        onValue={(next) => {
          setKept(new Set());
          setShow(next);
        }}
      />
      <p role="status" className="hint">
        {missing > 0 && words("words/missing", { language: languageName(language), count: missing })}{" "}
        {open.length > missing && words("texts/older-count", { count: open.length - missing })}
        {open.length === 0 && words("languages/none-open")}
      </p>
      <ul className="plain-list language-rows">
        {shown.slice(0, most).map((text) => (
          <LanguageRow
            key={placeName(text)}
            text={text}
            language={language}
            author={file.language ?? null}
            onText={(value) => {
              setKept(new Set([...kept, placeName(text)]));
              onChanges("set", languageTextChanges(file, language, text, value));
            }}
          />
        ))}
      </ul>
      {rest > 0 && (
        <button type="button" className="plain-button" onClick={() => setMost(most + ROWS_AT_A_TIME)}>
          {words("languages/more", { count: Math.min(rest, ROWS_AT_A_TIME) })}
        </button>
      )}
    </>
  );
}

/** Takes a language by its tag; a tag that is none is told, and nothing is changed. */
function AddLanguage({
  languages,
  onAdd,
}: {
  readonly languages: readonly string[];
  readonly onAdd: (tag: string) => void;
}) {
  const id = useId();
  const [typed, setTyped] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);
  const add = (event: FormEvent) => {
    event.preventDefault();
    const tag = canonicalTag(typed.trim());
    setWrong(tag === null ? typed.trim() : null);
    if (tag === null) return;
    setTyped("");
    onAdd(tag);
  };
  return (
    <form className="language-add" onSubmit={add}>
      <div className="field">
        <label htmlFor={id}>{words("languages/tag")}</label>
        <input
          id={id}
          value={typed}
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          maxLength={35}
          aria-invalid={wrong !== null}
          onChange={(event) => setTyped(event.target.value)}
        />
      </div>
      <button type="submit" className={languages.length === 0 ? "main-button" : "plain-button"}>
        {words("languages/add")}
      </button>
      {wrong !== null && <p role="alert">{words("file/no-language", { tag: wrong })}</p>}
    </form>
  );
}
