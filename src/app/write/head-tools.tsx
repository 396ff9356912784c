import { words } from "../../words/index.ts";
import type { Side } from "./row-tools.tsx";
import { Tool } from "./tool.tsx";

const TABS = ["table", "timeline", "lists", "text"] as const;

/** What of a manuscript is shown. */
export type Tab = (typeof TABS)[number];

interface HeadToolsProps {
  readonly tab: Tab;
  /** How many findings there are. */
  readonly count: number;
  readonly onTab: (tab: Tab) => void;
  readonly onSide: (side: Side) => void;
  readonly onSaveFile: () => void;
}

/** The buttons above everything: what is shown, its findings, and saving. */
export function HeadTools({ tab, count, onTab, onSide, onSaveFile }: HeadToolsProps) {
  return (
    <div className="write-bar" role="toolbar" aria-label={words("write/tools")}>
      {TABS.map((one) => (
        <Tool
          key={one}
          says={words(`write/tab-${one}`)}
          isOff={false}
          isPressed={tab === one}
          onTool={() => onTab(one)}
        />
      ))}
      <Tool says={words("write/findings-count", { count })} isOff={false} onTool={() => onSide("findings")} />
      <Tool says={words("write/save")} isOff={false} onTool={() => onSide("save")} />
      <Tool says={words("write/save-file")} isOff={false} onTool={onSaveFile} />
    </div>
  );
}
