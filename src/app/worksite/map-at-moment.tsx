import { useMemo, useState, useSyncExternalStore } from "react";
import type { Course } from "../../core/course/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { clockText } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { LazyWorksiteMap } from "./lazy-worksite-map.tsx";
import type { ShownPet } from "./shown-pet.ts";
import { useWrittenAt } from "./shown-pet.ts";
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
  const shown = useMemo(
    (): ShownPet => ({ pet: () => moment.pet() ?? now ?? NO_TIME, subscribe: moment.subscribe }),
    [moment, now],
  );
  const end = Math.max(course.finish, planned?.finish ?? 0, now ?? 0);
  return (
    <details className="map-at-moment" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <MomentSummary shown={shown} />
      {isOpen && (
        <>
          <MomentField moment={moment} shown={shown} end={end} />
          {now !== null && <BackToNow moment={moment} />}
          <LazyWorksiteMap course={course} shown={shown} planned={planned} onKeepLayout={onKeepLayout} />
        </>
      )}
    </details>
  );
}

function MomentSummary({ shown }: { readonly shown: ShownPet }) {
  const summary = useWrittenAt<HTMLElement>(shown, (element, pet) => {
    element.textContent = words("map/at-moment", { pet });
  });
  return <summary ref={summary} />;
}

interface MomentFieldProps {
  readonly moment: TouchedMoment;
  readonly shown: ShownPet;
  readonly end: number;
}

function MomentField({ moment, shown, end }: MomentFieldProps) {
  const slider = useWrittenAt<HTMLInputElement>(shown, (element, pet) => {
    element.value = String(pet);
    element.setAttribute("aria-valuetext", words("map/moment-at", { clock: clockText(pet) }));
  });
  return (
    <label className="field">
      <span>{words("map/moment")}</span>
      <input
        ref={slider}
        type="range"
        min={0}
        max={Math.ceil(end / MINUTE) * MINUTE}
        step={MINUTE}
        onChange={(event) => moment.touch(Number(event.target.value) as Duration)}
      />
    </label>
  );
}

/** Shown while another moment than the present is. */
function BackToNow({ moment }: Pick<MomentFieldProps, "moment">) {
  const isTouched = useSyncExternalStore(moment.subscribe, () => moment.pet() !== null);
  if (!isTouched) return null;
  return (
    <button type="button" className="plain-button" onClick={() => moment.touch(null)}>
      {words("map/to-now")}
    </button>
  );
}

const NO_TIME = 0 as Duration;
