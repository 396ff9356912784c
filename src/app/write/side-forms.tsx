import type { FormEvent } from "react";
import { useId, useState } from "react";
import type { ProcedureFile } from "../../core/procedure/index.ts";
import type { CrewOffers, HandOver, Wanted } from "../../core/write/index.ts";
import { rowsWith } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { choicesIn } from "./field-schema.ts";
import { LineField } from "./line-field.tsx";
import { typedDuration } from "./minutes-text.ts";

/** A form whose button or Enter does one thing. */
function Form({
  title,
  act,
  isReady = true,
  onAct,
  children,
}: {
  readonly title: string;
  readonly act: string;
  readonly isReady?: boolean;
  readonly onAct: () => void;
  readonly children: React.ReactNode;
}) {
  const heading = useId();
  const send = (event: FormEvent) => {
    event.preventDefault();
    if (isReady) onAct();
  };
  return (
    <form className="write-form" aria-labelledby={heading} onSubmit={send}>
      <h2 id={heading}>{title}</h2>
      {children}
      <button type="submit" className="main-button" disabled={!isReady}>
        {act}
      </button>
    </form>
  );
}

/** Item, giver and receiver of a hand-over behind a step ([WRT3]); what the giver holds then comes first. */
export function HandOverForm({
  file,
  behind,
  offers,
  isReady,
  onHandOver,
}: {
  readonly file: ProcedureFile;
  readonly behind: string;
  readonly offers: readonly CrewOffers[] | null;
  /** Whether the offers are of what is written now: before that it cannot be told whether the giver holds the item. */
  readonly isReady: boolean;
  readonly onHandOver: (what: HandOver) => void;
}) {
  const crew = choicesIn(file, "crew");
  const [giver, setGiver] = useState(crew[0]?.id ?? "");
  const [receiver, setReceiver] = useState(crew[1]?.id ?? "");
  const holds = new Set<string>(offers?.find((one) => one.crew === giver)?.holds ?? []);
  const items = choicesIn(file, "items")
    .toSorted((a, b) => Number(holds.has(b.id)) - Number(holds.has(a.id)))
    .map(({ id, name }) => ({
      id,
      name: offers && !holds.has(id) ? words("write/not-held-then", { what: name }) : name,
    }));
  const [chosen, setItem] = useState<string | null>(null);
  const item = chosen ?? items[0]?.id ?? "";
  const label = choicesIn(file, "items").find(({ id }) => id === item)?.name ?? item;
  return (
    <Form
      title={words("write/hand-over")}
      act={words("write/hand-over-do")}
      isReady={isReady}
      onAct={() =>
        onHandOver({
          item,
          giver,
          receiver,
          behind,
          action: words("write/hand-over-action", { item: label }),
        })
      }
    >
      {items.length === 0 && <p className="hint">{words("write/no-items")}</p>}
      <SelectField label={words("write/giver")} choices={crew} value={giver} onValue={setGiver} />
      <SelectField label={words("write/item")} choices={items} value={item} onValue={setItem} />
      <SelectField label={words("write/receiver")} choices={crew} value={receiver} onValue={setReceiver} />
    </Form>
  );
}

/** Search and replace in the texts of all rows ([WRT2]). */
export function ReplaceForm({
  file,
  onFind,
  onReplace,
}: {
  readonly file: ProcedureFile;
  readonly onFind: (rows: readonly string[]) => void;
  readonly onReplace: (wanted: Wanted, by: string) => void;
}) {
  const [text, setText] = useState("");
  const [by, setBy] = useState("");
  const [isExact, setExact] = useState(false);
  const wanted = { text, isExact };
  const found = rowsWith(file, wanted);
  return (
    <Form
      title={words("write/search")}
      act={words("write/replace-all", { count: found.length })}
      onAct={() => onReplace(wanted, by)}
    >
      <LineField label={words("write/search-for")} value={text} onValue={setText} />
      <label className="write-tick">
        <input type="checkbox" checked={isExact} onChange={() => setExact(!isExact)} />
        {words("write/search-exact")}
      </label>
      <p role="status">{words("write/found-in", { count: found.length })}</p>
      <button
        type="button"
        className="plain-button"
        disabled={found.length === 0}
        onClick={() => onFind(found)}
      >
        {words("write/select-found")}
      </button>
      <LineField label={words("write/replace-by")} value={by} onValue={setBy} />
    </Form>
  );
}

/** Two texts for the halves of a step. */
export function SplitForm({
  action,
  onSplit,
}: {
  readonly action: string;
  readonly onSplit: (texts: readonly [string, string]) => void;
}) {
  const [first, setFirst] = useState(action);
  const [second, setSecond] = useState("");
  return (
    <Form
      title={words("write/split")}
      act={words("write/split-do")}
      onAct={() => {
        if (first.trim() !== "" && second.trim() !== "") onSplit([first, second]);
      }}
    >
      <p className="hint">{words("write/split-how")}</p>
      <LineField label={words("write/split-first")} value={first} onValue={setFirst} />
      <LineField label={words("write/split-second")} value={second} onValue={setSecond} />
    </Form>
  );
}

