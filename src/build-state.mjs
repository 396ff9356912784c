import { readdirSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";

const checkout = fileURLToPath(new URL("..", import.meta.url));

/** What the build is made of. */
const SOURCES = ["src", "procedures", "package.json", "vite.config.ts"];

/** A file that is written whenever a part is built. */
const BUILT = { app: "dist/app/index.html", program: "dist/program/main.js" };

/** Returns when a file was last written, in ms since 1970, or `null` when there is none. */
const writtenAt = (path) => statSync(checkout + path, { throwIfNoEntry: false })?.mtimeMs ?? null;

/** Returns when the newest of a file, or of the files in a folder and those below it, was written; 0 for none. */
function newestIn(path) {
  const entry = statSync(checkout + path, { throwIfNoEntry: false });
  if (!entry?.isDirectory()) return entry?.mtimeMs ?? 0;
  return Math.max(
    entry.mtimeMs,
    ...readdirSync(checkout + path, { withFileTypes: true }).map((member) =>
      member.isDirectory() ? newestIn(`${path}/${member.name}`) : (writtenAt(`${path}/${member.name}`) ?? 0),
    ),
  );
}

/**
 * Tells how a part of the build, `"app"` or `"program"`, stands to the sources beside it: `"missing"`, `"older"` than
 * one of them, or `"current"`. A package that is installed has no sources, and its build is current.
 */
export function buildState(part) {
  const built = writtenAt(BUILT[part]);
  if (built === null) return "missing";
  if (writtenAt("src/main.ts") === null) return "current";
  return Math.max(...SOURCES.map(newestIn)) > built ? "older" : "current";
}
