/** True in `npm run soak`, and in whatever else is told to run the long tests whole. */
export const isSoak = process.env["TETHERLINE_SOAK"] === "1";

/** How much a long test does: what finds a mistake made today in `npm test`, all of it in `npm run soak`. */
export function sized({ daily, soak }: { readonly daily: number; readonly soak: number }): number {
  return isSoak ? soak : daily;
}
