import { useMemo } from "react";
import type { WorksiteGround, WorksiteMoment } from "../../core/worksite/index.ts";
import { drawingOf, WORKSITE_STYLE } from "../../core/worksite/index.ts";
import { DrawnLayer, useScene } from "../worksite/index.ts";

/** The layers that a question hides: they are its answer. */
const ANSWER = /layer-(people|lines)/;

interface SitePictureProps {
  readonly ground: WorksiteGround;
  readonly moment: WorksiteMoment;
  /** What the picture is, for a screen reader. */
  readonly name: string;
  /** True while people, lines and items are not shown. */
  readonly isAsked?: boolean;
}

/** The worksite at a moment, as large as there is room. */
export function SitePicture({ ground, moment, name, isAsked = false }: SitePictureProps) {
  const scene = useScene(ground, moment, "full");
  const { width, height, layers } = useMemo(() => drawingOf(scene), [scene]);
  return (
    <svg className="worksite brief-map" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      <style>{WORKSITE_STYLE}</style>
      {layers.map((layer) => {
        const kind = String(layer.attributes["class"]);
        return isAsked && ANSWER.test(kind) ? null : <DrawnLayer key={kind.split(" ")[0]} node={layer} />;
      })}
    </svg>
  );
}
