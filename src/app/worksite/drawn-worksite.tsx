import type { ReactNode } from "react";
import type { Drawing } from "../../core/worksite/index.ts";
import { WORKSITE_STYLE } from "../../core/worksite/index.ts";
import type { MovingDrawing } from "./drawn-layers.tsx";
import { DrawnLayers, MovingLayers } from "./drawn-layers.tsx";

type Size = Pick<Drawing, "width" | "height">;

interface DrawnWorksiteProps {
  readonly drawing: Drawing;
  readonly name: string | null;
}

/** A drawing of the worksite as it stands, for the map and for paper. What it shows is told in words beside it. */
export function DrawnWorksite({ drawing, name }: DrawnWorksiteProps) {
  return (
    <Sheet size={drawing} name={name}>
      <DrawnLayers layers={drawing.layers} />
    </Sheet>
  );
}

/** A drawing of the worksite that moves. */
export function MovingWorksite({ size, drawing }: { readonly size: Size; readonly drawing: MovingDrawing }) {
  return (
    <Sheet size={size} name={null}>
      <MovingLayers drawing={drawing} />
    </Sheet>
  );
}

interface SheetProps {
  readonly size: Size;
  readonly name: string | null;
  readonly children: ReactNode;
}

function Sheet({ size: { width, height }, name, children }: SheetProps) {
  return (
    <svg
      className="worksite"
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={name ?? undefined}
      aria-hidden={name === null}
    >
      <style>{WORKSITE_STYLE}</style>
      {children}
    </svg>
  );
}
