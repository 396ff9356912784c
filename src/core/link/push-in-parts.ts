import type { Entry } from "../log/index.ts";
import type { PushAnswer } from "./exchange.ts";
import { HubRefusedError } from "./hub-answers.ts";
import type { FarSide } from "./link-sides.ts";

/**
 * Returns the same far side, except that a batch it refuses as a whole is offered again in two halves, and so on, until the
 * offending entry stands alone. Only that entry is then refused, as `not-an-entry`, with the far side's own message.
 */
export function pushInParts(far: FarSide): FarSide {
  const push = async (entries: readonly Entry[], signal: AbortSignal): Promise<PushAnswer> => {
    try {
      return await far.push(entries, signal);
    } catch (cause) {
      const [first] = entries;
      if (!(cause instanceof HubRefusedError) || !first) throw cause;
      if (entries.length > 1) {
        const half = Math.ceil(entries.length / 2);
        const one = await push(entries.slice(0, half), signal);
        const two = await push(entries.slice(half), signal);
        return { ...two, results: [...one.results, ...two.results] };
      }
      const { source, id } = first.wire;
      const refused = { outcome: "refused", reason: "not-an-entry", words: cause.message } as const;
      return { results: [{ source, id, ...refused }], gaps: [], now: first.at };
    }
  };
  return { ...far, push };
}
