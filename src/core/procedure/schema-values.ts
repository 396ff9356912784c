import { z } from "zod";
import type {
  CrewId,
  DecisionId,
  Duration,
  Instant,
  ItemId,
  Metres,
  PictureId,
  PlaceId,
  StateId,
  StepId,
  WindowId,
} from "../units/index.ts";
import {
  DURATION_PATTERN,
  ID_PATTERN,
  INSTANT_PATTERN,
  parseDuration,
  parseInstant,
} from "../units/index.ts";
import { idDescribedAs } from "./location-schema.ts";

/**
 * The forms that the schema requires of texts. A pattern or check below gives one of these names as its message, and
 * `schema-findings` turns it into a sentence.
 */
export const TEXT_FORMS = [
  "id",
  "duration",
  "short-duration",
  "instant",
  "real-instant",
  "encoded-picture",
] as const;

export const crewId = idDescribedAs<CrewId>("a crew member");
export const placeId = idDescribedAs<PlaceId>("a place");
export const itemId = idDescribedAs<ItemId>("an item");
export const windowId = idDescribedAs<WindowId>("a window");
export const stepId = idDescribedAs<StepId>("a step");
export const decisionId = idDescribedAs<DecisionId>("a decision");
export const stateId = idDescribedAs<StateId>("a state");
export const pictureId = idDescribedAs<PictureId>("a picture");

/** Text that a person reads. */
export const text = z.string().min(1).max(4000);
export const finite = z.number();

/** A length of time, or a PET. */
export const duration = z
  .string()
  .regex(DURATION_PATTERN, "duration")
  .describe("ISO 8601 duration, days to seconds: PT1H5M, PT90S")
  .transform((value, context): Duration => {
    const parsed = parseDuration(value);
    if (parsed !== null) return parsed;
    context.addIssue({ code: "custom", message: "short-duration" });
    return z.NEVER;
  });

export const metres = finite.min(0).transform((value) => value as Metres);

export const instant = z
  .string()
  .regex(INSTANT_PATTERN, "instant")
  .describe("RFC 3339 instant with an offset or Z: 2031-04-02T09:12:31Z")
  .transform((value, context): Instant => {
    const parsed = parseInstant(value);
    if (parsed !== null) return parsed;
    context.addIssue({ code: "custom", message: "real-instant" });
    return z.NEVER;
  });

/** The values that states must have, or are given: by the id of the state. */
export const stateValues = z
  .record(z.string().regex(ID_PATTERN, "id"), z.string())
  .transform((values) => values as Readonly<Record<StateId, string>>);
