import { useMemo } from "react";
import type { Briefing, BriefingKind, Speed } from "../../core/briefing/index.ts";
import { captionGrain, captionPlayedAt } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { groundOf, momentOf } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { Caption } from "./caption.tsx";
import { SitePicture } from "./site-picture.tsx";

interface BesideViewProps {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
  readonly pet: Duration;
  readonly speed: Speed;
  readonly isPlaying: boolean;
  /** The room that its map is laid out for, in px. */
  readonly size: { readonly width: number; readonly height: number; readonly zoom: number };
}

/** Another revision or another walk at the same PET, beside the one that is briefed ([BRF1]). */
export function BesideView({ briefing, kind, pet, speed, isPlaying, size }: BesideViewProps) {
  const { course } = briefing;
  const { procedure } = course.outline;
  const ground = useMemo(() => groundOf(procedure, size, inWords), [procedure, size]);
  const moment = useMemo(() => momentOf(course, pet), [course, pet]);
  return (
    <section className="brief-beside">
      <h2 className="brief-kind">{words(`brief/one-of-${kind}`, { revision: procedure.revision ?? "–" })}</h2>
      <SitePicture ground={ground} moment={moment} name={words("brief/beside-map")} />
      <Caption lines={captionPlayedAt(briefing, pet, captionGrain(speed))} isPlaying={isPlaying} />
    </section>
  );
}
