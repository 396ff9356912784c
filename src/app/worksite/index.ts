export { DrawnLayers, MovingLayers } from "./drawn-layers.tsx";
export { DrawnWorksite } from "./drawn-worksite.tsx";
export { LazyWorksiteMap } from "./lazy-worksite-map.tsx";
export { MapAtMoment } from "./map-at-moment.tsx";
export type { ShownPet } from "./shown-pet.ts";
export { MovingPet, standingPet, useReadAt, useWrittenAt } from "./shown-pet.ts";
export { useShownScene } from "./shown-scene.ts";
export { SiteFigure } from "./site-figure.tsx";
export { TouchedMoment } from "./touched-moment.ts";
