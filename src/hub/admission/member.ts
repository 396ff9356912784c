import { z } from "zod";
import { deviceOf, ROLES } from "../../core/log/index.ts";
import type { Instant, WalkId } from "../../core/units/index.ts";

/** Text without control characters and halves of characters: it can be shown, compared and put into any store. */
const plainText = (longest: number) =>
  z
    .string()
    .min(1)
    .max(longest)
    .regex(/^[^\p{Cc}\p{Cs}]+$/u);

/** The id of a walk, as it may stand in an address or a body. */
export const walkSchema = plainText(200).transform((text) => text as WalkId);

/** The name of a device: a source without blanks that is nobody's part. */
export const deviceSchema = plainText(400)
  .regex(/^\S+$/)
  .refine((device) => deviceOf(device) === device);

/** What a person calls a device. */
export const nameSchema = plainText(80);

const instant = z
  .number()
  .int()
  .transform((value) => value as Instant);

/** Somebody who joined a walk and was not withdrawn, as kept. */
export const memberSchema = z.object({
  walk: walkSchema,
  device: deviceSchema,
  name: nameSchema,
  role: z.enum(ROLES),
  /** The one token that is good; joining again makes another. */
  token: z.string().min(1),
  joined: instant,
  /** When the token ends. */
  expires: instant,
  /** Under what the invitation is kept that it came by; `null` for the owner's code. */
  invitation: z.string().nullable(),
});

/** Somebody who joined a walk and was not withdrawn. */
export type Member = z.output<typeof memberSchema>;

/** Who sends a request: the hub's owner, or a device in a walk. */
export type Caller =
  | { readonly kind: "owner" }
  | { readonly kind: "member"; readonly member: Member; readonly by: "bearer" | "cookie" };
