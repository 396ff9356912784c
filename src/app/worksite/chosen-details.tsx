import type { ReactNode } from "react";
import { useSyncExternalStore } from "react";
import type { Location, Outline } from "../../core/procedure/index.ts";
import type { CrewId, ItemId, PlaceId } from "../../core/units/index.ts";
import type { WorksiteGround, WorksiteMoment } from "../../core/worksite/index.ts";
import { doingMessage, homeMessage, leftMessage, placeName } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { callsOf, Fact, locationWords, quantityWords, stepWords } from "../parts/index.ts";
import type { Chosen } from "./map-choice.ts";
import type { ShownScene } from "./shown-scene.ts";

interface ChosenProps {
  readonly scene: ShownScene;
  readonly ground: WorksiteGround;
  readonly chosen: Chosen;
  readonly onChosen: (chosen: Chosen) => void;
}

/** All that is known of a crew member, a place or an item at the moment that the map shows. */
export function ChosenDetails({ scene, ground, chosen, onChosen }: ChosenProps) {
  const { moment } = useSyncExternalStore(scene.subscribe, scene.scene);
  const asked = { moment, ground, onChosen };
  return (
    <div className="map-details" role="status">
      {chosen.kind === "crew" && <PersonDetails {...asked} id={chosen.id} />}
      {chosen.kind === "place" && <PlaceDetails {...asked} id={chosen.id} />}
      {chosen.kind === "item" && <ItemDetails {...asked} id={chosen.id} />}
    </div>
  );
}

type Asked<Id> = Omit<ChosenProps, "chosen" | "scene"> & {
  readonly moment: WorksiteMoment;
  readonly id: Id;
};

function Details({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <>
      <h3>{title}</h3>
      <dl className="facts">{children}</dl>
    </>
  );
}

function nameOfPlace({ course: { outline } }: WorksiteMoment, id: PlaceId): string {
  const place = outline.place(id);
  return place ? placeName(place) : id;
}

function Items({
  moment,
  ids,
  onChosen,
}: Pick<Asked<ItemId>, "moment" | "onChosen"> & { readonly ids: readonly ItemId[] }) {
  const { outline } = moment.course;
  if (ids.length === 0) return words("map/none");
  return (
    <ul className="map-items">
      {ids.map((id) => {
        const where = moment.items.get(id);
        return (
          <li key={id}>
            <button type="button" className="plain-button" onClick={() => onChosen({ kind: "item", id })}>
              {where && "item" in where ? packedWords(outline, id, where) : (outline.item(id)?.label ?? id)}
            </button>
          </li>
        );
      })}
    </ul>
  );
}

const packedWords = (outline: Outline, id: ItemId, where: Location): string =>
  words("map/packed", { item: outline.item(id)?.label ?? id, where: locationWords(outline, where) });

function PersonDetails({ moment, onChosen, id }: Asked<CrewId>) {
  const { course, people, shared, home } = moment;
  const { outline } = course;
  const person = people.find(({ crew }) => crew === id);
  if (!person) return null;
  const { place, line, steps, items, wait } = person;
  const left = leftMessage(person);
  const sharing = shared.filter(({ crew }) => crew.includes(id));
  return (
    <Details title={person.call}>
      <Fact name={words("map/does")}>{inWords(doingMessage(course, person))}</Fact>
      {steps.map((step) => (
        <Fact key={step} name={words("map/step")}>
          {stepWords(outline, step)}
        </Fact>
      ))}
      {wait && <Fact name={words("map/next-step")}>{stepWords(outline, wait.step)}</Fact>}
      <Fact name={words("map/where")}>
        {place === null
          ? words("map/place-not-told")
          : "place" in place
            ? nameOfPlace(moment, place.place)
            : words("map/between", {
                from: nameOfPlace(moment, place.from),
                to: nameOfPlace(moment, place.to),
              })}
      </Fact>
      {line && (
        <Fact name={words("map/line")}>
          {[
            words("map/anchored-at", { place: nameOfPlace(moment, line.anchor) }),
            left ? inWords(left.says) : words("map/left-unknown"),
          ].join(words("figures/between-clauses"))}
        </Fact>
      )}
      {sharing.map(({ between: [a, b], crew }) => (
        <Fact key={`${a} ${b}`} name={words("map/shares")}>
          {words("map/shared-way", {
            from: nameOfPlace(moment, a),
            to: nameOfPlace(moment, b),
            crew: callsOf(
              outline,
              crew.filter((other) => other !== id),
            ),
          })}
        </Fact>
      ))}
      {home?.crew === id && <Fact name={words("map/farthest")}>{inWords(homeMessage(home))}</Fact>}
      <Fact name={words("map/holds")}>
        <Items moment={moment} ids={items} onChosen={onChosen} />
      </Fact>
    </Details>
  );
}

function PlaceDetails({ moment, ground, onChosen, id }: Asked<PlaceId>) {
  const { procedure } = moment.course.outline;
  const place = procedure.places.find((one) => one.id === id);
  if (!place) return null;
  const here = moment.people.filter(
    (person) => person.place && "place" in person.place && person.place.place === id,
  );
  const ways = procedure.routes.filter(({ between }) => between.includes(id));
  const isLaidOut = ground.frame.layout.laidOut.has(id);
  return (
    <Details title={placeName(place)}>
      {place.refuge && <Fact name={words("map/refuge")}>{words("map/is-refuge")}</Fact>}
      <Fact name={words("map/people-here")}>
        {here.length === 0
          ? words("map/nobody")
          : here.map(({ call }) => call).join(words("figures/between"))}
      </Fact>
      <Fact name={words("map/items-here")}>
        <Items moment={moment} ids={moment.itemsAt.get(id) ?? []} onChosen={onChosen} />
      </Fact>
      {ways.map(({ between: [a, b], length }) => {
        const other = a === id ? b : a;
        return (
          <Fact key={`${a} ${b} ${length}`} name={words("map/way-to", { place: nameOfPlace(moment, other) })}>
            {words("map/metres", { metres: length })}
          </Fact>
        );
      })}
      {place.z !== undefined && (
        <Fact name={words("map/height")}>{quantityWords({ value: place.z, unit: "m" })}</Fact>
      )}
      {isLaidOut && <Fact name={words("map/position")}>{words("map/position-laid-out")}</Fact>}
    </Details>
  );
}

function ItemDetails({ moment, id }: Asked<ItemId>) {
  const { outline } = moment.course;
  const item = outline.item(id);
  if (!item) return null;
  return (
    <Details title={item.label ?? item.id}>
      <Fact name={words("map/where")}>{locationWords(outline, moment.items.get(id))}</Fact>
      {item.end && <Fact name={words("map/belongs")}>{locationWords(outline, item.end)}</Fact>}
      {item.hands > 0 && (
        <Fact name={words("map/hands")}>{words("map/takes-hands", { count: item.hands })}</Fact>
      )}
      {item.mass !== undefined && (
        <Fact name={words("map/mass")}>{quantityWords({ value: item.mass, unit: "kg" })}</Fact>
      )}
      {item.size !== undefined && <Fact name={words("map/size")}>{item.size}</Fact>}
    </Details>
  );
}
