import { appliedOffset } from "../../core/log/index.ts";
import type { Duration, Instant } from "../../core/units/index.ts";
import { between, clockText, inSeconds, later, lengthText, NO_TIME } from "../../core/units/index.ts";
import type { ClockReading } from "../../core/walk/index.ts";
import { ReviewTable } from "./review-table.tsx";

interface ClockTableProps {
  readonly readings: readonly ClockReading[];
  readonly petZero: Instant | null;
  /** True while times are shown as the devices had them. */
  readonly asEntered: boolean;
  readonly onAsEntered: (asEntered: boolean) => void;
}

/** How the clocks of the devices stood against the hub's, and whether times are shown corrected by that; nothing for a walk of one device. */
export function ClockTable({ readings, petZero, asEntered, onAsEntered }: ClockTableProps) {
  if (readings.length === 0) return null;
  const isMoved = readings.some((reading) => appliedOffset(reading) !== NO_TIME);
  return (
    <>
      <ReviewTable
        id="review-clocks"
        title="Clocks"
        columns={["PET", "Device", "Clock", "Right within", "Times of it"]}
        rows={readings.map((reading) => ({
          key: `${reading.device} ${reading.entry.wire.id}`,
          cells: [
            petZero === null ? "" : clockText(between(petZero, later(reading.at, appliedOffset(reading)))),
            reading.device.replace("/devices/", ""),
            offsetWords(reading.offset),
            `± ${inSeconds(reading.error).toFixed(3)} s`,
            appliedOffset(reading) === NO_TIME ? "as entered" : asEntered ? "not corrected" : "corrected",
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
          <span>
            Show times corrected by the hub’s clock. The log itself keeps what each device entered; what was
            entered before its clock was compared is moved by its first reading.
          </span>
        </label>
      )}
    </>
  );
}

/** How far a clock was off, by what is to be added to it. */
function offsetWords(offset: Duration): string {
  const size = Math.abs(offset) as Duration;
  if (size < 1) return "agreed with the hub’s";
  const words = size < 60_000 ? `${inSeconds(size).toFixed(3)} s` : lengthText(size);
  return `${words} ${offset < 0 ? "ahead of" : "behind"} the hub’s`;
}
