/** `1` in `npm run soak`; `beside` where the long tests run whole beside others, as under CI. */
const soak = process.env["TETHERLINE_SOAK"];

/** True where the long tests are run whole. */
export const isSoak = soak === "1" || soak === "beside";

/**
 * How much a long test does: what finds a mistake made today in `npm test`, all of it in `npm run soak`. One that needs the machine `alone` does no more
 * than daily beside others.
 */
export function sized(size: {
  readonly daily: number;
  readonly soak: number;
  readonly alone?: boolean;
}): number {
  return soak === "1" || (isSoak && !size.alone) ? size.soak : size.daily;
}
