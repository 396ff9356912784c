import { z } from "zod";
import { described } from "../procedure/index.ts";
import { DURATION_PATTERN, ID_PATTERN } from "../units/index.ts";

/** The format that a fragment names. */
export const FRAGMENT_FORMAT = "tetherline.fragment/1";

/** The most blanks and steps of a fragment. */
export const FRAGMENT_LIMITS = { blanks: 40, steps: 200 } as const;

const id = z.string().regex(ID_PATTERN);
const text = z.string().min(1).max(4000);
const duration = z.string().regex(DURATION_PATTERN);
const time = z.union([duration, z.strictObject({ low: duration, likely: duration, high: duration })]);

const blank = z.strictObject({
  id,
  kind: z.enum(["crew", "place", "item", "time"]),
  label: text.describe("What is to be put there, in words"),
  usual: time.optional().describe("What a time usually is"),
});

/** A fragment as it stands in its file; its steps are looked at once their blanks are filled. */
export const fragmentSchema = z.strictObject({
  $schema: z.string().optional(),
  format: z.literal(FRAGMENT_FORMAT),
  id,
  title: text,
  revision: z.string().min(1).max(40),
  summary: text.optional(),
  blanks: z.array(blank).max(FRAGMENT_LIMITS.blanks).default([]),
  steps: z.array(z.record(z.string(), z.unknown())).min(1).max(FRAGMENT_LIMITS.steps),
});

/** The JSON Schema (2020-12) of a file of a fragment, made from the Zod schema. An author's text editor reads it. */
export function fragmentJsonSchema(): object {
  const schema = z.toJSONSchema(fragmentSchema, { io: "input", target: "draft-2020-12" });
  return described(schema, "Tetherline fragment", `Steps with blanks, format ${FRAGMENT_FORMAT}`);
}

/** Steps that are put into procedures with their blanks filled ([WRT9]). */
export type Fragment = z.output<typeof fragmentSchema>;
export type FragmentBlank = Fragment["blanks"][number];
