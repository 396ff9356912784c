import type { Entry } from "../../core/log/index.ts";
import type { Instant } from "../../core/units/index.ts";
import type { FindPen } from "./find-pen.ts";
import type { LinkRow } from "./link-row.ts";
import type { StoreTrouble } from "./store-trouble.ts";
import type { WalkStore } from "./walk-store.ts";

/** What a page knows of a store that was deleted. */
export interface KnownOfStore {
  readonly entries: readonly Entry[];
  readonly links: readonly LinkRow[];
}

/** What a fallback store is made of. */
export interface FallbackParts {
  /** `null` when there was no store on disk from the start. */
  readonly durable: WalkStore | null;
  /** Why there was none; ignored when there was one. */
  readonly reason?: StoreTrouble;
  /**
   * The source for what is entered in memory. It must be one of its own: the numbers after the last on disk are given
   * again after a restart, and two entries must never have the same source and id.
   */
  readonly memorySource: string;
  readonly now: () => Instant;
  /** Makes a store on disk that was deleted this device's again, with all that is known of it; rejects while it cannot. None unless given. */
  readonly putBack?: (known: KnownOfStore) => Promise<void>;
  /** Milliseconds of a clock that is never set; `performance.now()` unless given. */
  readonly ticks?: () => number;
  /** For what is entered in memory, which goes unsealed unless given. */
  readonly findPen?: FindPen;
}
