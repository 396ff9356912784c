import type { Procedure } from "../../core/procedure/index.ts";
import type { Metres, PlaceId } from "../../core/units/index.ts";
import { layoutOf, trueLength } from "../../core/worksite/index.ts";
import type { PlacePair } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";

interface MeasuredWaysProps {
  readonly procedure: Procedure;
  readonly chosen: PlaceId;
  /** What a place is called. */
  readonly name: (id: string) => string;
  readonly onPart: (pair: PlacePair) => void;
}

/** How far the chosen place is from where its ways lead, by the way and straight; each way can be taken out ([WRT5]). */
export function MeasuredWays({ procedure, chosen, name, onPart }: MeasuredWaysProps) {
  const { places } = layoutOf(procedure);
  const from = places.get(chosen);
  const ways = procedure.routes.flatMap(({ between: [a, b], length }) => {
    const to = a === chosen ? b : b === chosen ? a : null;
    const point = to === null ? undefined : places.get(to);
    return to !== null && from && point ? [{ to, length, straight: trueLength(from, point) as Metres }] : [];
  });
  const title = words("write/map-ways", { place: name(chosen) });
  if (ways.length === 0) return <p className="hint">{words("write/map-no-ways", { place: name(chosen) })}</p>;
  return (
    <>
      <h3>{title}</h3>
      <ul className="place-map-ways" aria-label={title}>
        {ways.map(({ to, length, straight }) => (
          <li key={to}>
            <span>{words("write/map-way", { place: name(to), length, straight })}</span>
            <button
              type="button"
              className="plain-button"
              aria-label={words("write/way-out", { one: name(chosen), other: name(to) })}
              onClick={() => onPart([chosen, to])}
            >
              {words("write/drop")}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
