import { words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";

interface MapButtonsProps {
  /** True while the whole map is seen: there is nowhere to move it. */
  readonly isWhole: boolean;
  readonly onEnlarge: () => void;
  readonly onShrink: () => void;
  /** Looks further to one side: -1, 0 or 1 across and down. */
  readonly onPan: (across: number, down: number) => void;
  readonly onFit: () => void;
  /** Opens the help where the screen has a place of its own for it; `null` where the button opens it itself. */
  readonly onHelp: (() => void) | null;
}

/** The buttons that do what a drag, two fingers or the wheel do. */
export function MapButtons({ isWhole, onEnlarge, onShrink, onPan, onFit, onHelp }: MapButtonsProps) {
  const sides = [
    ["map/left-side", "←", -1, 0],
    ["map/upper-side", "↑", 0, -1],
    ["map/lower-side", "↓", 0, 1],
    ["map/right-side", "→", 1, 0],
  ] as const;
  return (
    <div className="map-buttons">
      <button type="button" className="plain-button" aria-label={words("map/larger")} onClick={onEnlarge}>
        +
      </button>
      <button
        type="button"
        className="plain-button"
        aria-label={words("map/smaller")}
        disabled={isWhole}
        onClick={onShrink}
      >
        −
      </button>
      <button type="button" className="plain-button" disabled={isWhole} onClick={onFit}>
        {words("map/whole")}
      </button>
      {!isWhole &&
        sides.map(([key, sign, across, down]) => (
          <button
            key={key}
            type="button"
            className="plain-button"
            aria-label={words(key)}
            onClick={() => onPan(across, down)}
          >
            {sign}
          </button>
        ))}
      {onHelp ? (
        <button type="button" className="plain-button" onClick={onHelp}>
          {words("parts/help")}
        </button>
      ) : (
        <HelpButton screen="map" />
      )}
    </div>
  );
}
