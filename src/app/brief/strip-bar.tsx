import { memo, useMemo } from "react";
import type { Briefing } from "../../core/briefing/index.ts";
import { STRIP_STYLE, stripOf } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { DrawnLayer } from "../worksite/index.ts";

interface StripProps {
  readonly briefing: Briefing;
  /** Where the slider ends: the finish of the briefing, or of a longer one beside it. */
  readonly finish: Duration;
  readonly pet: Duration;
  readonly onPet: (pet: Duration) => void;
}

interface StripBarProps extends StripProps {
  /** What is played beside it; `null` for nothing. */
  readonly beside: Briefing | null;
}

/** The timeline as a strip, with a slider above it that goes to any moment and says its time; one more for what is beside it. */
export function StripBar({ briefing, beside, finish, pet, onPet }: StripBarProps) {
  const { from, width } = useStrip(briefing, finish);
  return (
    <div className="brief-strip">
      <input
        type="range"
        min={0}
        max={finish}
        step={1000}
        value={pet}
        aria-label={words("brief/scrubber")}
        aria-valuetext={words("brief/pet", { pet })}
        style={{ marginLeft: `${(from / width) * 100 - 0.8}%` }}
        onChange={(event) => onPet(Number(event.target.value) as Duration)}
      />
      <Strip briefing={briefing} finish={finish} pet={pet} onPet={onPet} />
      {beside && <Strip briefing={beside} finish={finish} pet={pet} onPet={onPet} />}
    </div>
  );
}

/** The strip of a briefing, drawn up to a PET that may be later than its own finish. */
function useStrip(briefing: Briefing, finish: Duration) {
  return useMemo(() => stripOf({ ...briefing, finish }), [briefing, finish]);
}

/** What of a strip stays the same while it is played; the hundreds of its bars are not even looked at meanwhile. */
const StripNodes = memo(function StripNodes({ strip }: { readonly strip: ReturnType<typeof stripOf> }) {
  return (
    <>
      <style>{STRIP_STYLE}</style>
      {strip.nodes.map((node, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the strip of a briefing never changes.
        <DrawnLayer key={index} node={node} />
      ))}
    </>
  );
});

function Strip({ briefing, finish, pet, onPet }: StripProps) {
  const strip = useStrip(briefing, finish);
  const x = strip.from + (strip.to - strip.from) * (finish > 0 ? pet / finish : 0);
  return (
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
      <StripNodes strip={strip} />
      <line className="strip-now" x1={x} x2={x} y1={0} y2={strip.height} />
    </svg>
  );
}