/** A lag as it is typed, as the file has it: none for an empty field, `null` for what is no time. */
export const lagOf = (typed: string): string | null => (typed.trim() === "" ? "PT0S" : typedDuration(typed));

/** What is waited for, and how long after it: the predecessor is tapped in the table meanwhile ([WRT3]). */
export function LinkForm({
  action,
  steps,
  lag,
  onLag,
  onStep,
  onEnd,
}: {
  readonly action: string;
  readonly steps: readonly { readonly id: string; readonly name: string }[];
  /** The lag as it is typed. */
  readonly lag: string;
  readonly onLag: (typed: string) => void;
  readonly onStep: (step: string) => void;
  readonly onEnd: () => void;
}) {
  const [step, setStep] = useState(steps[0]?.id ?? "");
  return (
    <Form title={words("write/link")} act={words("write/link-do")} onAct={() => onStep(step)}>
      <p role="status">{words("write/link-how", { action })}</p>
      <LineField label={words("write/link-lag")} value={lag} onValue={onLag} />
      {lagOf(lag) === null && <p role="alert">{words("write/not-a-value")}</p>}
      <SelectField label={words("write/link-to")} choices={steps} value={step} onValue={setStep} />
      <button type="button" className="plain-button" onClick={onEnd}>
        {words("write/link-end")}
      </button>
    </Form>
  );
}

/** To which row the chosen ones are moved. */
export function MoveForm({
  rows,
  onMove,
}: {
  readonly rows: readonly { readonly id: string; readonly name: string }[];
  readonly onMove: (to: string) => void;
}) {
  const [to, setTo] = useState(rows[0]?.id ?? "");
  return (
    <Form title={words("write/move-to")} act={words("write/move-do")} onAct={() => onMove(to)}>
      <SelectField label={words("write/move-behind")} choices={rows} value={to} onValue={setTo} />
    </Form>
  );
}

/** A text with steps or tasks as JSON, where the clipboard cannot be read. */
export function PasteForm({ onPaste }: { readonly onPaste: (text: string) => void }) {
  const id = useId();
  const [text, setText] = useState("");
  return (
    <Form title={words("write/paste")} act={words("write/paste-do")} onAct={() => onPaste(text)}>
      <div className="field">
        <label htmlFor={id}>{words("write/paste-text")}</label>
        <textarea id={id} rows={6} value={text} onChange={(event) => setText(event.target.value)} />
      </div>
    </Form>
  );
}

/** Who saves a revision, and why. */
export function SaveForm({
  revision,
  caution,
  onSave,
}: {
  readonly revision: string;
  /** What whoever saves it should know first; `null` for nothing. */
  readonly caution: string | null;
  readonly onSave: (who: string, why: string) => void;
}) {
  const [who, setWho] = useState("");
  const [why, setWhy] = useState("");
  const isReady = who.trim() !== "" && why.trim() !== "";
  const [isAsked, setAsked] = useState(false);
  return (
    <Form
      title={words("write/save-title", { revision })}
      act={words("what-if/save", { revision })}
      onAct={() => {
        setAsked(true);
        if (isReady) onSave(who.trim(), why.trim());
      }}
    >
      <p className="hint">{words("write/save-how")}</p>
      <LineField label={words("write/save-who")} value={who} onValue={setWho} />
      <LineField label={words("write/save-why")} value={why} onValue={setWhy} />
      {isAsked && !isReady && <p role="alert">{words("write/save-needs")}</p>}
      {caution !== null && <p role="alert">{caution}</p>}
    </Form>
  );
}

/** What a new procedure begins with. */
export function NewForm({
  onBegin,
}: {
  readonly onBegin: (title: string, calls: readonly [string, string, string]) => void;
}) {
  const [title, setTitle] = useState("");
  const [calls, setCalls] = useState<readonly [string, string, string]>(["EV1", "EV2", "IV"]);
  const [isAsked, setAsked] = useState(false);
  const call = (at: 0 | 1 | 2) => (text: string) =>
    setCalls(calls.with(at, text) as unknown as [string, string, string]);
  const isReady = title.trim() !== "" && calls.some((one) => one.trim() !== "");
  return (
    <Form
      title={words("write/new-title")}
      act={words("write/new-begin")}
      onAct={() => {
        setAsked(true);
        if (isReady) onBegin(title.trim(), calls);
      }}
    >
      <LineField label={words("write/new-name")} value={title} onValue={setTitle} />
      <LineField label={words("write/new-outside-1")} value={calls[0]} onValue={call(0)} />
      <LineField label={words("write/new-outside-2")} value={calls[1]} onValue={call(1)} />
      <LineField label={words("write/new-inside")} value={calls[2]} onValue={call(2)} />
      {isAsked && !isReady && <p role="alert">{words("write/new-needs")}</p>}
    </Form>
  );
}
