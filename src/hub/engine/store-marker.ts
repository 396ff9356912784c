import { fstatSync, futimesSync, readFileSync, type Stats, statSync, writeSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import { message, words } from "../../words/index.ts";
import { writeWhole } from "../data-folder/index.ts";
import { EngineTroubleError } from "./engine.ts";

const MARKER = "hub-store.json";
/** The time between writing a marker and giving it its name, in ms, at most; one that was copied has changed later. */
const AT_ONCE = 2_000;
/** How exactly file systems keep the time that a file is given, in ms. */
const EXACT = 2;

const markerSchema = z.object({
  about: z.string(),
  /** The seal that the store had when it was last opened or closed; two while that changes. */
  seals: z.array(z.string()).min(1).max(2),
  epoch: z.string().min(1).optional(),
  /** The file of the store as it then was, see {@link placeOf}. */
  place: z.string().nullable().default(null),
  /** `moving`: the file of the store is being written and is not at its `place`. */
  state: z.enum(["open", "moving", "closed"]).default("moving"),
  /** When the marker was written, by the clock of its file system, in ms. */
  written: z.number().default(0),
  /** Which file the marker was written as. */
  self: z.string().optional(),
});

/** What is kept beside a store, for the next opening to find out whether the store is still the one that was closed or left. */
export type Marker = Omit<z.output<typeof markerSchema>, "about" | "written" | "self">;

/** A marker as found. */
export interface FoundMarker extends Marker {
  /** Whether it was brought here from elsewhere, such as from a backup. */
  readonly isCopied: boolean;
}

/** Where the marker of a data folder is. */
export function markerPath(folder: string): string {
  return join(folder, MARKER);
}

/**
 * Where a file is and when it last changed. No way of copying keeps all of it: the time of the last change of a file's
 * contents or names (`ctime`) cannot be set.
 */
export function placeOf(file: string): string {
  const { dev, ino, birthtimeNs, mtimeNs, ctimeNs, size } = statSync(file, { bigint: true });
  return `${dev}:${ino}:${birthtimeNs}:${mtimeNs}:${ctimeNs}:${size}`;
}

const selfOf = ({ dev, ino, birthtimeMs }: Stats) => `${dev}:${ino}:${Math.floor(birthtimeMs)}`;

/** The marker beside a store; `null` when there is none. */
export function readMarker(folder: string): FoundMarker | null {
  const path = markerPath(folder);
  let text: string;
  let found: Stats;
  try {
    text = readFileSync(path, "utf8");
    found = statSync(path);
  } catch (cause) {
    if (cause instanceof Error && "code" in cause && cause.code === "ENOENT") return null;
    throw cause;
  }
  const marker = markerSchema.safeParse(jsonOf(text));
  if (!marker.success) throw new EngineTroubleError(message("engine/marker-damaged", { path }));
  const { about: _about, written, self, ...rest } = marker.data;
  // Copying keeps neither the file nor the time of its last change, and most ways not even the time it was given.
  const isItself =
    self === selfOf(found) &&
    Math.abs(found.mtimeMs - written) <= EXACT &&
    Math.abs(found.ctimeMs - written) <= AT_ONCE;
  return { ...rest, isCopied: written > 0 && !isItself };
}

/** Writes the marker so that either the old or the new one is there whatever happens. */
export function writeMarker(folder: string, marker: Marker): void {
  const path = markerPath(folder);
  writeWhole(path, (file) => {
    // The file system has the last word on what time it is there.
    const stats = fstatSync(file);
    const [about, written] = [words("engine/marker-about"), Math.floor(stats.ctimeMs)];
    writeSync(file, `${JSON.stringify({ about, ...marker, written, self: selfOf(stats) }, null, 2)}\n`);
    futimesSync(file, written / 1000, written / 1000);
  });
}
