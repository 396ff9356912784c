import { useMemo } from "react";
import type { Briefing, BriefingKind, Speed } from "../../core/briefing/index.ts";
import { captionGrain } from "../../core/briefing/index.ts";
import { groundOf } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { Caption } from "./caption.tsx";
import { SitePicture } from "./site-picture.tsx";
import { useCaption } from "./use-caption.ts";

interface BesideViewProps {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
  readonly shown: ShownPet;
  readonly speed: Speed;
  readonly isPlaying: boolean;
  /** The room that its map is laid out for, in px. */
  readonly size: { readonly width: number; readonly height: number; readonly zoom: number };
}

/** Another revision or another walk at the same PET, beside the one that is briefed ([BRF1]). */
export function BesideView({ briefing, kind, shown, speed, isPlaying, size }: BesideViewProps) {
  const { course } = briefing;
  const { procedure } = course.outline;
  const ground = useMemo(() => groundOf(procedure, size, inWords), [procedure, size]);
  const lines = useCaption(briefing, shown, captionGrain(speed));
  return (
    <section className="brief-beside">
      <h2 className="brief-kind">{words(`brief/one-of-${kind}`, { revision: procedure.revision ?? "–" })}</h2>
      <SitePicture
        ground={ground}
        course={course}
        shown={shown}
        name={words("brief/beside-map")}
        isPlaying={isPlaying}
      />
      <Caption lines={lines} isPlaying={isPlaying} />
    </section>
  );
}
