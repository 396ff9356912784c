import type { MouseEvent } from "react";
import { useMemo, useState } from "react";
import type { Change, Procedure, ProcedureFile } from "../../core/procedure/index.ts";
import { parseProcedure } from "../../core/procedure/index.ts";
import type { Metres, PlaceId } from "../../core/units/index.ts";
import type { SitePoint, WorksiteGround } from "../../core/worksite/index.ts";
import { groundDrawing, groundOf, layoutChanges, layoutOf, placeMoved } from "../../core/worksite/index.ts";
import type { GestureName, Proposal } from "../../core/write/index.ts";
import { placeAdded, placesJoined, placesParted } from "../../core/write/index.ts";
import type { Message } from "../../words/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { DrawnWorksite } from "../worksite/index.ts";
import { choicesIn } from "./field-schema.ts";
import { MeasuredWays } from "./measured-ways.tsx";
import { PlaceMoves } from "./place-moves.tsx";
import type { WayEnds } from "./way-form.tsx";
import { WayForm } from "./way-form.tsx";
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

/** What a tap on the map does. */
const MODES = ["move", "way", "place"] as const;
type Mode = (typeof MODES)[number];

const NO_ENDS: WayEnds = ["", ""];

/** The ends of a way after a tap on a place: the first, then the other one, then another in its place. */
const endsWith = ([one, other]: WayEnds, place: string): WayEnds =>
  one === "" ? [place, other] : place === one ? ["", other] : [one, place];

/**
 * The places on a map on which they are put and moved, and joined by ways, by a tap, by keys and by buttons; each is one gesture ([WRT5]).
 */
export function PlaceMap({ file, onChanges }: PlaceMapProps) {
  const procedure = useMemo(() => parseProcedure(file).procedure, [file]);
  if (file.places === undefined || file.places.length === 0) return null;
  return procedure ? (
    <Laid file={file} procedure={procedure} onChanges={onChanges} />
  ) : (
    <p className="hint">{words("write/map-not-yet")}</p>
  );
}

const NOTHING_SAID = { problem: null, done: null };

function Laid({ file, procedure, onChanges }: PlaceMapProps & { readonly procedure: Procedure }) {
  const places = choicesIn(file, "places");
  const [wanted, setWanted] = useState<string | null>(null);
  const [step, setStep] = useState<(typeof STEPS)[number]>("1");
  const chosen = (places.find(({ id }) => id === wanted)?.id ?? places[0]?.id ?? "") as PlaceId;
  const ground = useMemo(() => groundOf(procedure, SIZE, inWords), [procedure]);
  const [mode, setMode] = useState<Mode>("move");
  const [ends, setEnds] = useState<WayEnds>(NO_ENDS);
  const [said, setSaid] = useState<{ readonly problem: Message | null; readonly done: string | null }>(
    NOTHING_SAID,
  );
  const drawing = useMemo(
    () =>
      groundDrawing(ground, mode === "way" ? (ends as readonly string[] as readonly PlaceId[]) : [chosen]),
    [ground, chosen, mode, ends],
  );
  const name = (id: string) => places.find((one) => one.id === id)?.name ?? id;
  const make = (gesture: GestureName, { problem, changes }: Proposal): boolean => {
    setSaid({ problem, done: null });
    if (changes) onChanges(gesture, changes);
    return problem === null;
  };
  const layout = layoutOf(procedure);
  const at = layout.places.get(chosen);
  // Whoever puts one place somewhere means the others where they are seen: positions that were worked out are kept with it.
  const put = (point: Pick<SitePoint, "x" | "y">) =>
    onChanges("set", [
      ...layoutChanges(procedure).filter((one) => !("change" in one) || one.change !== chosen),
      ...placeMoved(chosen, point),
    ]);
  const putNew = (point: Pick<SitePoint, "x" | "y">) => {
    const { place, proposal } = placeAdded(file, words("write/new-places"));
    const more = [...layoutChanges(procedure), ...placeMoved(place as PlaceId, point)];
    const changes = proposal.changes && [...proposal.changes, ...more];
    if (make("add", changes ? { ...proposal, changes } : proposal)) setWanted(place);
  };
  const tap = (event: MouseEvent<HTMLElement>) => {
    const box = event.currentTarget.querySelector("svg")?.getBoundingClientRect();
    if (!box || box.width === 0) return;
    const scale = drawing.width / box.width;
    const point = { x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale };
    const near = nearestPlace(ground, point, NEAR * scale);
    if (near !== null) return mode === "way" ? setEnds(endsWith(ends, near)) : setWanted(near);
    if (mode === "way" || !isWithin(ground, point)) return;
    (mode === "place" ? putNew : put)(ground.frame.fromPlan(point));
  };
  return (
    <section className="place-map" aria-label={words("write/map")}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would need a legend that is seen. */}
      <div className="panel-acts" role="group" aria-label={words("write/map-mode")}>
        {MODES.map((one) => (
          <button
            key={one}
            type="button"
            className="plain-button"
            aria-pressed={mode === one}
            onClick={() => {
              setMode(one);
              setEnds(NO_ENDS);
              setSaid(NOTHING_SAID);
            }}
          >
            {words(`write/map-mode-${one}`)}
          </button>
        ))}
      </div>
      {mode !== "way" && (
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
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the buttons below do all that a tap and the keys do. */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: see above. */}
      <div className="place-map-drawing" onClick={tap}>
        <DrawnWorksite drawing={drawing} name={words("write/map-says", { count: places.length })} />
      </div>
      {said.problem && <p role="alert">{inWords(said.problem)}</p>}
      {said.done !== null && <p role="status">{said.done}</p>}
      <p className="hint">
        {words(
          mode === "move" ? "write/map-how" : mode === "way" ? "write/map-how-way" : "write/map-how-place",
        )}
      </p>
      {mode === "move" && (
        <PlaceMoves
          onMove={(right, up) => {
            if (at) put({ x: at.x + right * Number(step), y: at.y + up * Number(step) });
          }}
          onKeepLayout={layout.laidOut.size > 0 ? () => onChanges("set", layoutChanges(procedure)) : null}
        />
      )}
      {mode === "place" && at && (
        <button
          type="button"
          className="plain-button"
          onClick={() => putNew({ x: at.x + Number(step), y: at.y })}
        >
          {words("write/map-place-beside", { place: name(chosen) })}
        </button>
      )}
      {mode === "way" && (
        <WayForm
          file={file}
          procedure={procedure}
          places={places}
          ends={ends}
          onEnds={setEnds}
          onWay={(pair, way) => {
            if (!make("add", placesJoined(file, pair, way))) return;
            setSaid({
              problem: null,
              done: words("write/way-is-in", { one: name(pair[0]), other: name(pair[1]) }),
            });
            setEnds(NO_ENDS);
            setWanted(pair[0]);
          }}
        />
      )}
      {ground.numbered.length > 0 && (
        <ol>
          {ground.numbered.map(({ number, place, name }) => (
            <li key={place} value={number}>
              {name}
            </li>
          ))}
        </ol>
      )}
      <MeasuredWays
        procedure={procedure}
        chosen={mode === "way" && ends[0] !== "" ? (ends[0] as PlaceId) : chosen}
        name={name}
        onPart={(pair) => make("drop", placesParted(file, pair))}
      />
    </section>
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
