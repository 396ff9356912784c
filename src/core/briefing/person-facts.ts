import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { Course } from "../course/index.ts";
import type { PlaceId } from "../units/index.ts";
import type { PersonAt } from "../worksite/index.ts";
import { doingMessage, leftMessage } from "../worksite/index.ts";

/** What a table says of a crew member at a moment. */
export interface PersonFacts {
  readonly call: string;
  readonly look: number;
  /** `null` when the procedure does not say where. */
  readonly where: Message | null;
  readonly does: Message;
  /** What is left of the line; `null` without a line or where no routes tell. */
  readonly line: Message | null;
  /** The labels of the items, in the order of the file. */
  readonly has: readonly string[];
}

/** Puts together what is told of a crew member: where, what is done, the line, and what is carried. */
export function personFacts(course: Course, person: PersonAt): PersonFacts {
  const { outline } = course;
  return {
    call: person.call,
    look: person.look,
    where: whereMessage(course, person),
    does: doingMessage(course, person),
    line: leftMessage(person)?.says ?? null,
    has: person.items.map((id) => outline.item(id)?.label ?? id),
  };
}

/** Where a crew member is: at a place, or on the way between two; `null` when the procedure does not say. */
export function whereMessage({ outline }: Course, { place }: PersonAt): Message | null {
  if (place === null) return null;
  const name = (id: PlaceId) => outline.place(id)?.label ?? id;
  return "place" in place
    ? message("brief/at-place", { place: name(place.place) })
    : message("brief/on-way", { from: name(place.from), to: name(place.to) });
}
