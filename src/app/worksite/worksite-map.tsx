import { useMemo, useRef, useState } from "react";
import type { Course } from "../../core/course/index.ts";
import { drawingOf, withGhost } from "../../core/worksite/index.ts";
import { words } from "../../words/index.ts";
import { ChosenDetails } from "./chosen-details.tsx";
import { MovingWorksite } from "./drawn-worksite.tsx";
import { MapButtons } from "./map-buttons.tsx";
import type { Chosen } from "./map-choice.ts";
import { MapChoice } from "./map-choice-field.tsx";
import { MapSpots } from "./map-spots.tsx";
import type { ShownPet } from "./shown-pet.ts";
import { ShownScene, useShownScene } from "./shown-scene.ts";
import { useMapFrame } from "./use-map-frame.ts";
import { useMapGestures } from "./use-map-gestures.ts";
import "./worksite.css";

/** What a map shows. */
export interface WorksiteMapProps {
  readonly course: Course;
  readonly shown: ShownPet;
  /** What was planned, as a ghost under what was flown; absent for none. */
  readonly planned?: Course | null;
  /** Keeps the layout of a sketch in the file; absent where that cannot be done. */
  readonly onKeepLayout?: (() => void) | null;
  /** Opens the help of the map where the screen has a place of its own for it. */
  readonly onHelp?: (() => void) | null;
}

/** From this width on, in px, cards say what somebody holds too. */
const WIDE = 560;
const STEP = 80;
const TIMES = 1.5;

/** The map of the worksite at the PET that is shown of a course, which can be moved, enlarged and asked ([MAP4], [MAP6]). */
export function WorksiteMap({
  course,
  shown,
  planned = null,
  onKeepLayout = null,
  onHelp = null,
}: WorksiteMapProps) {
  const { procedure } = course.outline;
  const viewport = useRef<HTMLDivElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const { ground, view, room, settle, enlarge, pan, showWhole } = useMapFrame(viewport, procedure);
  const [chosen, setChosen] = useState<Chosen | null>(null);
  const detail = room.width >= WIDE ? "full" : "brief";
  const scene = useShownScene({ ground, course, shown, detail, isWhole: false });
  const drawing = useMemo(() => {
    const { subscribe } = scene;
    if (!planned) return { subscribe, layers: () => drawingOf(scene.scene()).layers };
    const ghost = new ShownScene({ ground, course: planned, shown, detail: "call", isWhole: false }, null);
    return { subscribe, layers: () => withGhost(drawingOf(scene.scene()), ghost.scene()).layers };
  }, [scene, planned, shown, ground]);
  const onKey = (key: string): boolean => {
    const move = MOVES[key];
    if (move) pan(...move);
    else if (key === "+" || key === "=") enlarge(TIMES);
    else if (key === "-") enlarge(1 / TIMES);
    else if (key === "0" || key === "Home") showWhole();
    else return false;
    return true;
  };
  const gestures = useMapGestures({ room: viewport, stage, at: view, onEnd: settle, onKey });
  if (procedure.places.length === 0) return <p className="hint">{words("map/no-places")}</p>;
  const isWhole = view.zoom <= 1;
  return (
    <section className="worksite-map" aria-label={words("map/title")}>
      {/* biome-ignore lint/a11y/useSemanticElements: there is no fieldset that is moved. */}
      <div
        ref={viewport}
        className="map-room"
        role="group"
        aria-label={words("map/keys")}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys move and enlarge what it holds.
        tabIndex={0}
        data-whole={isWhole || undefined}
        {...gestures}
      >
        <div
          ref={stage}
          className="map-stage"
          style={{
            width: ground.frame.width,
            height: ground.frame.height,
            transform: `translate(${view.x}px, ${view.y}px)`,
          }}
        >
          <MovingWorksite size={ground.frame} drawing={drawing} />
          <MapSpots scene={scene} onChosen={setChosen} />
        </div>
      </div>
      <MapButtons
        isWhole={isWhole}
        onEnlarge={() => enlarge(TIMES)}
        onShrink={() => enlarge(1 / TIMES)}
        onPan={(across, down) => pan(-across * STEP, -down * STEP)}
        onFit={showWhole}
        onHelp={onHelp}
      />
      {ground.numbered.length > 0 && (
        <ol className="map-numbered" aria-label={words("map/numbers")}>
          {ground.numbered.map(({ number, place, name }) => (
            <li key={place} value={number}>
              {name}
            </li>
          ))}
        </ol>
      )}
      <MapChoice procedure={procedure} chosen={chosen} onChosen={setChosen} />
      {chosen && <ChosenDetails scene={scene} ground={ground} chosen={chosen} onChosen={setChosen} />}
      {onKeepLayout && ground.frame.layout.laidOut.size > 0 && (
        <p className="map-keep">
          {words("map/is-sketch")}{" "}
          <button type="button" className="plain-button" onClick={onKeepLayout}>
            {words("map/keep-layout")}
          </button>
        </p>
      )}
    </section>
  );
}

const MOVES: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [STEP, 0],
  ArrowRight: [-STEP, 0],
  ArrowUp: [0, STEP],
  ArrowDown: [0, -STEP],
};
