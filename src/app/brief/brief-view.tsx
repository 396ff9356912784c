import { useCallback, useMemo, useState } from "react";
import type { Briefing, BriefingKind } from "../../core/briefing/index.ts";
import {
  briefingFile,
  captionGrain,
  captionPlayedAt,
  quizStops,
  SPEEDS,
  sideBySide,
  stopAfter,
} from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { groundOf, momentOf } from "../../core/worksite/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { StepPictures } from "../pictures/index.ts";
import { useReadAt } from "../worksite/index.ts";
import { BesideView } from "./beside-view.tsx";
import { Caption } from "./caption.tsx";
import { ChapterList } from "./chapter-list.tsx";
import { Clock } from "./clock.tsx";
import { FilmForm } from "./film-form.tsx";
import { PresenterPanel } from "./presenter-panel.tsx";
import { QuizPanel } from "./quiz-panel.tsx";
import { SitePicture } from "./site-picture.tsx";
import { StripBar } from "./strip-bar.tsx";
import { useBriefKeys } from "./use-brief-keys.ts";
import { useCalmPet } from "./use-calm-pet.ts";
import { useCaption } from "./use-caption.ts";
import { usePresenter } from "./use-channel.ts";
import { useMedia } from "./use-media.ts";
import { usePlayback } from "./use-playback.ts";
import { useLocalVoice, useSpokenCaption } from "./use-spoken-caption.ts";
import "./brief.css";

/** The room that the map is laid out for, in px; it is drawn as wide as the page, so that letters stay large on a phone. */
const MAP = {
  wide: { width: 880, height: 520, zoom: 1 },
  narrow: { width: 460, height: 460, zoom: 1 },
} as const;

interface BriefViewProps {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
  /** What tells this briefing from others that are open on the device. */
  readonly name: string;
  /** The address of the window for the audience. */
  readonly audience: string;
  /** What is played beside it by the same clock; `null` for nothing. */
  readonly beside: { readonly briefing: Briefing; readonly kind: BriefingKind } | null;
}

