import { memo } from "react";
import { appliedOffset } from "../../core/log/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { between, clockText, inSeconds, later, NO_TIME } from "../../core/units/index.ts";
import type { ClockReading } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { ReviewTable } from "./review-table.tsx";

interface ClockTableProps {
  readonly readings: readonly ClockReading[];
  readonly petZero: Instant | null;
  /** True while times are shown as the devices recorded them. */
  readonly asEntered: boolean;
  readonly onAsEntered: (asEntered: boolean) => void;
}

/**
 * How far the clocks of the devices were off the hub's, and whether times are shown corrected. Nothing is drawn for a
 * walk of one device.
 */
export const ClockTable = memo(function ClockTable({
  readings,
  petZero,
  asEntered,
  onAsEntered,
}: ClockTableProps) {
  if (readings.length === 0) return null;
  const isMoved = readings.some((reading) => appliedOffset(reading) !== NO_TIME);
  return (
    <>
      <ReviewTable
        id="review-clocks"
        title={words("review/clocks")}
        columns={[
          words("review/column-pet"),
          words("review/column-device"),
          words("review/column-clock"),
          words("review/column-right-within"),
          words("review/column-times"),
        ]}
        rows={readings.map((reading) => ({
          key: `${reading.device} ${reading.entry.wire.id}`,
          cells: [
            petZero === null ? "" : clockText(between(petZero, later(reading.at, appliedOffset(reading)))),
            reading.device.replace("/devices/", ""),
            offsetWords(reading.offset),
            words("review/right-within", { error: inSeconds(reading.error) }),
            appliedOffset(reading) === NO_TIME
              ? words("review/as-entered")
              : words(asEntered ? "review/not-corrected" : "review/corrected"),
          ],
        }))}
        empty=""
      />
      {isMoved && (
        <label className="choice">
          <input
            type="checkbox"
            checked={!asEntered}
            onChange={({ target }) => onAsEntered(!target.checked)}
          />
          <span>{words("review/show-corrected")} </span>
        </label>
      )}
    </>
  );
});

/** How far a clock was off, given what must be added to it. */
function offsetWords(offset: Duration): string {
  const size = Math.abs(offset) as Duration;
  if (size < 1) return words("review/clock-agreed");
  if (size < 60_000)
    return words(offset < 0 ? "review/clock-ahead-seconds" : "review/clock-behind-seconds", {
      by: inSeconds(size),
    });
  return words(offset < 0 ? "review/clock-ahead" : "review/clock-behind", { by: size });
}
