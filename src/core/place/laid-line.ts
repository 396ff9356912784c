import type { PlaceId } from "../units/index.ts";
import type { Ways } from "./ways.ts";

/** What is told of a line while it is laid out and taken up: each leg of it, by the two places it joins. */
export interface LineWatch {
  lay(a: PlaceId, b: PlaceId): void;
  takeUp(a: PlaceId, b: PlaceId): void;
}

const UNWATCHED: LineWatch = { lay: () => {}, takeUp: () => {} };

/**
 * A tether's line as it comes to lie ([PLN7]): it runs from the anchor along the ways walked (the quickest, else the shortest);
 * going back the way one came takes it up again.
 */
export class LaidLine {
  readonly #ways: Ways;
  readonly #watch: LineWatch;
  #places: PlaceId[] = [];

  constructor(ways: Ways, watch: LineWatch = UNWATCHED) {
    this.#ways = ways;
    this.#watch = watch;
  }

  /** From where the line begins to where its crew member is; empty before it was laid. */
  get places(): readonly PlaceId[] {
    return this.#places;
  }

  /** Where its crew member is; `null` before it was laid. */
  get end(): PlaceId | null {
    return this.#places.at(-1) ?? null;
  }

  /** The crew member goes to a place. Where no routes lead there, the line is known from there on only. */
  walkTo(place: PlaceId): void {
    const here = this.end ?? place;
    const way = this.#ways.quickest(here, place) ?? this.#ways.shortest(here, place);
    if (way) this.#walk(way.places);
    else this.#startAt(place);
  }

  /** The line is laid anew from an anchor to where the crew member is, by the shortest way. */
  runFrom(anchor: PlaceId, place: PlaceId): void {
    const way = this.#ways.shortest(anchor, place);
    this.#startAt(way ? anchor : place);
    if (way) this.#walk(way.places);
  }

  #walk(places: readonly PlaceId[]): void {
    for (const place of places) {
      const here = this.end;
      if (here === null) this.#places = [place];
      else if (this.#places.at(-2) === place) {
        this.#places.pop();
        this.#watch.takeUp(here, place);
      } else if (here !== place) {
        this.#places.push(place);
        this.#watch.lay(here, place);
      }
    }
  }

  #startAt(place: PlaceId): void {
    for (const [position, one] of this.#places.entries()) {
      const next = this.#places[position + 1];
      if (next !== undefined) this.#watch.takeUp(one, next);
    }
    this.#places = [place];
  }
}
