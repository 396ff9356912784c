import type { CardSize } from "./card-size.ts";
import { pitchOf } from "./card-size.ts";

/** How far the cards stand from the edge of the sheet, and how long a mark is, in millimetres. */
const EDGE = 4;
const LONG = 2.4;

/** Marks in the corners between the cards of a sheet, outside the cards themselves, at which they are cut. */
export function CutMarks({
  size: { width, height },
  across,
  down,
}: {
  readonly size: CardSize;
  readonly across: number;
  readonly down: number;
}) {
  const edges = (count: number, length: number) =>
    Array.from({ length: count }, (_, place) => EDGE + place * pitchOf(length)).flatMap((start) => [
      start,
      start + length,
    ]);
  const xs = edges(across, width);
  const ys = edges(down, height);
  const marks = xs.flatMap((x, column) =>
    ys.map((y, row) => {
      const [left, up] = [column % 2 === 0 ? -LONG : LONG, row % 2 === 0 ? -LONG : LONG];
      return `M${x + left / 4} ${y}h${(left * 3) / 4}M${x} ${y + up / 4}v${(up * 3) / 4}`;
    }),
  );
  return (
    <svg className="cut-marks" viewBox="0 0 194 258" aria-hidden="true">
      <path d={marks.join("")} />
    </svg>
  );
}
