export { LazyWorksiteMap } from "./lazy-worksite-map.tsx";
export { MapAtMoment } from "./map-at-moment.tsx";
export { SiteFigure } from "./site-figure.tsx";
export { TouchedMoment } from "./touched-moment.ts";
