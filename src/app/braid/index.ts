export type { BeadStage, BraidMarker, BraidRow } from "./braid-geometry.ts";
export { BraidSample, type BraidSampleName } from "./braid-sample.tsx";
export { BraidedList, type BraidPlaces } from "./braided-list.tsx";
export { type Strand, strandsOf } from "./strand.ts";
