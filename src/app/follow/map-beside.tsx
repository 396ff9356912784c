import { useMemo } from "react";
import type { Duration } from "../../core/units/index.ts";
import type { WalkState } from "../../core/walk/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { LazyWorksiteMap, standingPet } from "../worksite/index.ts";

interface MapBesideProps {
  readonly state: WalkState;
  readonly onHelp: () => void;
  readonly onClose: () => void;
}

/**
 * The map of the walk at the present moment, as its forecast has it ([MAP5]). It stands beside the list where there is
 * room, and stays while other panels open over it.
 */
export function MapBeside({ state, onHelp, onClose }: MapBesideProps) {
  const course = state.forecast ?? state.inForce;
  const pet = state.pet ?? NOT_STARTED;
  const shown = useMemo(() => standingPet(pet), [pet]);
  return (
    <div className="map-beside">
      <SidePanel title={words("map/title")} onClose={onClose}>
        {course ? (
          <LazyWorksiteMap course={course} shown={shown} onHelp={onHelp} />
        ) : (
          <p>{words("map/no-plan")}</p>
        )}
      </SidePanel>
    </div>
  );
}

const NOT_STARTED = 0 as Duration;
