import { memo, useSyncExternalStore } from "react";
import type { GroundView } from "../../core/worksite/index.ts";
import { words } from "../../words/index.ts";
import type { Chosen } from "./map-choice.ts";
import type { ShownScene } from "./shown-scene.ts";

/** How large the part of a place that takes a tap is, in px. */
const TARGET = 48;

interface MapSpotsProps {
  readonly scene: ShownScene;
  readonly onChosen: (chosen: Chosen) => void;
}

/** Takes the taps on places and people. The keyboard chooses them from a list below the map. */
export const MapSpots = memo(function MapSpots({ scene, onChosen }: MapSpotsProps) {
  const { views } = useSyncExternalStore(scene.subscribe, scene.scene);
  return views.map(({ ground, people }) => (
    <div key={ground.view} className="map-spots">
      <PlaceSpots ground={ground} onChosen={onChosen} />
      {people.map(({ crew, box, card }) => (
        <button
          key={crew}
          type="button"
          tabIndex={-1}
          aria-label={card.lines.map(({ text }) => text).join(words("figures/between"))}
          style={{ left: box.left, top: box.top, width: box.width, height: box.height }}
          onClick={() => onChosen({ kind: "crew", id: crew })}
        />
      ))}
    </div>
  ));
});

/** The places stay where they are from moment to moment, and are drawn once. */
const PlaceSpots = memo(function PlaceSpots({
  ground,
  onChosen,
}: {
  readonly ground: GroundView;
  readonly onChosen: (chosen: Chosen) => void;
}) {
  return ground.places.map(({ place: id, name, at }) => (
    <button
      key={id}
      type="button"
      tabIndex={-1}
      aria-label={name}
      style={{ left: at.x - TARGET / 2, top: at.y - TARGET / 2, width: TARGET, height: TARGET }}
      onClick={() => onChosen({ kind: "place", id })}
    />
  ));
});
