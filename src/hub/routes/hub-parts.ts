import type { SigningKey } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Admission } from "../admission/index.ts";
import type { BeyondBoard } from "../beyond/index.ts";
import type { CursorSeal } from "../cursors/index.ts";
import type { SurpriseCurtain } from "../curtain/index.ts";
import type { Engine } from "../engine/index.ts";
import type { Intake } from "../entries/index.ts";
import type { Journal } from "../journal/index.ts";
import type { HubMetrics } from "../metrics/index.ts";
import type { PresenceBoard } from "../presence/index.ts";
import type { FanOut } from "../stream/index.ts";
import type { Surroundings } from "../surroundings/index.ts";
import type { Witness } from "../witness/index.ts";

/** What a hub is made of, for whoever answers requests, and for a link with a hub beyond. */
export interface HubParts {
  readonly engine: Engine;
  readonly surroundings: Surroundings;
  readonly admission: Admission;
  /** Judges and keeps entries. */
  readonly intake: Intake;
  readonly fanOut: FanOut;
  /** Keeps surprises from those who follow until the walk is closed. */
  readonly curtain: SurpriseCurtain;
  /** Gives and judges the cursors of readers. */
  readonly cursors: CursorSeal;
  /** Writes down who came in and who did not. */
  readonly journal: Journal;
  /** For the console. */
  readonly tell: (words: string) => void;
  readonly presence: PresenceBoard;
  /** Whoever links with a hub beyond says here how that goes. */
  readonly beyond: BeyondBoard;
  readonly metrics: HubMetrics;
  /** Writes what this hub says of itself into logs; `null` where it says nothing. */
  readonly witness: Witness | null;
  /** Whether what a device wrote comes from nowhere else: it was admitted by this hub, or is this hub. */
  readonly isOwn: (walk: WalkId, device: string) => boolean;
  /** What this hub proves itself by. */
  readonly key: SigningKey;
  /** `/hubs/…`: the same for all processes on one engine. */
  readonly id: string;
  /** What people call it. */
  readonly name: string;
}
