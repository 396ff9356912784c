import type { PlaceId } from "../units/index.ts";
import type { Ways } from "./ways.ts";

/** Callbacks for each leg of a line, by the two places it joins, as it is laid out and taken up. */
export interface LineWatch {
  lay(a: PlaceId, b: PlaceId): void;
  takeUp(a: PlaceId, b: PlaceId): void;
}

const UNWATCHED: LineWatch = { lay: () => {}, takeUp: () => {} };

/**
 * A tether's line as it lies ([PLN7]). It runs from the anchor along the ways that were walked: the quickest way, or
 * the shortest where no times are known. Walking back along the line takes it up again.
 */
export class LaidLine {
  readonly #ways: Ways;
  readonly #watch: LineWatch;
  #places: PlaceId[] = [];

  constructor(ways: Ways, watch: LineWatch = UNWATCHED) {
    this.#ways = ways;
    this.#watch = watch;
  }

  /** The places from the start of the line to its crew member; empty before the line is laid. */
  get places(): readonly PlaceId[] {
    return this.#places;
  }

  /** The place of the line's crew member; `null` before the line is laid. */
  get end(): PlaceId | null {
    return this.#places.at(-1) ?? null;
  }

  /** Takes the crew member to a place. Where no routes lead there, the line is known only from that place on. */
  walkTo(place: PlaceId): void {
    const here = this.end ?? place;
    const way = this.#ways.quickest(here, place) ?? this.#ways.shortest(here, place);
    if (way) this.#walk(way.places);
    else this.#startAt(place);
  }

  /** Replaces the line by one from an anchor to the crew member's place along the shortest way. */
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
