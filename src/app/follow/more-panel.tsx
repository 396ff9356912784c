import type { IgnoredEntry, Ledger } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { ThemeField } from "../parts/index.ts";
import { TextsField } from "../texts/index.ts";

interface MorePanelProps {
  readonly ledger: Ledger;
  readonly ignored: readonly IgnoredEntry[];
  readonly actor: string;
  readonly onActor: (actor: string) => void;
  readonly onGo: (to: "shelf" | "timeline" | "review" | "handover") => void;
  readonly onExport: () => void;
  /** Goes on to closing the walk; `null` where that may not be done. */
  readonly onCloseWalk: (() => void) | null;
  readonly onMap: () => void;
  readonly onHelp: () => void;
  readonly onLink: () => void;
  /** Goes on to an amendment of the plan; `null` where that may not be done. */
  readonly onAmend: (() => void) | null;
  /** Goes on to the surprises of a rehearsal; `null` for whoever is no trainer. */
  readonly onSurprises: (() => void) | null;
  /** Goes on to the items; `null` for a reader who may not enter anything. */
  readonly onItems: (() => void) | null;
  /** Goes on to what was done on paper; `null` where no step may be marked. */
  readonly onPaper: (() => void) | null;
  readonly onClose: () => void;
}

/** Who uses this device, the other screens of the walk, its log as a file, and the entries that had no effect. */
export function MorePanel({
  ledger,
  ignored,
  actor,
  onActor,
  onGo,
  onExport,
  onCloseWalk,
  onMap,
  onHelp,
  onLink,
  onSurprises,
  onItems,
  onAmend,
  onPaper,
  onClose,
}: MorePanelProps) {
  const { outline } = ledger.inForce;
  const names = outline.crew.some(({ id }) => id === actor) || actor === "follower" ? [] : [actor];
  return (
    <SidePanel title={words("panel/more")} onClose={onClose}>
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={onHelp}>
          {words("parts/help")}
        </button>
        <button type="button" className="plain-button" onClick={onLink}>
          {words("panel/link")}
        </button>
        <button type="button" className="plain-button" onClick={onMap}>
          {words("map/title")}
        </button>
        {onSurprises && (
          <button type="button" className="plain-button" onClick={onSurprises}>
            {words("train/title")}
          </button>
        )}
        {onAmend && (
          <button type="button" className="plain-button" onClick={onAmend}>
            {words("amending/title")}
          </button>
        )}
        {onItems && (
          <button type="button" className="plain-button" onClick={onItems}>
            {words("follow/items")}
          </button>
        )}
        {onPaper && (
          <button type="button" className="plain-button" onClick={onPaper}>
            {words("paper/title")}
          </button>
        )}
        <button type="button" className="plain-button" onClick={() => onGo("timeline")}>
          {words("parts/timeline")}
        </button>
        <button type="button" className="plain-button" onClick={() => onGo("review")}>
          {words("panel/review-so-far")}
        </button>
        <button type="button" className="plain-button" onClick={() => onGo("handover")}>
          {words("handover/kind")}
        </button>
        <button type="button" className="plain-button" onClick={onExport}>
          {words("panel/export-log")}
        </button>
        <button type="button" className="plain-button" onClick={() => onGo("shelf")}>
          {words("parts/shelf")}
        </button>
        {onCloseWalk && (
          <button type="button" className="plain-button" onClick={onCloseWalk}>
            {words("follow/close-walk")}
          </button>
        )}
      </div>
      <label className="field">
        <span>{words("panel/entries-made-by")}</span>
        <select value={actor} onChange={(event) => onActor(event.target.value)}>
          {outline.crew.map(({ id, call }) => (
            <option key={id} value={id}>
              {call}
            </option>
          ))}
          {names.map((name) => (
            <option key={name}>{name}</option>
          ))}
          <option value="follower">{words("panel/another-follower")}</option>
        </select>
      </label>
      <TextsField />
      <ThemeField />
      <h3>{words("panel/without-effect")}</h3>
      {ignored.length === 0 ? (
        <p className="hint">{words("panel/every-entry-counts")}</p>
      ) : (
        <ul className="plain-list">
          {ignored.map(({ source, id, reason }) => (
            <li key={`${source} ${id}`}>
              {words("panel/entry-ignored", { entry: String(Number(id) || id), why: inWords(reason) })}
            </li>
          ))}
        </ul>
      )}
    </SidePanel>
  );
}
