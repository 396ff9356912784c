import { useMemo } from "react";
import type { Briefing, BriefingKind } from "../../core/briefing/index.ts";
import { captionGrain, captionPlayedAt, cueAt } from "../../core/briefing/index.ts";
import { groundOf, momentOf } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { Caption } from "./caption.tsx";
import { SitePicture } from "./site-picture.tsx";
import { useAudience } from "./use-channel.ts";
import { useIsCalm } from "./use-media.ts";
import { usePlayback } from "./use-playback.ts";
import "./brief.css";

/** The room that the map of the audience is laid out for, in px: few and large letters. */
const MAP = { width: 760, height: 440, zoom: 1 } as const;

interface AudienceViewProps {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
  readonly name: string;
}

/** The window for the audience: a large map, the caption and the clock, kept in step by the presenter's window ([BRF2]). */
export function AudienceView({ briefing, kind, name }: AudienceViewProps) {
  const { course, finish } = briefing;
  const { pet, speed, isPlaying, follow } = usePlayback(briefing, () => finish);
  const { followed, hasClosed, hasOther, isSilent } = useAudience(name, follow);
  const isCalm = useIsCalm();
  const shown = isCalm && isPlaying ? (cueAt(briefing, pet)?.pet ?? pet) : pet;
  const ground = useMemo(() => groundOf(course.outline.procedure, MAP, inWords), [course]);
  const moment = useMemo(() => momentOf(course, shown), [course, shown]);
  const trouble = hasClosed
    ? words("brief/presenter-closed")
    : isSilent
      ? words("brief/presenter-silent")
      : followed === null
        ? words("brief/no-presenter")
        : hasOther
          ? words("brief/two-presenters")
          : null;
  return (
    <main className="brief-audience">
      <header>
        <h1>{course.outline.procedure.title}</h1>
        <p className="brief-kind">{words(`brief/of-${kind}`)}</p>
        <b className="brief-clock">{words("brief/clock", { pet })}</b>
      </header>
      <p role="status" className="brief-trouble">
        {trouble}
      </p>
      <SitePicture
        ground={ground}
        moment={moment}
        name={words("brief/map-now")}
        isAsked={followed?.isAsked ?? false}
      />
      <Caption lines={captionPlayedAt(briefing, shown, captionGrain(speed))} isPlaying={isPlaying} />
    </main>
  );
}
