import type { DeviceStore } from "../../io/store/index.ts";
import { bundledProcedures } from "./bundled-procedures.ts";

/** The text of a procedure on the shelf; `null` when there is none with that key. */
export async function procedureText(store: DeviceStore, key: string): Promise<string | null> {
  const kept = await store.shelf.procedure(key);
  if (kept) return kept.text;
  const bundled = await bundledProcedures();
  return bundled.find((one) => one.key === key)?.text ?? null;
}
