import { words } from "../../words/index.ts";
import type { Told } from "../learn/index.ts";

/** What a page about the walks of a procedure says while it has nothing to show. */
export function pageWords(isHere: boolean, isReadable: boolean, isRead: boolean, told: Told): string {
  if (!isHere) return words(isRead ? "parts/no-such-procedure" : "parts/opening-procedure");
  if (!isReadable) return "";
  return words(told === "failed" ? "learn/failed" : "learn/working");
}
