import { message } from "../../words/index.ts";
import type { ReadOrbit } from "./element-set.ts";
import { refusedOrbit } from "./element-set.ts";
import { readOmmJson, readOmmKvn, readOmmXml } from "./read-omm.ts";
import { readTle } from "./read-tle.ts";

/**
 * Reads an orbit file: an OMM in JSON, KVN or XML, or a two-line element set ([LGT1]). Every problem is reported with
 * its field. Never throws.
 */
export function readOrbit(source: string): ReadOrbit {
  const text = source.replace(/^\uFEFF/, "").trim();
  if (text === "") return refusedOrbit([{ field: message("orbit/file"), reason: message("orbit/empty") }]);
  if (text.startsWith("{") || text.startsWith("[")) return readOmmJson(text);
  if (text.startsWith("<")) return readOmmXml(text);
  if (/^[A-Z][A-Z0-9_]*\s*=/m.test(text)) return readOmmKvn(text);
  return readTle(text);
}
