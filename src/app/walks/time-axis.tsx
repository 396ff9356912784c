import type { Duration } from "../../core/units/index.ts";
import { hourMinuteText } from "../../core/units/index.ts";

/** The hours under the strips of the walks. */
export function TimeAxis({ end, ticks }: { readonly end: Duration; readonly ticks: readonly Duration[] }) {
  return (
    <div className="walks-axis" aria-hidden="true">
      {ticks.map((pet) => (
        <span key={pet} style={{ left: `${(pet / end) * 100}%` }}>
          {hourMinuteText(pet)}
        </span>
      ))}
    </div>
  );
}
