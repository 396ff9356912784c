import { readFileSync } from "node:fs";
import { z } from "zod";

/** Where package.json lies. Seen from this file and from the built program it is the same, in a checkout and where the package is installed. */
const PACKAGE = new URL("../../package.json", import.meta.url);

const named = z.object({ version: z.string().min(1) });

/** The version of this program, as its package.json says it. */
export function programVersion(): string {
  return named.parse(JSON.parse(readFileSync(PACKAGE, "utf8"))).version;
}
