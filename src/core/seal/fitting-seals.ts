import type { Entry } from "../log/index.ts";
import { linkOf } from "./link-of.ts";
import { sealFits, sealKeyOf } from "./seal-fits.ts";

/**
 * Those of some entries whose seals fit the key that their source names within a log, which holds them. A source that names none there, or
 * two, has no seal that fits.
 */
export function fittingSeals(entries: readonly Entry[], log: readonly Entry[]): readonly Entry[] {
  const named = new Map<string, unknown>();
  for (const { wire } of log) {
    const { source, sealkey } = wire;
    if (sealkey === undefined) continue;
    const known = named.get(source);
    named.set(source, known === undefined || known === sealkey ? sealkey : null);
  }
  return entries.filter(({ wire }) => {
    const key = sealKeyOf(named.get(wire.source));
    const link = linkOf(wire);
    return key !== null && link !== null && sealFits(link, wire["seal"], key);
  });
}
