import { memo, useCallback, useLayoutEffect, useRef } from "react";
import type { DrawnNode } from "../../core/worksite/index.ts";
import { WrittenLayers } from "./written-layers.ts";

/** A group of the page, and what writes layers into it. */
function useWrittenLayers() {
  const group = useRef<SVGGElement>(null);
  const written = useRef<WrittenLayers | null>(null);
  const write = useCallback((layers: readonly DrawnNode[]) => {
    if (!group.current) return;
    written.current ??= new WrittenLayers(group.current);
    written.current.write(layers);
  }, []);
  return { group, write };
}

/** Layers of a drawing, which stand until their owner is drawn anew with others. */
export const DrawnLayers = memo(function DrawnLayers({ layers }: { readonly layers: readonly DrawnNode[] }) {
  const { group, write } = useWrittenLayers();
  useLayoutEffect(() => write(layers), [write, layers]);
  return <g ref={group} />;
});

/** Layers that tell when they are others, so that their owner need not be drawn anew for it. */
export interface MovingDrawing {
  readonly layers: () => readonly DrawnNode[];
  readonly subscribe: (onChange: () => void) => () => void;
}

/** Layers of a drawing that moves: at each picture only what differs is written ([MAP6]). */
export const MovingLayers = memo(function MovingLayers({ drawing }: { readonly drawing: MovingDrawing }) {
  const { group, write } = useWrittenLayers();
  useLayoutEffect(() => {
    const writeNow = () => write(drawing.layers());
    writeNow();
    return drawing.subscribe(writeNow);
  }, [write, drawing]);
  return <g ref={group} />;
});
