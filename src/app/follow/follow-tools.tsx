import type { WalkPhase } from "../../core/walk/index.ts";
import { walkMay } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import type { Panel } from "./follow-panels.tsx";
import type { Entering } from "./use-entering.ts";

interface FollowToolsProps {
  readonly phase: WalkPhase;
  readonly entering: Entering;
  /** What this device may do in the walk. */
  readonly may: { readonly mark: boolean; readonly close: boolean };
  readonly onPanel: (panel: Panel) => void;
  /** Scrolls the list back to where the walk is; `null` while it is there. */
  readonly toNow: (() => void) | null;
}

/** The foot of the follow screen: the last entry with its undo button, and the actions that are rarely needed. */
export function FollowTools({ phase, entering, may, onPanel, toNow }: FollowToolsProps) {
  const { just, undo, actions } = entering;
  return (
    <footer className="follow-tools">
      <div className="follow-just">
        <p role="status">{just?.words}</p>
        {just && may.mark && (
          <button type="button" className="plain-button" onClick={undo}>
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
            <Tool onPress={() => onPanel("notes")}>{words("follow/notes")}</Tool>
            <Tool onPress={() => onPanel("items")}>{words("follow/items")}</Tool>
            <Tool onPress={() => onPanel("readings")}>{words("follow/readings")}</Tool>
            {walkMay(phase, "lift") && (
              <Tool onPress={() => void actions.lift()}>{words("follow/lift-hold")}</Tool>
            )}
            {walkMay(phase, "hold") && <Tool onPress={() => onPanel("hold")}>{words("follow/hold")}</Tool>}
          </>
        )}
        {may.close && walkMay(phase, "close") && (
          <Tool onPress={() => onPanel("close")}>{words("follow/close-walk")}</Tool>
        )}
        <Tool onPress={() => onPanel("more")}>{words("follow/more")}</Tool>
      </nav>
    </footer>
  );
}

function Tool({ onPress, children }: { readonly onPress: () => void; readonly children: string }) {
  return (
    <button type="button" className="plain-button" onClick={onPress}>
      {children}
    </button>
  );
}
