import type { LinkTime, SigningKey } from "../../core/link/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { BeyondBoard } from "../beyond/index.ts";
import type { Engine } from "../engine/index.ts";
import type { Journal } from "../journal/index.ts";
import type { Word } from "../witness/index.ts";
import type { FarClient } from "./far-client.ts";

/** What links this hub with another one. */
export interface UpstreamParts {
  readonly engine: Engine;
  readonly board: BeyondBoard;
  /** Whether a device was admitted by this hub. */
  readonly isOwn: (walk: WalkId, device: string) => boolean;
  readonly journal: Journal;
  /** What this hub proves itself by. */
  readonly key: SigningKey;
  /** Has something said of the other hub in the log of a walk. */
  readonly say: (walk: WalkId, word: Word) => void;
  /** Name of this hub as a device, and what people call it. */
  readonly id: string;
  readonly name: string;
  readonly far: FarClient;
  /** Where the other hub is, for messages and to keep its tickets apart. */
  readonly origin: string;
  /** The other hub's owner's code, for all walks, or an invitation as relay, for one. */
  readonly code: string;
  readonly time: LinkTime;
  /** For the console. */
  readonly tell: (words: string) => void;
}
