import { Component, lazy, type ReactNode, Suspense } from "react";
import { words } from "../../words/index.ts";
import type { WorksiteMapProps } from "./worksite-map.tsx";

const Loaded = lazy(async () => ({ default: (await import("./worksite-map.tsx")).WorksiteMap }));

/**
 * The map, loaded when it is first shown. Where it cannot be loaded or drawn it says so in its place, and the screen
 * around it goes on.
 */
export function LazyWorksiteMap(props: WorksiteMapProps) {
  return (
    <MissingMap>
      <Suspense fallback={<p role="status">{words("map/loading")}</p>}>
        <Loaded {...props} />
      </Suspense>
    </MissingMap>
  );
}

/** Stands in for a map that could not be loaded or drawn. */
class MissingMap extends Component<{ readonly children: ReactNode }, { readonly isMissing: boolean }> {
  override state = { isMissing: false };

  static getDerivedStateFromError(): { readonly isMissing: boolean } {
    return { isMissing: true };
  }

  override render(): ReactNode {
    if (!this.state.isMissing) return this.props.children;
    return <p role="alert">{words("map/missing")}</p>;
  }
}
