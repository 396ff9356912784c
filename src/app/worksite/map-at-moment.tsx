import { useState, useSyncExternalStore } from "react";
import type { Course } from "../../core/course/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { LazyWorksiteMap } from "./lazy-worksite-map.tsx";
import type { TouchedMoment } from "./touched-moment.ts";
import "./map-at-moment.css";

interface MapAtMomentProps {
  readonly course: Course;
  readonly moment: TouchedMoment;
  /** The present PET of a walk; `null` for a plan. */
  readonly now: Duration | null;
  /** Keeps the layout of a sketch in the file; `null` where that cannot be done. */
  readonly onKeepLayout: (() => void) | null;
  /** What was planned, as a ghost under what was flown. */
  readonly planned?: Course | null;
  /** Open from the beginning, for a reader who came for a moment. */
  readonly isOpened?: boolean;
}

/** How far a key or a button moves the moment, in ms. */
const MINUTE = 60_000;

/** A map with the moment that it shows, opened by the reader ([MAP5]). */
export function MapAtMoment({
  course,
  moment,
  now,
  onKeepLayout,
  planned = null,
  isOpened = false,
}: MapAtMomentProps) {
  const [isOpen, setOpen] = useState(isOpened);
  const touched = useSyncExternalStore(moment.subscribe, moment.pet);
  const end = Math.max(course.finish, planned?.finish ?? 0, now ?? 0);
  const pet = touched ?? now ?? NO_TIME;
  return (
    <details className="map-at-moment" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words("map/at-moment", { pet })}</summary>
      {isOpen && (
        <>
          <label className="field">
            <span>{words("map/moment")}</span>
            <input
              type="range"
              min={0}
              max={Math.ceil(end / MINUTE) * MINUTE}
              step={MINUTE}
              value={pet}
              aria-valuetext={words("map/moment-at", { clock: clockText(pet) })}
              onChange={(event) => moment.touch(Number(event.target.value) as Duration)}
            />
          </label>
          {now !== null && touched !== null && (
            <button type="button" className="plain-button" onClick={() => moment.touch(null)}>
              {words("map/to-now")}
            </button>
          )}
          <LazyWorksiteMap course={course} pet={pet} planned={planned} onKeepLayout={onKeepLayout} />
        </>
      )}
    </details>
  );
}

const NO_TIME = 0 as Duration;
