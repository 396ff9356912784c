import type { Entry } from "../../core/log/index.ts";
import type { WalkPhase } from "../../core/walk/index.ts";
import { walkMay } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { TextsTurn } from "../texts/index.ts";
import type { Panel } from "./follow-panels.tsx";
import type { Entering } from "./use-entering.ts";

/** The latest tap of a device that can be taken back. */
export interface LastTap {
  readonly entries: readonly Entry[];
  readonly words: string;
}

interface FollowToolsProps {
  readonly phase: WalkPhase;
  readonly entering: Entering;
  /** The latest tap of this device that can be taken back, and what it entered; `null` when there is none. */
  readonly last: LastTap | null;
  /** What this device may do in the walk. */
  readonly may: { readonly mark: boolean };
  readonly onPanel: (panel: Panel) => void;
  /** Opens the map, or closes it. */
  readonly onMap: () => void;
  /** Scrolls the list back to where the walk is; `null` while it is there. */
  readonly toNow: (() => void) | null;
}

/** The foot of the follow screen: the last entry with its undo button, and the actions that are rarely needed. */
export function FollowTools({ phase, entering, last, may, onPanel, onMap, toNow }: FollowToolsProps) {
  const { undo, remark } = entering;
  return (
    <footer className="follow-tools">
      <div className="follow-just">
        <p role="status">{remark ?? last?.words}</p>
        {may.mark && !remark && !last && (
          <p className="hint follow-nothing-yet">{words("follow/nothing-yet")}</p>
        )}
        {last && may.mark && (
          <button type="button" className="plain-button" onClick={() => undo(last.entries)}>
            {words("follow/undo")}
          </button>
        )}
        {toNow && (
          <button type="button" className="plain-button back-to-now" onClick={toNow}>
            {words("follow/back-to-now")}
          </button>
        )}
      </div>
      <nav className="tool-buttons" aria-label={words("follow/walk")}>
        {may.mark && (
          <>
            {walkMay(phase, "hold") && <Tool onPress={() => onPanel("hold")}>{words("follow/hold")}</Tool>}
            <Tool onPress={() => onPanel("notes")}>{words("follow/notes")}</Tool>
            <Tool name="tool-items" onPress={() => onPanel("items")}>
              {words("follow/items")}
            </Tool>
            <Tool onPress={() => onPanel("readings")}>{words("follow/readings")}</Tool>
          </>
        )}
        <Tool name="tool-map" onPress={onMap}>
          {words("map/title")}
        </Tool>
        <Tool onPress={() => onPanel("contingencies")}>{words("follow/contingencies")}</Tool>
        {walkMay(phase, "mark") && (
          <Tool name="tool-fit" onPress={() => onPanel("fit")}>
            {words("fit/tool")}
          </Tool>
        )}
        <TextsTurn />
        <Tool onPress={() => onPanel("more")}>{words("follow/more")}</Tool>
      </nav>
    </footer>
  );
}

function Tool({
  onPress,
  name = "",
  children,
}: {
  readonly onPress: () => void;
  /** A class name by which the styles leave the button out where there is no room; it is in the panel More or in the bar as well. */
  readonly name?: string;
  readonly children: string;
}) {
  return (
    <button type="button" className={`plain-button ${name}`} onClick={onPress}>
      {children}
    </button>
  );
}
