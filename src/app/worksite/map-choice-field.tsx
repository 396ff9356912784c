import { memo, useId } from "react";
import type { Procedure } from "../../core/procedure/index.ts";
import { placeName } from "../../core/worksite/index.ts";
import { words } from "../../words/index.ts";
import type { Chosen } from "./map-choice.ts";

interface MapChoiceProps {
  readonly procedure: Procedure;
  readonly chosen: Chosen | null;
  readonly onChosen: (chosen: Chosen | null) => void;
}

/** Chooses a crew member, a place or an item without the map, by keys or for a screen reader. */
export const MapChoice = memo(function MapChoice({ procedure, chosen, onChosen }: MapChoiceProps) {
  const field = useId();
  const options = [
    {
      kind: "crew" as const,
      title: words("map/people"),
      all: procedure.crew.map(({ id, call }) => ({ id, name: call })),
    },
    {
      kind: "place" as const,
      title: words("map/places"),
      all: procedure.places.map((place) => ({ id: place.id, name: placeName(place) })),
    },
    {
      kind: "item" as const,
      title: words("map/items"),
      all: procedure.items.map(({ id, label }) => ({ id, name: label ?? id })),
    },
  ];
  const choose = (value: string) => {
    const [kind, id] = value.split(" ");
    const known = options.find((one) => one.kind === kind)?.all.some((one) => one.id === id);
    onChosen(known ? ({ kind, id } as Chosen) : null);
  };
  return (
    <div className="field map-choice">
      <label htmlFor={field}>{words("map/ask-about")}</label>
      <select
        id={field}
        value={chosen ? [chosen.kind, chosen.id].join(" ") : ""}
        onChange={(event) => choose(event.target.value)}
      >
        <option value="">{words("map/ask-nothing")}</option>
        {options.map(({ kind, title, all }) =>
          all.length === 0 ? null : (
            <optgroup key={kind} label={title}>
              {all.map(({ id, name }) => (
                <option key={id} value={[kind, id].join(" ")}>
                  {name}
                </option>
              ))}
            </optgroup>
          ),
        )}
      </select>
    </div>
  );
});
