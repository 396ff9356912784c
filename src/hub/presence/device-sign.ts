import { z } from "zod";
import type { Instant } from "../../core/units/index.ts";

const instant = z
  .number()
  .int()
  .transform((value) => value as Instant);

/** What one hub process knows of a device in a walk, as it is whispered to the others. */
export const deviceSignSchema = z.object({
  /** The process. */
  hub: z.string(),
  walk: z.string(),
  device: z.string(),
  /** How many streams it has open there. */
  streams: z.number().int().min(0),
  /** How far it said that it has read, and when. */
  read: z.object({ offset: z.number().int().min(0), said: instant }).nullable(),
  /** When it was last heard. */
  heard: instant.nullable(),
});

/** What one hub process knows of a device in a walk. */
export type DeviceSign = z.output<typeof deviceSignSchema>;

/** What several hub processes know of one device, put together. */
export function mergedSign(signs: readonly DeviceSign[]): Pick<DeviceSign, "streams" | "read" | "heard"> {
  return signs.reduce<Pick<DeviceSign, "streams" | "read" | "heard">>(
    (all, { streams, read, heard }) => ({
      streams: all.streams + streams,
      read: read && (!all.read || read.said >= all.read.said) ? read : all.read,
      heard: heard !== null && (all.heard === null || heard > all.heard) ? heard : all.heard,
    }),
    { streams: 0, read: null, heard: null },
  );
}
