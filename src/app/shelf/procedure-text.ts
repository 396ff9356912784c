import type { DeviceStore } from "../../io/store/index.ts";
import { bundledText } from "./bundled-procedures.ts";

/** The text of a procedure on the shelf; `null` when there is none with that key. */
export async function procedureText(store: DeviceStore, key: string): Promise<string | null> {
  const kept = await store.shelf.procedure(key);
  return kept ? kept.text : bundledText(key);
}
