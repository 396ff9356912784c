import type { KeyboardEvent, MouseEvent } from "react";
import { useMemo, useState } from "react";
import type { Change, Procedure, ProcedureFile } from "../../core/procedure/index.ts";
import { parseProcedure } from "../../core/procedure/index.ts";
import type { Metres, PlaceId } from "../../core/units/index.ts";
import type { SitePoint, WorksiteGround } from "../../core/worksite/index.ts";
import {
  groundDrawing,
  groundOf,
  layoutChanges,
  layoutOf,
  placeMoved,
  trueLength,
} from "../../core/worksite/index.ts";
import type { GestureName } from "../../core/write/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { DrawnWorksite } from "../worksite/index.ts";
import { choicesIn } from "./field-schema.ts";
import "./place-map.css";

interface PlaceMapProps {
  readonly file: ProcedureFile;
  readonly onChanges: (name: GestureName, changes: readonly Change[]) => void;
}

const SIZE = { width: 620, height: 400, zoom: 1 } as const;

/** A tap this near to a place, in px, is about that place. */
const NEAR = 24;

/** How far a press of a key or a button moves a place, in metres. */
const STEPS = ["0.1", "0.5", "1", "5"] as const;

const WAYS = { left: [-1, 0], right: [1, 0], up: [0, 1], down: [0, -1] } as const;
type Way = keyof typeof WAYS;
const KEYS: Readonly<Record<string, Way>> = {
  ArrowLeft: "left",
  ArrowRight: "right",
  ArrowUp: "up",
  ArrowDown: "down",
};

/** The places on a map on which they are put and moved, by a tap, by keys and by buttons; each is one gesture ([WRT5]). */
export function PlaceMap({ file, onChanges }: PlaceMapProps) {
  const procedure = useMemo(() => parseProcedure(file).procedure, [file]);
  if (file.places === undefined || file.places.length === 0) return null;
  return procedure ? (
    <Laid file={file} procedure={procedure} onChanges={onChanges} />
  ) : (
    <p className="hint">{words("write/map-not-yet")}</p>
  );
}

function Laid({ file, procedure, onChanges }: PlaceMapProps & { readonly procedure: Procedure }) {
  const places = choicesIn(file, "places");
  const [wanted, setWanted] = useState<string | null>(null);
  const [step, setStep] = useState<(typeof STEPS)[number]>("1");
  const chosen = (places.find(({ id }) => id === wanted)?.id ?? places[0]?.id ?? "") as PlaceId;
  const ground = useMemo(() => groundOf(procedure, SIZE, inWords), [procedure]);
  const drawing = useMemo(() => groundDrawing(ground, chosen), [ground, chosen]);
  const layout = layoutOf(procedure);
  const at = layout.places.get(chosen);
  // Whoever puts one place somewhere means the others where they are seen: positions that were worked out are kept with it.
  const put = (point: Pick<SitePoint, "x" | "y">) =>
    onChanges("set", [
      ...layoutChanges(procedure).filter((one) => !("change" in one) || one.change !== chosen),
      ...placeMoved(chosen, point),
    ]);
  const move = (way: Way) => {
    const [dx, dy] = WAYS[way];
    if (at) put({ x: at.x + dx * Number(step), y: at.y + dy * Number(step) });
  };
  const tap = (event: MouseEvent<HTMLElement>) => {
    const box = event.currentTarget.querySelector("svg")?.getBoundingClientRect();
    if (!box || box.width === 0) return;
    const scale = drawing.width / box.width;
    const point = { x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale };
    const near = nearestPlace(ground, point, NEAR * scale);
    if (near !== null && near !== chosen) setWanted(near);
    else if (near === null && isWithin(ground, point)) put(ground.frame.fromPlan(point));
  };
  const press = (event: KeyboardEvent) => {
    const way = KEYS[event.key];
    if (!way) return;
    event.preventDefault();
    move(way);
  };
  return (
    <section className="place-map" aria-label={words("write/map")}>
      <div className="place-map-fields">
        <SelectField
          label={words("write/map-place")}
          choices={places.map(({ id, name }) => ({ id: String(id), name }))}
          value={String(chosen)}
          onValue={setWanted}
        />
        <SelectField
          label={words("write/map-step")}
          choices={STEPS.map((id) => ({
            id,
            name: words("write/map-metres", { metres: Number(id) as Metres }),
          }))}
          value={step}
          onValue={setStep}
        />
      </div>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do all that a tap and the keys do. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: see above. */}
      <div className="place-map-drawing" onClick={tap}>
        <DrawnWorksite drawing={drawing} name={words("write/map-says", { count: places.length })} />
      </div>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would need a legend that is seen. */}
      <div className="panel-acts" role="group" aria-label={words("write/map-move")} onKeyDown={press}>
        {(["left", "right", "up", "down"] as const).map((way) => (
          <button key={way} type="button" className="plain-button" onClick={() => move(way)}>
            {words(`write/map-${way}`)}
          </button>
        ))}
        {layout.laidOut.size > 0 && (
          <button
            type="button"
            className="plain-button"
            onClick={() => onChanges("set", layoutChanges(procedure))}
          >
            {words("map/keep-layout")}
          </button>
        )}
      </div>
      <p className="hint">{words("write/map-how")}</p>
      {ground.numbered.length > 0 && (
        <ol>
          {ground.numbered.map(({ number, place, name }) => (
            <li key={place} value={number}>
              {name}
            </li>
          ))}
        </ol>
      )}
      <Measured
        procedure={procedure}
        chosen={chosen}
        name={(id) => places.find((one) => one.id === id)?.name ?? id}
      />
    </section>
  );
}

/** How far the chosen place is from where its ways lead: by the way and straight. */
function Measured({
  procedure,
  chosen,
  name,
}: {
  readonly procedure: Procedure;
  readonly chosen: PlaceId;
  readonly name: (id: PlaceId) => string;
}) {
  const { places } = layoutOf(procedure);
  const from = places.get(chosen);
  const ways = procedure.routes.flatMap(({ between: [a, b], length }) => {
    const to = a === chosen ? b : b === chosen ? a : null;
    const point = to === null ? undefined : places.get(to);
    return to !== null && from && point ? [{ to, length, straight: trueLength(from, point) as Metres }] : [];
  });
  if (ways.length === 0) return <p className="hint">{words("write/map-no-ways")}</p>;
  return (
    <ul className="place-map-ways" aria-label={words("write/map-ways")}>
      {ways.map(({ to, length, straight }) => (
        <li key={to}>{words("write/map-way", { place: name(to), length, straight })}</li>
      ))}
    </ul>
  );
}

function isWithin(
  { frame: { plan } }: WorksiteGround,
  { x, y }: { readonly x: number; readonly y: number },
): boolean {
  return x >= plan.left && x <= plan.left + plan.width && y >= plan.top && y <= plan.top + plan.height;
}

/** The place whose mark from above is nearest to a point, within `reach` px of the drawing; `null` for none. */
function nearestPlace(
  { views }: WorksiteGround,
  { x, y }: { readonly x: number; readonly y: number },
  reach: number,
): PlaceId | null {
  const marks = views.find(({ view }) => view === "plan")?.places ?? [];
  const far = marks.map(({ place, at }) => ({ place, far: Math.hypot(at.x - x, at.y - y) }));
  const nearest = far.reduce<(typeof far)[number] | null>(
    (least, one) => (least === null || one.far < least.far ? one : least),
    null,
  );
  return nearest !== null && nearest.far <= reach ? nearest.place : null;
}