/** A briefing on the presenter's own screen: map, captions and timeline played together ([BRF1]). */
export function BriefView({ briefing, kind, name, audience, beside }: BriefViewProps) {
  const { course, chapters } = briefing;
  const whole = useMemo(
    () => (beside ? sideBySide(briefing, beside.briefing) : briefing),
    [briefing, beside],
  );
  const { finish } = whole;
  const { procedure } = course.outline;
  const [isQuiz, setIsQuiz] = useState(false);
  const [isPresenting, setIsPresenting] = useState(false);
  const [isSpoken, setIsSpoken] = useState(false);
  const [isFilmed, setIsFilmed] = useState(false);
  const [answered, setAnswered] = useState<Duration | null>(null);
  const stops = useMemo(() => quizStops(briefing), [briefing]);
  const stopFrom = useCallback(
    (from: Duration) => (isQuiz ? (stopAfter(stops, from)?.pet ?? finish) : finish),
    [isQuiz, stops, finish],
  );
  const play = usePlayback(whole, stopFrom);
  useBriefKeys(play);
  const { shown: played, speed, isPlaying } = play;
  const shown = useCalmPet(whole, played, isPlaying);
  const size = useMedia("(max-width: 640px)") ? MAP.narrow : MAP.wide;
  const ground = useMemo(() => groundOf(procedure, size, inWords), [procedure, size]);
  const stop = useReadAt(played, (pet) =>
    isQuiz && !isPlaying ? (stops.find((one) => one.pet === pet) ?? null) : null,
  );
  const isAsked = stop !== null && answered !== stop.pet;
  const hasOther = usePresenter(name, played, { speed, isPlaying, isAsked });
  const voice = useLocalVoice(document.documentElement.lang || "en");
  const spoken = useCaption(briefing, shown, captionGrain(speed));
  useSpokenCaption(spoken.map(({ said }) => inWords(said)).join(" "), isSpoken ? voice : null, isPlaying);
  // What is said need not be read as well.
  const written = isSpoken && voice ? captionPlayedAt(briefing, shown.pet(), "task") : spoken;
  const moment = momentOf(course, shown.pet());
  const goOn = () => {
    setAnswered(null);
    play.toggle();
  };
  return (
    <div
      className="brief"
      data-beside={beside !== null || undefined}
      data-presents={isPresenting || undefined}
    >
      <p className="brief-kind">
        {beside
          ? words(`brief/one-of-${kind}`, { revision: procedure.revision ?? "–" })
          : words(`brief/of-${kind}`)}
        {course.windows.size > 0 && moment.isDark === null && ` · ${words("brief/light-not-known")}`}
      </p>
      {hasOther && <p role="status">{words("brief/other-presenter")}</p>}
      <SitePicture
        ground={ground}
        course={course}
        shown={shown}
        name={words("brief/map-now")}
        isAsked={isAsked}
        isPlaying={isPlaying}
      />
      <div className="brief-told">
        {stop ? (
          <QuizPanel
            briefing={briefing}
            stop={stop}
            isAnswered={!isAsked}
            onAnswer={() => setAnswered(stop.pet)}
            onGoOn={goOn}
          />
        ) : (
          <Caption lines={written} isPlaying={isPlaying} />
        )}
        {moment.inWork.map((id) => {
          const step = course.outline.step(id)?.step;
          return step ? <StepPictures key={id} procedure={procedure} step={step} /> : null;
        })}
      </div>
      {beside && <BesideView {...beside} shown={shown} speed={speed} isPlaying={isPlaying} size={size} />}
      <div className="brief-controls">
        <Clock shown={played} speed={isPlaying ? speed : 0} />
        <button type="button" className="plain-button" onClick={() => play.task("back")}>
          {words("brief/task-back")}
        </button>
        <button type="button" className="plain-button" onClick={() => play.step("back")}>
          {words("brief/step-back")}
        </button>
        <button type="button" className="main-button brief-play" onClick={play.toggle}>
          {isPlaying ? words("brief/pause") : words("brief/play")}
        </button>
        <button type="button" className="plain-button" onClick={() => play.step("on")}>
          {words("brief/step-on")}
        </button>
        <button type="button" className="plain-button" onClick={() => play.task("on")}>
          {words("brief/task-on")}
        </button>
        <SelectField
          label={words("brief/speed")}
          choices={SPEEDS.map((one) => ({ id: String(one), name: words("brief/times", { speed: one }) }))}
          value={String(speed)}
          onValue={(next) => play.choose(SPEEDS.find((one) => String(one) === next) ?? speed)}
        />
      </div>
      <StripBar
        briefing={briefing}
        beside={beside?.briefing ?? null}
        finish={finish}
        shown={played}
        isPlaying={isPlaying}
        onPet={play.go}
      />
      {isPresenting && <PresenterPanel briefing={briefing} shown={played} speed={speed} />}
      <ChapterList chapters={chapters} shown={played} onChapter={play.go} />
      <div className="brief-more">
        <button
          type="button"
          className="plain-button"
          aria-pressed={isPresenting}
          onClick={() => {
            if (!isPresenting) window.open(audience, `audience:${name}`, "popup,width=1180,height=820");
            setIsPresenting(!isPresenting);
          }}
        >
          {words("brief/second-window")}
        </button>
        <button
          type="button"
          className="plain-button"
          aria-pressed={isQuiz}
          onClick={() => setIsQuiz(!isQuiz)}
        >
          {words("brief/quiz")}
        </button>
        <button
          type="button"
          className="plain-button"
          aria-pressed={isSpoken}
          disabled={voice === null}
          onClick={() => setIsSpoken(!isSpoken)}
        >
          {voice === null ? words("brief/no-voice") : words("brief/spoken")}
        </button>
        <button
          type="button"
          className="plain-button"
          onClick={() =>
            void saveFile(`${procedure.id}.briefing.html`, briefingFile(briefing, kind, inWords), "text/html")
          }
        >
          {words("brief/save-file")}
        </button>
        <button
          type="button"
          className="plain-button"
          aria-pressed={isFilmed}
          onClick={() => setIsFilmed(!isFilmed)}
        >
          {words("brief/film")}
        </button>
      </div>
      {isFilmed && <FilmForm briefing={briefing} kind={kind} />}
      <p className="hint">{words("brief/advises")}</p>
    </div>
  );
}
