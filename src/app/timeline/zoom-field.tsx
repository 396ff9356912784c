import { words } from "../../words/index.ts";
import { ZOOMS, type Zoom } from "./time-scale.ts";

/** How much of the time is seen at once. */
export function ZoomField({ zoom, onZoom }: { readonly zoom: Zoom; readonly onZoom: (zoom: Zoom) => void }) {
  return (
    <fieldset className="timeline-zoom">
      <legend className="heard-only">{words("timeline/zoom")}</legend>
      {ZOOMS.map((one) => (
        <button
          key={one.label}
          type="button"
          className="plain-button"
          aria-pressed={zoom === one.zoom}
          onClick={() => onZoom(one.zoom)}
        >
          {words(one.label)}
        </button>
      ))}
    </fieldset>
  );
}
