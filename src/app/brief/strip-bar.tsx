import { memo, useMemo } from "react";
import type { Briefing } from "../../core/briefing/index.ts";
import { STRIP_STYLE, stripOf } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { NO_TIME } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { DrawnLayers, useWrittenAt } from "../worksite/index.ts";

interface StripProps {
  readonly briefing: Briefing;
  /** Where the slider ends: the finish of the briefing, or of a longer one beside it. */
  readonly finish: Duration;
  readonly shown: ShownPet;
  readonly isPlaying: boolean;
  readonly onPet: (pet: Duration) => void;
}

interface StripBarProps extends StripProps {
  /** What is played beside it; `null` for nothing. */
  readonly beside: Briefing | null;
}

/** The timeline as a strip, with a slider above it that goes to any moment and says its time; one more for what is beside it. */
export function StripBar({ briefing, beside, ...shownStrip }: StripBarProps) {
  const { finish, shown, isPlaying, onPet } = shownStrip;
  const { from, width } = useStrip(briefing, finish);
  const slider = useWrittenAt(shown, writeSlider, grainOf(finish, isPlaying));
  return (
    <div className="brief-strip">
      <input
        ref={slider}
        type="range"
        min={0}
        max={finish}
        step={SECOND}
        aria-label={words("brief/scrubber")}
        style={{ marginLeft: `${(from / width) * 100 - 0.8}%` }}
        onChange={(event) => onPet(Number(event.target.value) as Duration)}
      />
      <Strip briefing={briefing} {...shownStrip} />
      {beside && <Strip briefing={beside} {...shownStrip} />}
    </div>
  );
}

const SECOND = 1000;

/** A strip is hardly more than so many px wide: while it is played no smaller way is written, since none is seen. */
const STRIP_PX = 2000;

const grainOf = (finish: Duration, isPlaying: boolean): Duration =>
  isPlaying ? ((finish / STRIP_PX) as Duration) : NO_TIME;

/** Puts the slider where it stands to the second, as its steps are. */
function writeSlider(slider: HTMLInputElement, pet: Duration): void {
  const said = words("brief/pet", { pet });
  if (slider.getAttribute("aria-valuetext") !== said) slider.setAttribute("aria-valuetext", said);
  const value = String(Math.round(pet / SECOND) * SECOND);
  if (slider.value !== value) slider.value = value;
}

/** The strip of a briefing, drawn up to a PET that may be later than its own finish. */
function useStrip(briefing: Briefing, finish: Duration) {
  return useMemo(() => stripOf({ ...briefing, finish }), [briefing, finish]);
}

/** What of a strip stays the same while it is played; the hundreds of its bars are not even looked at meanwhile. */
const StripNodes = memo(function StripNodes({ strip }: { readonly strip: ReturnType<typeof stripOf> }) {
  return (
    <svg className="strip" viewBox={`0 0 ${strip.width} ${strip.height}`} aria-hidden="true">
      <style>{STRIP_STYLE}</style>
      <DrawnLayers layers={strip.nodes} />
    </svg>
  );
});

function Strip({ briefing, finish, shown, isPlaying, onPet }: StripProps) {
  const strip = useStrip(briefing, finish);
  const now = useWrittenAt<SVGLineElement>(
    shown,
    (line, pet) => {
      const x = String(strip.from + (strip.to - strip.from) * (finish > 0 ? pet / finish : 0));
      for (const end of ["x1", "x2"]) line.setAttribute(end, x);
    },
    grainOf(finish, isPlaying),
  );
  return (
    <div className="brief-bars">
      <StripNodes strip={strip} />
      <svg
        className="strip"
        viewBox={`0 0 ${strip.width} ${strip.height}`}
        aria-hidden="true"
        onPointerDown={(event) => {
          const box = event.currentTarget.getBoundingClientRect();
          const share = ((event.clientX - box.left) / box.width) * strip.width;
          onPet(((finish * (share - strip.from)) / (strip.to - strip.from)) as Duration);
        }}
      >
        <line ref={now} className="strip-now" y1={0} y2={strip.height} />
      </svg>
    </div>
  );
}
