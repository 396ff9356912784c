import type { Message } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import type { StoreTrouble } from "./store-trouble.ts";
import { troubleMessage } from "./store-trouble.ts";

/** Whether an entry that is confirmed at this moment is on disk. */
export type StoreStatus =
  | { readonly kind: "durable" }
  | {
      readonly kind: "memory";
      readonly reason: StoreTrouble;
      /** What happened and what to do, for the reader. */
      readonly message: Message;
      /** How many entries are in memory only. */
      readonly unsaved: number;
    };

/** The status of a store that is sound. */
export const DURABLE: StoreStatus = { kind: "durable" };

/** The status of a store that had to give up the disk. */
export function inMemory(reason: StoreTrouble, unsaved: number): StoreStatus {
  const told = message("store/in-memory", { trouble: troubleMessage(reason) });
  return { kind: "memory", reason, message: told, unsaved };
}
