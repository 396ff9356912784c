import { z } from "zod";
import { ID_PATTERN, INSTANT_PATTERN, parseInstant } from "../units/index.ts";

/** The format that each remark names. */
export const REMARK_FORMAT = "tetherline.remark/1";

/** What a remark does ([WRT10]). */
export const REMARK_KINDS = ["comment", "resolved", "reopened", "agreed", "withdrawn"] as const;

const LONGEST_NAME = 200;
const LONGEST_TEXT = 4000;

const name = z.string().trim().min(1).max(LONGEST_NAME);

/** One remark as it stands in its line. */
export const remarkSchema = z.strictObject({
  format: z.literal(REMARK_FORMAT),
  id: z.string().regex(ID_PATTERN),
  procedure: z.string().regex(ID_PATTERN),
  revision: z.string().min(1).max(40).nullable(),
  text: z
    .string()
    .regex(/^sha-256:[0-9a-f]{64}$/)
    .nullable(),
  step: z.string().regex(ID_PATTERN).nullable(),
  by: z.strictObject({ name, role: name }),
  at: z
    .string()
    .regex(INSTANT_PATTERN)
    .refine((at) => parseInstant(at) !== null),
  kind: z.enum(REMARK_KINDS),
  says: z.string().max(LONGEST_TEXT),
  to: z.string().regex(ID_PATTERN).nullable(),
});

/** A remark of a reader about a step or a whole revision. */
export type Remark = Readonly<z.output<typeof remarkSchema>>;
export type RemarkKind = Remark["kind"];
