import { useEffect, useMemo, useState, useSyncExternalStore } from "react";
import type { Site } from "../../core/light/index.ts";
import type { RecordedLight } from "../../core/plan/index.ts";
import type { Instant } from "../../core/units/index.ts";
import {
  chooseLight,
  contactSites,
  isLightOff,
  lightChoice,
  setLightOff,
  watchLightOff,
  withSites,
} from "../session/index.ts";
import { type BundledLight, bundledLight } from "../shelf/index.ts";

/** Where day and night of a procedure come from on this device. */
export interface ProcedureLight {
  /** What the reader chose, or else what comes with the procedure; `null` for neither. */
  readonly choice: RecordedLight | null;
  /** The ground sites for contact, which count with an orbit. */
  readonly sites: readonly Site[];
  /** True for an orbit that comes with the procedure. */
  readonly isBundled: boolean;
  /** The start that this orbit was made for; `null` while another source is in use. */
  readonly start: Instant | null;
  /** Goes back to the orbit that comes with the procedure; `null` while that is in use, or when there is none. */
  readonly takeBundled: (() => void) | null;
  /** Takes the source in use off; `null` without one. */
  readonly takeOff: (() => void) | null;
}

/**
 * The source of day and night for a procedure, by its id; `null` while that is not known. The reader's own choice comes before the orbit
 * that comes with the procedure, which can be taken off.
 */
export function useProcedureLight(procedure: string | null): ProcedureLight {
  const chosen = useSyncExternalStore(lightChoice.watch, lightChoice.current);
  const sites = useSyncExternalStore(contactSites.watch, contactSites.current);
  const isOff = useSyncExternalStore(watchLightOff, () => procedure !== null && isLightOff(procedure));
  const [found, setFound] = useState<{ readonly of: string; readonly bundled: BundledLight | null } | null>(
    null,
  );
  useEffect(() => {
    if (procedure === null) return;
    let isOver = false;
    const take = (bundled: BundledLight | null) => {
      if (!isOver) setFound({ of: procedure, bundled });
    };
    // What cannot be loaded is not there: the screen then says that day and night are not known.
    bundledLight(procedure).then(take, () => take(null));
    return () => {
      isOver = true;
    };
  }, [procedure]);
  const bundled = found?.of === procedure ? found.bundled : null;
  return useMemo((): ProcedureLight => {
    const isBundled = procedure !== null && chosen === null && !isOff && bundled !== null;
    const choice = withSites(chosen ?? (isBundled ? bundled.light : null), sites);
    return {
      choice,
      sites,
      isBundled,
      start: isBundled ? bundled.start : null,
      takeBundled:
        procedure === null || bundled === null || isBundled
          ? null
          : () => {
              chooseLight(null);
              setLightOff(procedure, false);
            },
      takeOff: choice === null ? null : () => (isBundled ? setLightOff(procedure, true) : chooseLight(null)),
    };
  }, [chosen, sites, isOff, bundled, procedure]);
}
