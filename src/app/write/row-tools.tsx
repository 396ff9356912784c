import { words } from "../../words/index.ts";
import { Tool } from "./tool.tsx";

/** What stands beside the table. */
export type Side =
  | "details"
  | "findings"
  | "link"
  | "joint"
  | "hand-over"
  | "search"
  | "split"
  | "move"
  | "paste"
  | "table"
  | "save";

/** What the buttons of rows do that ask nothing more. */
export interface RowToolActs {
  readonly add: () => void;
  readonly addTask: () => void;
  readonly shift: (by: "up" | "down") => void;
  readonly duplicate: () => void;
  readonly join: () => void;
  readonly copy: () => void;
  readonly paste: () => void;
  readonly drop: () => void;
  readonly selectNext: () => void;
}

interface RowToolsProps {
  /** How many rows are selected. */
  readonly count: number;
  /** Whether the last one selected is a step. */
  readonly isStep: boolean;
  readonly side: Side;
  readonly acts: RowToolActs;
  readonly onSide: (side: Side) => void;
}

/** The buttons with which rows are added, moved, linked and taken out ([WRT2]). */
export function RowTools({ count, isStep, side, acts, onSide }: RowToolsProps) {
  const none = count === 0;
  // What is pointed at ends by the button that began it.
  const turn = (mode: "link" | "joint") => onSide(side === mode ? "details" : mode);
  return (
    <>
      <Tool says={words("write/add-step")} isOff={false} onTool={() => acts.add()} />
      <Tool says={words("write/add-task")} isOff={false} onTool={acts.addTask} />
      <Tool says={words("write/up")} isOff={none} onTool={() => acts.shift("up")} />
      <Tool says={words("write/down")} isOff={none} onTool={() => acts.shift("down")} />
      <Tool
        says={words("write/link")}
        isOff={!isStep}
        isPressed={side === "link"}
        onTool={() => turn("link")}
      />
      <Tool
        says={words("write/joint")}
        isOff={!isStep}
        isPressed={side === "joint"}
        onTool={() => turn("joint")}
      />
      <Tool says={words("write/hand-over")} isOff={!isStep} onTool={() => onSide("hand-over")} />
      <details className="write-menu">
        <summary className="plain-button">{words("write/more-tools")}</summary>
        <div className="panel-acts">
          <Tool says={words("write/move-to")} isOff={none} onTool={() => onSide("move")} />
          <Tool says={words("write/duplicate")} isOff={none} onTool={acts.duplicate} />
          <Tool says={words("write/split")} isOff={!isStep} onTool={() => onSide("split")} />
          <Tool says={words("write/join")} isOff={count < 2} onTool={acts.join} />
          <Tool says={words("write/copy")} isOff={none} onTool={acts.copy} />
          <Tool says={words("write/paste")} isOff={false} onTool={acts.paste} />
          <Tool says={words("write/search")} isOff={false} onTool={() => onSide("search")} />
          <Tool says={words("write/drop")} isOff={none} onTool={acts.drop} />
          <Tool says={words("write/select-more")} isOff={none} onTool={acts.selectNext} />
        </div>
      </details>
    </>
  );
}
