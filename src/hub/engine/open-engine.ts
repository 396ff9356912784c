import type { Instant } from "../../core/units/index.ts";
import type { Engine } from "./engine.ts";
import { openSqliteEngine } from "./sqlite-engine.ts";

/** Where a hub keeps its log. */
export interface EnginePlace {
  /** The data folder. */
  readonly data: string;
  /** Address of a server that several hubs share (`nats://host:port`); `null` keeps everything in the data folder. */
  readonly engine: string | null;
  /** The hub's clock. */
  readonly now: () => Instant;
}

/** Opens the store of a hub, or makes it when there never was one. Rejects with {@link EngineTroubleError}. */
export async function openEngine({ data, engine, now }: EnginePlace): Promise<Engine> {
  if (engine === null) return openSqliteEngine(data, now);
  // Loaded only where it is wanted: a hub on one machine needs no NATS client.
  const { openJetstreamEngine } = await import("./jetstream-engine.ts");
  return openJetstreamEngine(engine, now);
}
