import { lazy, memo, Suspense } from "react";
import { words } from "../../words/index.ts";
import { MissingPart } from "../parts/index.ts";
import type { WorksiteMapProps } from "./worksite-map.tsx";

const Loaded = lazy(async () => ({ default: (await import("./worksite-map.tsx")).WorksiteMap }));

/**
 * The map, loaded when it is first shown. Where it cannot be loaded or drawn it says so in its place, and the screen
 * around it goes on.
 */
export const LazyWorksiteMap = memo(function LazyWorksiteMap(props: WorksiteMapProps) {
  return (
    <MissingPart said={words("map/missing")}>
      <Suspense fallback={<p role="status">{words("map/loading")}</p>}>
        <Loaded {...props} />
      </Suspense>
    </MissingPart>
  );
});
