import type { Entry } from "../../core/log/index.ts";
import { isSameStatement, jsonOf, readEntry } from "../../core/log/index.ts";
import type { Comparison } from "./engine.ts";

/** Compares an entry with the text that is stored under its source and id. */
export function compareEntry(storedText: string, entry: Entry): Comparison {
  if (JSON.stringify(entry.wire) === storedText) return { kind: "known" };
  const { entry: stored } = readEntry(jsonOf(storedText));
  if (!stored || !isSameStatement(stored, entry)) return { kind: "conflict" };
  return stored.hlc === entry.hlc ? { kind: "known" } : { kind: "known", hlc: stored.hlc };
}
