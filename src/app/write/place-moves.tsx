import type { KeyboardEvent } from "react";
import { words } from "../../words/index.ts";

const WAY_NAMES = ["left", "right", "up", "down"] as const;
type Way = (typeof WAY_NAMES)[number];

/** To the right and up. */
const WAYS: Readonly<Record<Way, readonly [number, number]>> = {
  left: [-1, 0],
  right: [1, 0],
  up: [0, 1],
  down: [0, -1],
};
const KEYS: Readonly<Record<string, Way>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

interface PlaceMovesProps {
  /** Called with how far to the right and up, each -1, 0 or 1. */
  readonly onMove: (right: number, up: number) => void;
  /** Keeps the positions that were worked out in the file; `null` where all have their own. */
  readonly onKeepLayout: (() => void) | null;
}

/** The buttons that move a place, which take the arrow keys too. */
export function PlaceMoves({ onMove, onKeepLayout }: PlaceMovesProps) {
  const press = (event: KeyboardEvent) => {
    const way = KEYS[event.key];
    if (!way) return;
    event.preventDefault();
    onMove(...WAYS[way]);
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would need a legend that is seen.
    <div className="panel-acts" role="group" aria-label={words("write/map-move")} onKeyDown={press}>
      {WAY_NAMES.map((way) => (
        <button key={way} type="button" className="plain-button" onClick={() => onMove(...WAYS[way])}>
          {words(`write/map-${way}`)}
        </button>
      ))}
      {onKeepLayout && (
        <button type="button" className="plain-button" onClick={onKeepLayout}>
          {words("map/keep-layout")}
        </button>
      )}
    </div>
  );
}
