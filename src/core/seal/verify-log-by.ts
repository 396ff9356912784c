import type { Entry } from "../log/index.ts";
import type { Look, SealLooks } from "./seal-looks.ts";
import type { Verification } from "./verification.ts";
import type { Verifying } from "./verify-log.ts";
import { verifyLog } from "./verify-log.ts";

/**
 * Verifies a log as {@link verifyLog} does, and comes to the same, with the seals looked at by the platform. While it looks, the log is verified as if all seals fitted that are
 * not looked at yet; where one does not, it is verified once more. `onProgress` is told of the seals. Rejects when the platform does.
 */
export async function verifyLogBy(
  looks: SealLooks,
  entries: readonly Entry[],
  trust: readonly string[],
  { isQuick = false, onProgress }: Pick<Verifying, "isQuick" | "onProgress"> = {},
): Promise<Verification | null> {
  for (;;) {
    const assumed: Look[] = [];
    const found = verifyLog(entries, trust, {
      isQuick,
      linkOf: looks.linkOf,
      fits: (...of) => {
        const look = looks.look(...of);
        if (look.fits === null) assumed.push(look);
        return look.fits ?? true;
      },
    });
    await looks.settled(onProgress);
    if (assumed.every(({ fits }) => fits)) return found;
  }
}
