import type { Entry, WireEntry } from "../log/index.ts";
import { linkOf } from "./link-of.ts";
import type { FitsEd25519 } from "./seal-fits.ts";
import { chainsOf } from "./source-keys.ts";
import type { Verification } from "./verification.ts";
import type { Verifying } from "./verify-log.ts";
import { verifyLog } from "./verify-log.ts";
import { bySourceOf } from "./walk-of.ts";

/** Whether a signature fits, by the platform: several are asked of it at once. */
export type PlatformFits = (...of: Parameters<FitsEd25519>) => Promise<boolean>;

/** How many signatures are asked of the platform at once. */
const AT_ONCE = 256;

type Look = Parameters<FitsEd25519>;

/**
 * Verifies a log as {@link verifyLog} does, and comes to the same, with signatures looked at by the platform, which does so
 * many times as fast as can be done here. `onProgress` is told of the seals that it looks at. Rejects when the platform does.
 */
export async function verifyLogBy(
  platform: PlatformFits,
  entries: readonly Entry[],
  trust: readonly string[],
  { isQuick = false, onProgress }: Pick<Verifying, "isQuick" | "onProgress"> = {},
): Promise<Verification | null> {
  const log = bySourceOf(entries);
  if (!log) return null;
  const links = new WeakMap<WireEntry, Uint8Array | null>();
  const linkFor = (wire: WireEntry): Uint8Array | null => {
    const known = links.get(wire);
    if (known !== undefined) return known;
    const link = linkOf(wire);
    links.set(wire, link);
    return link;
  };
  const looks = new Map<string, Look>();
  const note: FitsEd25519 = (...look) => {
    looks.set(nameOf(look), look);
    return true;
  };
  chainsOf(log.bySource, new Set(trust), { isQuick, linkOf: linkFor, fits: note });
  const fitting = new Set<string>();
  const asked = [...looks];
  for (let from = 0; from < asked.length; from += AT_ONCE) {
    await Promise.all(
      asked.slice(from, from + AT_ONCE).map(async ([name, look]) => {
        if (await platform(...look)) fitting.add(name);
      }),
    );
    onProgress?.(Math.min(asked.length, from + AT_ONCE), asked.length);
  }
  // Where a seal does not fit, other keys may count than were asked about: those are looked at here.
  return verifyLog(entries, trust, {
    isQuick,
    linkOf: linkFor,
    fits: (...look) => fitting.has(nameOf(look)),
  });
}

/** Signatures and keys have one length each, so that what follows them in a row begins at one place. */
const nameOf = ([signature, signed, key]: Look): string =>
  String.fromCharCode(...signature, ...key, ...signed);
