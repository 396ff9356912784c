import type { Drawing } from "../../core/worksite/index.ts";
import { WORKSITE_STYLE } from "../../core/worksite/index.ts";
import { DrawnLayer } from "./drawn-layer.tsx";

/** A drawing of the worksite as it stands, for the map and for paper. What it shows is told in words beside it. */
export function DrawnWorksite({
  drawing,
  name,
}: {
  readonly drawing: Drawing;
  readonly name: string | null;
}) {
  return (
    <svg
      className="worksite"
      width={drawing.width}
      height={drawing.height}
      viewBox={`0 0 ${drawing.width} ${drawing.height}`}
      role="img"
      aria-label={name ?? undefined}
      aria-hidden={name === null}
    >
      <style>{WORKSITE_STYLE}</style>
      {drawing.layers.map((layer) => (
        <DrawnLayer key={String(layer.attributes["class"])} node={layer} />
      ))}
    </svg>
  );
}
