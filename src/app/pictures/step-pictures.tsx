import { useState } from "react";
import type { Procedure, Step } from "../../core/procedure/index.ts";
import { pictureSource } from "../../core/procedure/index.ts";
import { words } from "../../words/index.ts";
import "./pictures.css";

interface StepPicturesProps {
  readonly procedure: Procedure;
  readonly step: Step;
}

/**
 * The pictures of a step, each enlarged in its place by a tap ([MAP3]). They are images alone: nothing in them runs.
 * Without pictures nothing is drawn.
 */
export function StepPictures({ procedure, step }: StepPicturesProps) {
  const [large, setLarge] = useState<string | null>(null);
  const shown = step.pictures.flatMap((id) => procedure.pictures.find((picture) => picture.id === id) ?? []);
  if (shown.length === 0) return null;
  return (
    <ul className="step-pictures">
      {shown.map((picture) => {
        const { id, label } = picture;
        const isLarge = large === id;
        const name = label ?? id;
        return (
          <li key={id} data-large={isLarge || undefined}>
            <button
              type="button"
              aria-pressed={isLarge}
              aria-label={words("pictures/enlarge", { name })}
              onClick={() => setLarge(isLarge ? null : id)}
            >
              <img src={pictureSource(picture)} alt={name} />
            </button>
            <p>{name}</p>
          </li>
        );
      })}
    </ul>
  );
}
