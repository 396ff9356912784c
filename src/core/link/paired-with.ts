import { message } from "../../words/index.ts";
import type { Entry } from "../log/index.ts";
import type { PushAnswer } from "./exchange.ts";
import type { Settled } from "./link-sides.ts";
import { UnreachableError } from "./link-sides.ts";

/** Each entry of a batch with its result. Throws an {@link UnreachableError} when the answer does not match the batch. */
export function pairedWith(batch: readonly Entry[], { results }: PushAnswer): readonly Settled[] {
  if (results.length !== batch.length) throw new UnreachableError(message("link/answer-unfit"));
  return batch.map((entry, index) => {
    const result = results[index];
    if (!result || (result.id !== null && result.id !== entry.wire.id)) {
      throw new UnreachableError(message("link/answer-unfit"));
    }
    return { entry, result };
  });
}
