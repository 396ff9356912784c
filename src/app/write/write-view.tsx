import { useIonRouter } from "@ionic/react";
import type { KeyboardEvent } from "react";
import { lazy, Suspense, useCallback, useMemo, useRef, useState } from "react";
import type { PlanOptions } from "../../core/plan/index.ts";
import type { Finding } from "../../core/procedure/index.ts";
import { parseDuration } from "../../core/units/index.ts";
import type { FileStep, PastedTable } from "../../core/write/index.ts";
import {
  handedOver,
  headingNames,
  pastedTable,
  performerTurned,
  placedStep,
  rowsCopied,
  rowsDropped,
  rowsDuplicated,
  rowsMoved,
  rowsShifted,
  stepLinked,
  stepSplit,
  stepsJoined,
  textPasted,
  textReplaced,
  waitsSet,
} from "../../core/write/index.ts";
import { inWords, words } from "../../words/index.ts";
import { strandsOf } from "../braid/index.ts";
import { LazyTextPane } from "../text-pane/index.ts";
import { DraftForm } from "./draft-form.tsx";
import { FindingsList } from "./findings-list.tsx";
import { focusField } from "./focus-field.ts";
import { GestureNotes } from "./gesture-notes.tsx";
import type { Tab } from "./head-tools.tsx";
import { HeadTools } from "./head-tools.tsx";
import { JointForm } from "./joint-form.tsx";
import { ListEditor } from "./list-editor.tsx";
import { PastedTableForm } from "./pasted-table-form.tsx";
import { readCell } from "./read-cell.ts";
import { moveChoices, stepChoices, withNext } from "./row-choices.ts";
import { RowDetails } from "./row-details.tsx";
import { revealRow } from "./row-sight.ts";
import type { Side } from "./row-tools.tsx";
import { RowTools } from "./row-tools.tsx";
import type { Draft, TableRow } from "./sheet-rows.ts";
import { HEADS, tableRows } from "./sheet-rows.ts";
import type { SheetActs } from "./sheet-table.tsx";
import { SheetTable } from "./sheet-table.tsx";
import {
  HandOverForm,
  LinkForm,
  lagOf,
  MoveForm,
  PasteForm,
  ReplaceForm,
  SaveForm,
  SplitForm,
} from "./side-forms.tsx";
import { fieldChanges } from "./step-details.tsx";
import { UndoTools } from "./undo-tools.tsx";
import { useAnswers } from "./use-answers.ts";
import { useDraft } from "./use-draft.ts";
import { useHalfTyped } from "./use-half-typed.ts";
import type { OpenManuscript } from "./use-manuscript.ts";
import { useStrandTargets } from "./use-strand-targets.tsx";
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

const TimelinePane = lazy(async () => ({ default: (await import("./timeline-pane.tsx")).TimelinePane }));

