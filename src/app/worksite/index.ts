export { DrawnLayer } from "./drawn-layer.tsx";
export { DrawnWorksite } from "./drawn-worksite.tsx";
export { LazyWorksiteMap } from "./lazy-worksite-map.tsx";
export { MapAtMoment } from "./map-at-moment.tsx";
export { SiteFigure } from "./site-figure.tsx";
export { TouchedMoment } from "./touched-moment.ts";
export { useScene } from "./use-scene.ts";
