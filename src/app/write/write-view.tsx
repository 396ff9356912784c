import { useIonRouter } from "@ionic/react";
import { Suspense, useCallback, useMemo, useRef, useState } from "react";
import type { PlanOptions } from "../../core/plan/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import { parseDuration } from "../../core/units/index.ts";
import type { GestureName, PastedTable, Proposal } from "../../core/write/index.ts";
import {
  handedOver,
  headingNames,
  pastedTable,
  placedStep,
  rowsCopied,
  rowsDropped,
  rowsDuplicated,
  rowsMoved,
  rowsShifted,
  stepAdded,
  stepLinked,
  stepSplit,
  stepsJoined,
  taskAdded,
  taskKey,
  textPasted,
  textReplaced,
} from "../../core/write/index.ts";
import { inWords, words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { LazyTextPane } from "../text-pane/index.ts";
import { cellNames } from "./cell-texts.ts";
import { doneWords } from "./done-words.ts";
import { FindingsList } from "./findings-list.tsx";
import { focusField } from "./focus-field.ts";
import { ListEditor } from "./list-editor.tsx";
import { PastedTableForm } from "./pasted-table-form.tsx";
import { moveChoices, stepChoices, withNext } from "./row-choices.ts";
import { HEADS, type TableRow, tableRows } from "./sheet-rows.ts";
import type { SheetActs } from "./sheet-table.tsx";
import { SheetTable } from "./sheet-table.tsx";
import {
  HandOverForm,
  LinkForm,
  MoveForm,
  PasteForm,
  ReplaceForm,
  SaveForm,
  SplitForm,
} from "./side-forms.tsx";
import { fieldChanges, StepDetails, TaskDetails, useOffers } from "./step-details.tsx";
import { Tool } from "./tool.tsx";
import { useAnswers } from "./use-answers.ts";
import type { OpenManuscript } from "./use-manuscript.ts";
import { useTypedText } from "./use-typed-text.ts";
import { useUndoKeys } from "./use-undo-keys.ts";
import { Figures } from "./write-figures.tsx";
import { Notices } from "./write-notices.tsx";
import "./write.css";

/** What is said of a revision that is saved. */
export interface SaidOfRevision {
  readonly who: string;
  readonly why: string;
}

interface WriteViewProps {
  readonly open: OpenManuscript;
  readonly start: PlanOptions["start"];
  readonly light: PlanOptions["light"];
  /** The revision as which it would be saved. */
  readonly revision: string;
  readonly onSave: (said: SaidOfRevision) => void;
  readonly onSaveFile: () => void;
  /** What became of the last saving; `null` for nothing yet. */
  readonly saved: string | null;
}

const TABS = ["table", "lists", "text"] as const;
type Tab = (typeof TABS)[number];
type Side =
  | "details"
  | "findings"
  | "link"
  | "hand-over"
  | "search"
  | "split"
  | "move"
  | "paste"
  | "table"
  | "save";

/** The screen on which a procedure is written: the table or the lists, what is chosen beside it, and what it comes to. */
export function WriteView(props: WriteViewProps) {
  const { open, start, light, revision, onSave, onSaveFile, saved } = props;
  const { manuscript, rows: selected, make, change, select } = open;
  const { file } = manuscript;
  const router = useIonRouter();
  const answers = useAnswers({ text: manuscript.text, start, light });
  const [tab, setTab] = useState<Tab>("table");
  const [side, setSide] = useState<Side>("details");
  const [lag, setLag] = useState<string | null>("PT0S");
  const [table, setTable] = useState<PastedTable | null>(null);
  const [fresh, setFresh] = useState<string | null>(null);
  const onFresh = useCallback(() => setFresh(null), []);
  const beside = useRef<HTMLDivElement>(null);
  const before = useRef<readonly TableRow[]>([]);
  const rows = useMemo(() => {
    before.current = tableRows(file, before.current);
    return before.current;
  }, [file]);
  const strands = useMemo(() => strandsOf(file.crew), [file.crew]);
  const names = useMemo(() => cellNames(file), [file]);
  const last = selected.at(-1) ?? null;
  const at = rows.find(({ key }) => key === last)?.row ?? null;
  const step = at?.kind === "step" ? at.step : null;
  const offers = useOffers(file, side === "hand-over" ? (step?.id ?? null) : null);

  const where = () => last ?? rows.findLast(({ row }) => row?.kind !== "contingency" && row)?.key ?? HEADS;
  const add = (name: GestureName, proposal: Proposal) => {
    if (make(name, proposal)) setFresh(proposal.rows?.[0] ?? null);
  };
  const addStep = () => add("add", stepAdded(file, where(), words("write/new-step")));
  const addTask = () => add("add", taskAdded(file, where(), words("write/new-task")));
  const acts: SheetActs = {
    select: (keys) => {
      const [key] = keys;
      if (side === "link" && step && key !== undefined && placedStep(file, key)) return link(key);
      select(keys);
      if (side !== "findings") setSide("details");
    },
    edited: (key, column, value) => {
      if (placedStep(file, key)) change("set", fieldChanges("steps", key, column, value));
      else {
        const task = rows.find((row) => row.key === key)?.row;
        if (task?.kind === "task") change("set", fieldChanges("tasks", task.task.id, "title", value));
      }
    },
    details: (column) => {
      setSide("details");
      requestAnimationFrame(() => focusField(beside.current, column));
    },
    shift: (by) => void make("move", rowsShifted(file, selected, by)),
    add: addStep,
    drop: () => void make("drop", rowsDropped(file, selected)),
    duplicate: () => void make("duplicate", rowsDuplicated(file, selected)),
  };
  function link(to: string) {
    const time = lag === null ? null : parseDuration(lag);
    if (step && time !== null && make("link", stepLinked(file, step.id, to, time))) setSide("details");
  }
  const paste = (text: string) => {
    const rowsPasted = textPasted(file, where(), text);
    const found = rowsPasted.problem ? pastedTable(text, headingNames(inWords)) : null;
    if (found) {
      setTable(found);
      setSide("table");
    } else if (make("paste", rowsPasted)) setSide("details");
  };
  // Where the clipboard may not be read, or holds nothing, the text is asked for.
  const askPaste = () => {
    const reading = navigator.clipboard?.readText?.() ?? Promise.reject(new Error("no clipboard"));
    reading.then(
      (text) => (text.trim() === "" ? setSide("paste") : paste(text)),
      () => setSide("paste"),
    );
  };
  const copy = () => {
    const text = rowsCopied(file, selected);
    if (text !== "") navigator.clipboard?.writeText(text).catch(() => setSide("paste"));
  };
  const goToStep = (id: string) => {
    setTab("table");
    select([id]);
    setSide("details");
    requestAnimationFrame(() =>
      document
        .querySelector(`.write-table [data-row="${CSS.escape(id)}"]`)
        ?.scrollIntoView({ block: "center" }),
    );
  };
  const mend = ({ mend: changes }: Finding) => {
    if (changes) change("mend", changes);
  };

  useUndoKeys(open);
  const typed = useTypedText(open.type);

  const findings = answers.findings?.value ?? NO_FINDINGS;
  const errors = findings.filter(({ level }) => level === "error").length;
  const [undoes, redoes] = [manuscript.done.at(-1), manuscript.undone.at(-1)];
  const stepRows = stepChoices(rows);
  const moveRows = moveChoices(rows);
  return (
    <article className="write">
      <div className="write-bar" role="toolbar" aria-label={words("write/tools")}>
        {TABS.map((one) => (
          <button
            key={one}
            type="button"
            className="plain-button"
            aria-pressed={tab === one}
            onClick={() => setTab(one)}
          >
            {words(`write/tab-${one}`)}
          </button>
        ))}
        <Tool
          says={words("write/findings-count", { count: findings.length })}
          isOff={false}
          onTool={() => setSide("findings")}
        />
        <Tool says={words("write/save")} isOff={false} onTool={() => setSide("save")} />
        <Tool says={words("write/save-file")} isOff={false} onTool={onSaveFile} />
      </div>
      <Figures answers={answers} limit={file.limits?.elapsed} />
      <Notices open={open} saved={saved} problem={open.problem} />
      <div className="write-bar write-row-bar" role="toolbar" aria-label={words("write/row-tools")}>
        <Tool
          says={words("write/undo")}
          isOff={!undoes}
          about={undoes ? words("write/undo-what", { what: doneWords(undoes.about.name) }) : null}
          onTool={open.undo}
        />
        <Tool
          says={words("write/redo")}
          isOff={!redoes}
          about={redoes ? words("write/redo-what", { what: doneWords(redoes.about.name) }) : null}
          onTool={open.redo}
        />
        {tab === "table" && (
          <>
            <Tool says={words("write/add-step")} isOff={false} onTool={addStep} />
            <Tool says={words("write/add-task")} isOff={false} onTool={addTask} />
            <Tool says={words("write/up")} isOff={!last} onTool={() => acts.shift("up")} />
            <Tool says={words("write/down")} isOff={!last} onTool={() => acts.shift("down")} />
            <Tool says={words("write/link")} isOff={!step} onTool={() => setSide("link")} />
            <Tool says={words("write/hand-over")} isOff={!step} onTool={() => setSide("hand-over")} />
            <details className="write-menu">
              <summary className="plain-button">{words("write/more-tools")}</summary>
              <div className="panel-acts">
                <Tool says={words("write/move-to")} isOff={!last} onTool={() => setSide("move")} />
                <Tool says={words("write/duplicate")} isOff={!last} onTool={acts.duplicate} />
                <Tool says={words("write/split")} isOff={!step} onTool={() => setSide("split")} />
                <Tool
                  says={words("write/join")}
                  isOff={selected.length < 2}
                  onTool={() => make("join", stepsJoined(file, selected))}
                />
                <Tool says={words("write/copy")} isOff={!last} onTool={copy} />
                <Tool says={words("write/paste")} isOff={false} onTool={askPaste} />
                <Tool says={words("write/search")} isOff={false} onTool={() => setSide("search")} />
                <Tool says={words("write/drop")} isOff={!last} onTool={acts.drop} />
                <Tool
                  says={words("write/select-more")}
                  isOff={!last}
                  onTool={() => select(withNext(rows, selected))}
                />
              </div>
            </details>
          </>
        )}
      </div>
      <div className="write-body" data-tab={tab}>
        <div className="write-main">
          {tab === "table" && (
            <SheetTable
              rows={rows}
              strands={strands}
              names={names}
              selected={selected}
              findings={findings}
              isOld={answers.findings?.isOld === true}
              acts={acts}
              fresh={fresh}
              onFresh={onFresh}
            />
          )}
          {tab === "lists" && (
            <ListEditor file={file} onChanges={(name, changes) => void change(name, changes)} />
          )}
          {tab === "text" && (
            <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
              <LazyTextPane
                text={manuscript.text}
                unread={manuscript.unread}
                onTyped={typed}
                findings={findings}
                goTo={null}
              />
            </Suspense>
          )}
        </div>
        <div className="write-beside" ref={beside}>
          {side === "findings" && (
            <FindingsList findings={answers.findings} onStep={goToStep} onMend={mend} />
          )}
          {side === "save" && (
            <SaveForm
              revision={revision}
              caution={errors > 0 ? words("write/save-errors", { count: errors }) : null}
              onSave={(who, why) => onSave({ who, why })}
            />
          )}
          {side === "search" && (
            <ReplaceForm
              file={file}
              onFind={select}
              onReplace={(wanted, by) => void make("replace", textReplaced(file, wanted, by))}
            />
          )}
          {side === "paste" && <PasteForm onPaste={paste} />}
          {side === "table" && table && (
            <PastedTableForm
              file={file}
              row={where()}
              table={table}
              onPut={(proposal) => {
                if (make("paste", proposal)) setSide("details");
              }}
              onEnd={() => setSide("details")}
            />
          )}
          {side === "move" && (
            <MoveForm
              rows={moveRows}
              onMove={(to) => {
                if (make("move", rowsMoved(file, selected, to))) setSide("details");
              }}
            />
          )}
          {side === "link" && step && (
            <LinkForm
              action={step.do}
              steps={stepRows.filter(({ id }) => id !== step.id)}
              onLag={setLag}
              onStep={link}
              onEnd={() => setSide("details")}
            />
          )}
          {side === "split" && step && (
            <SplitForm
              key={step.id}
              action={step.do}
              onSplit={(texts) => {
                if (make("split", stepSplit(file, step.id, texts))) setSide("details");
              }}
            />
          )}
          {side === "hand-over" && step && (
            <HandOverForm
              file={file}
              behind={step.id}
              offers={offers}
              onHandOver={(what) => {
                if (make("hand-over", handedOver(file, what, offers))) setSide("details");
              }}
            />
          )}
          {side === "details" && tab === "table" && at?.kind === "step" && (
            <StepDetails
              file={file}
              step={at.step}
              number={at.number}
              onField={(key, value) => {
                const isRename = key === "id" && typeof value === "string";
                make(isRename ? "rename" : "set", {
                  changes: fieldChanges("steps", at.step.id, key, value),
                  rows: isRename ? [value] : selected,
                  problem: null,
                });
              }}
            />
          )}
          {side === "details" && tab === "table" && at?.kind === "task" && (
            <TaskDetails
              file={file}
              task={at.task}
              number={at.number}
              onField={(key, value) => {
                const isRename = key === "id" && typeof value === "string";
                make(isRename ? "rename" : "set", {
                  changes: fieldChanges("tasks", at.task.id, key, value),
                  rows: isRename ? [taskKey(value)] : selected,
                  problem: null,
                });
              }}
            />
          )}
          {side === "details" && tab === "table" && at === null && (
            <p className="hint">{words("write/choose-row")}</p>
          )}
        </div>
      </div>
      <p className="hint write-foot">
        <button type="button" className="plain-button" onClick={() => router.push("/")}>
          {words("parts/shelf")}
        </button>
      </p>
    </article>
  );
}

const NO_FINDINGS: readonly Finding[] = [];