/** The screen on which a procedure is written: the table or the lists, what is chosen beside it, and what it comes to. */
export function WriteView(props: WriteViewProps) {
  const { open, start, light, revision, onSave, onSaveFile, saved } = props;
  const { manuscript, rows: selected, make, change, select } = open;
  const { file } = manuscript;
  const router = useIonRouter();
  const [tab, setTab] = useState<Tab>("table");
  const [side, setSide] = useState<Side>("details");
  const [lag, setLag] = useState("");
  const { draft, beginDraft, written, unwritten, choose } = useDraft(file, make);
  /** The step that was pointed at last, to come before the one that is selected. */
  const [linked, setLinked] = useState<string | null>(null);
  const [table, setTable] = useState<PastedTable | null>(null);
  const beside = useRef<HTMLDivElement>(null);
  const before = useRef<readonly TableRow[]>([]);
  const rows = useMemo(() => {
    before.current = tableRows(file, before.current);
    return before.current;
  }, [file]);
  const strands = useMemo(() => strandsOf(file.crew), [file.crew]);
  const last = selected.at(-1) ?? null;
  const at = rows.find(({ key }) => key === last)?.row ?? null;
  const step = at?.kind === "step" ? at.step : null;
  const stepId = step?.id ?? null;
  const answers = useAnswers({
    text: manuscript.text,
    start,
    light,
    isDrawn: tab === "timeline",
    step: side === "details" || side === "hand-over" ? stepId : null,
  });
  const { offers, isBroken } = answers;

  const where = () => last ?? rows.findLast(({ row }) => row?.kind !== "contingency" && row)?.key ?? HEADS;
  const begin = (kind: Draft["kind"], behind = where()) => {
    beginDraft(kind, behind);
    setTab("table");
    setSide("details");
    setLinked(null);
  };
  const acts: SheetActs = {
    pointed: side === "link" && step ? link : null,
    select: (keys) => {
      select(keys);
      setLinked(null);
      if (side !== "findings" && side !== "joint") setSide("details");
    },
    read: (key, column, text) => readCell(file, key, column, text),
    edited: (key, column, value) => {
      if (column === "after") make("link", waitsSet(file, key, value as NonNullable<FileStep["after"]>));
      else if (placedStep(file, key))
        change("set", fieldChanges("steps", key, column === "who" ? "by" : column, value));
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
    move: (moved, to, scroll) => void make("move", rowsMoved(file, moved, to), scroll),
    whyNotMoved: (moved, to) => rowsMoved(file, moved, to).problem,
    add: (behind) => begin("step", behind),
    addTask: () => begin("task"),
    written,
    unwritten,
    drop: () => void make("drop", rowsDropped(file, selected)),
    duplicate: () => void make("duplicate", rowsDuplicated(file, selected)),
  };
  function link(to: string) {
    const time = parseDuration(lagOf(lag) ?? "");
    if (!step || time === null || !make("link", stepLinked(file, step.id, to, time))) return;
    setSide("details");
    setLinked(to);
  }
  const turn = useCallback(
    (crew: string) => {
      if (stepId !== null) make("joint", performerTurned(file, stepId, crew));
    },
    [make, file, stepId],
  );
  const overBraid = useStrandTargets({
    row: side === "joint" ? at : null,
    crew: file.crew,
    strands,
    onTurn: turn,
    select,
  });
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
  const reveal = (row: string) => requestAnimationFrame(() => revealRow(open.shownIn.current, row));
  const goToStep = (id: string) => {
    setTab("table");
    select([id]);
    setSide("details");
    reveal(id);
  };
  const goToTab = (to: Tab) => {
    if (to === "table" && tab !== "table" && last) reveal(last);
    // What is pointed at stands in the table and on the timeline.
    if (to === "lists" || to === "text") setSide(side === "findings" || side === "save" ? side : "details");
    setTab(to);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape" && (side === "link" || side === "joint")) setSide("details");
  };
  const mend = ({ mend: changes }: Finding) => {
    if (changes) change("mend", changes);
  };

  useUndoKeys(open);
  const halfTyped = useHalfTyped(open.name, manuscript);
  const typed = useTypedText(open.type);

  const findings = answers.findings?.value ?? NO_FINDINGS;
  const errors = findings.filter(({ level }) => level === "error").length;
  const stepRows = stepChoices(rows);
  const moveRows = moveChoices(rows);
  const isOfRows = tab === "table" || tab === "timeline";
  return (
    <article ref={open.shownIn} className="write" onKeyDown={onKeyDown} {...halfTyped.handlers}>
      <HeadTools tab={tab} count={findings.length} onTab={goToTab} onSide={setSide} onSaveFile={onSaveFile} />
      <Figures answers={answers} limit={file.limits?.elapsed} />
      <Notices open={open} saved={saved} halfTyped={halfTyped} />
      <div className="write-bar write-row-bar" role="toolbar" aria-label={words("write/row-tools")}>
        <UndoTools open={open} />
        {isOfRows && (
          <RowTools
            count={selected.length}
            isStep={step !== null}
            side={side}
            acts={{
              ...acts,
              copy,
              paste: askPaste,
              join: () => void make("join", stepsJoined(file, selected)),
              selectNext: () => select(withNext(rows, selected)),
            }}
            onSide={(to) => {
              setLag("");
              setSide(to);
              if (to !== "joint" || !last) return;
              setTab("table");
              reveal(last);
            }}
          />
        )}
      </div>
      <div className="write-body" data-tab={tab}>
        <div className="write-main">
          {tab === "table" && (
            <SheetTable
              rows={rows}
              strands={strands}
              selected={selected}
              findings={findings}
              isOld={answers.findings?.isOld === true}
              acts={acts}
              overBraid={overBraid}
              draft={draft}
            />
          )}
          {tab === "timeline" && (
            <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
              <TimelinePane
                timeline={answers.plan?.value.timeline ?? null}
                isBehind={answers.plan?.isOld !== false}
                isBroken={isBroken}
                selected={last}
                isLinking={side === "link" && step !== null}
                onSelect={(id) => acts.select([id])}
                onLink={link}
              />
            </Suspense>
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
          <GestureNotes file={file} problem={open.problem} step={step} linked={linked} />
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
              lag={lag}
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
              offers={offers?.value ?? null}
              isReady={isBroken || offers?.isOld === false}
              onHandOver={(what) => {
                if (make("hand-over", handedOver(file, what, offers?.value ?? null))) setSide("details");
              }}
            />
          )}
          {side === "joint" && step && (
            <JointForm file={file} step={step} onTurn={turn} onEnd={() => setSide("details")} />
          )}
          {side === "details" && isOfRows && draft && <DraftForm file={file} draft={draft} onBy={choose} />}
          {side === "details" && isOfRows && !draft && (
            <RowDetails
              file={file}
              row={at}
              offers={offers}
              onField={(changes, renamed) =>
                make(renamed === null ? "set" : "rename", {
                  changes,
                  rows: renamed === null ? selected : [renamed],
                  problem: null,
                })
              }
            />
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
