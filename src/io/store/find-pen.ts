import type { Entry } from "../../core/log/index.ts";
import type { LinkRow } from "./link-row.ts";
import type { SealPen } from "./seal-pen.ts";

/**
 * Gives what seals on this device; `null` where there is none (yet), and entries go unsealed. It answers within a moment, so that nothing that is
 * entered waits for it, and never rejects.
 */
export type FindPen = () => Promise<SealPen | null>;

/** For a store whose entries go unsealed. */
export const NO_PEN: FindPen = async () => null;

/**
 * The pen for a walk, as far as there is one: none where its hub ties the device to another key, as that of a device which lost its store. A seal
 * with this key would be taken for a forgery there.
 */
export function penFor(pen: SealPen | null, link: Pick<LinkRow, "deviceKey"> | null): SealPen | null {
  const tied = link?.deviceKey ?? null;
  return tied === null || tied === pen?.publicKey ? pen : null;
}

/** Those of some entries that can be sealed, with their seals. */
export async function sealedOf(entries: readonly Entry[], pen: SealPen | null): Promise<readonly Entry[]> {
  const sealed: Entry[] = [];
  for (const entry of pen ? entries : []) {
    const one = await pen?.sealed(entry);
    if (one) sealed.push(one);
  }
  return sealed;
}
