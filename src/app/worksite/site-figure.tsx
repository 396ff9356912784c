import { useMemo } from "react";
import type { Course } from "../../core/course/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { drawingOf, groundOf, momentOf, worksiteScene } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { DrawnWorksite } from "./drawn-worksite.tsx";
import "./site-figure.css";

/** The room of the figure on a sheet of A4 or letter between its margins, in px. */
const SHEET = { width: 660, height: 440, zoom: 1 } as const;

/** The worksite at PET 0 as a figure on paper ([MAP5]). Without places there is none. */
export function SiteFigure({ course }: { readonly course: Course }) {
  const { procedure } = course.outline;
  const { drawing, numbered } = useMemo(() => {
    const ground = groundOf(procedure, SHEET, inWords);
    const moment = momentOf(course, 0 as Duration);
    const scene = worksiteScene(ground, moment, { say: inWords, detail: "brief" });
    return { drawing: drawingOf(scene), numbered: ground.numbered };
  }, [procedure, course]);
  if (procedure.places.length === 0) return null;
  return (
    <section className="print-keep site-figure">
      <h2>{words("map/figure")}</h2>
      <DrawnWorksite drawing={drawing} name={words("map/figure-says", { count: procedure.places.length })} />
      {numbered.length > 0 && (
        <ol>
          {numbered.map(({ number, place, name }) => (
            <li key={place} value={number}>
              {name}
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
