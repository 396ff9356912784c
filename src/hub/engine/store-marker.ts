import { closeSync, fsyncSync, openSync, readFileSync, renameSync, writeSync } from "node:fs";
import { dirname, join } from "node:path";
import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import { message, words } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";

const MARKER = "hub-store.json";

const markerSchema = z.object({
  about: z.string(),
  /** The seal that the store had when it was last opened or closed; two while that changes. */
  seals: z.array(z.string()).min(1).max(2),
});

/** Where the marker of a data folder is. */
export function markerPath(folder: string): string {
  return join(folder, MARKER);
}

/** The seals in the marker beside a store; `null` when there is no marker. */
export function readMarker(folder: string): readonly string[] | null {
  const path = markerPath(folder);
  let text: string;
  try {
    text = readFileSync(path, "utf8");
  } catch (cause) {
    if (cause instanceof Error && "code" in cause && cause.code === "ENOENT") return null;
    throw cause;
  }
  const marker = markerSchema.safeParse(jsonOf(text));
  if (marker.success) return marker.data.seals;
  throw new EngineTroubleError(message("engine/marker-damaged", { path }));
}

/** Writes the marker so that either the old or the new one is there whatever happens. */
export function writeMarker(folder: string, seals: readonly string[]): void {
  const path = markerPath(folder);
  const draft = `${path}.new`;
  const file = openSync(draft, "w", 0o600);
  try {
    writeSync(file, `${JSON.stringify({ about: words("engine/marker-about"), seals }, null, 2)}\n`);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(draft, path);
  const folderFile = openSync(dirname(path), "r");
  try {
    fsyncSync(folderFile);
  } finally {
    closeSync(folderFile);
  }
}
