import { useMemo } from "react";
import type { Briefing, BriefingKind } from "../../core/briefing/index.ts";
import { captionGrain } from "../../core/briefing/index.ts";
import { groundOf } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { Caption } from "./caption.tsx";
import { Clock } from "./clock.tsx";
import { SitePicture } from "./site-picture.tsx";
import { useCalmPet } from "./use-calm-pet.ts";
import { useCaption } from "./use-caption.ts";
import { useAudience } from "./use-channel.ts";
import { usePlayback } from "./use-playback.ts";
import "./brief.css";

/** The room that the map of the audience is laid out for, in px: few and large letters, in the shape that a wide screen leaves beside title and caption. */
const MAP = { width: 880, height: 444, zoom: 1 } as const;

interface AudienceViewProps {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
  readonly name: string;
}

/** The window for the audience: a large map, the caption and the clock, kept in step by the presenter's window ([BRF2]). */
export function AudienceView({ briefing, kind, name }: AudienceViewProps) {
  const { course, finish } = briefing;
  const { shown: played, speed, isPlaying, follow } = usePlayback(briefing, () => finish);
  const { followed, hasClosed, hasOther, isSilent } = useAudience(name, follow);
  const shown = useCalmPet(briefing, played, isPlaying);
  const ground = useMemo(() => groundOf(course.outline.procedure, MAP, inWords), [course]);
  const lines = useCaption(briefing, shown, captionGrain(speed));
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
        <Clock shown={played} speed={isPlaying ? speed : 0} />
      </header>
      <p role="status" className="brief-trouble">
        {trouble}
      </p>
      <SitePicture
        ground={ground}
        course={course}
        shown={shown}
        name={words("brief/map-now")}
        isAsked={followed?.isAsked ?? false}
        isPlaying={isPlaying}
      />
      <Caption lines={lines} isPlaying={isPlaying} />
    </main>
  );
}
