import { useMemo } from "react";
import type { Briefing } from "../../core/briefing/index.ts";
import { STRIP_STYLE, stripOf } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { DrawnLayer } from "../worksite/index.ts";

interface StripBarProps {
  readonly briefing: Briefing;
  readonly pet: Duration;
  readonly onPet: (pet: Duration) => void;
}

/** The timeline as a strip, with a slider above it that goes to any moment and says its time. */
export function StripBar({ briefing, pet, onPet }: StripBarProps) {
  const { finish } = briefing;
  const strip = useMemo(() => stripOf(briefing), [briefing]);
  const x = strip.from + (strip.to - strip.from) * (finish > 0 ? pet / finish : 0);
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
        style={{ marginLeft: `${(strip.from / strip.width) * 100 - 0.8}%` }}
        onChange={(event) => onPet(Number(event.target.value) as Duration)}
      />
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
        <style>{STRIP_STYLE}</style>
        {strip.nodes.map((node, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the strip of a briefing never changes.
          <DrawnLayer key={index} node={node} />
        ))}
        <line className="strip-now" x1={x} x2={x} y1={0} y2={strip.height} />
      </svg>
    </div>
  );
}
