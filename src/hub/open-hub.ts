import type { WalkId } from "../core/units/index.ts";
import { Admission } from "./admission/index.ts";
import { BeyondBoard } from "./beyond/index.ts";
import { CursorSeal } from "./cursors/index.ts";
import { SurpriseCurtain } from "./curtain/index.ts";
import { roomOf } from "./data-folder/index.ts";
import type { Engine } from "./engine/index.ts";
import { Intake } from "./entries/index.ts";
import { NO_JOURNAL } from "./journal/index.ts";
import { HubMetrics } from "./metrics/index.ts";
import { startNews } from "./news/index.ts";
import { PresenceBoard } from "./presence/index.ts";
import { type HubParts, makeServer, type ServerOptions } from "./routes/index.ts";
import { FanOut } from "./stream/index.ts";
import type { Surroundings } from "./surroundings/index.ts";
import { hubKey, Witness, type Word } from "./witness/index.ts";

/** A hub on an open engine: its parts and its server, which is ready to listen. */
export interface OpenHub {
  readonly parts: HubParts;
  readonly server: Awaited<ReturnType<typeof makeServer>>;
  /** Ends all streams, the server and the engine. */
  close(): Promise<void>;
}

/** What a hub is called, and what it does anew. */
export interface HubIdentity {
  readonly name: string;
  readonly newOwnerCode: boolean;
  /** False for a hub that writes nothing of itself into logs; it does unless said. */
  readonly isWitness?: boolean;
}

/** Puts a hub together on an open engine. */
export async function openHub(
  engine: Engine,
  surroundings: Surroundings,
  { name, newOwnerCode, isWitness = true }: HubIdentity,
  options: ServerOptions,
): Promise<OpenHub> {
  const admission = await Admission.open(engine, surroundings, newOwnerCode);
  const cursors = await CursorSeal.open(engine, surroundings);
  const fanOut = new FanOut(engine, cursors);
  const curtain = new SurpriseCurtain(engine);
  const journal = options.journal ?? NO_JOURNAL;
  journal.note({ event: "started", epoch: engine.epoch });
  const stopNoting = [
    engine.onEpoch(() => journal.note({ event: "another-epoch", epoch: engine.epoch })),
    admission.listen({ ended: ({ walk, device }) => journal.note({ event: "token-ended", walk, device }) }),
  ];
  const beyond = new BeyondBoard();
  const metrics = new HubMetrics({
    followers: () => fanOut.size,
    links: () => beyond.all(),
    room: () => roomOf(options.data),
    now: surroundings.now,
  });
  const id = await hubId(engine, surroundings);
  const key = await hubKey(engine.keep);
  const witness = isWitness
    ? new Witness({
        engine,
        surroundings,
        key,
        id,
        name,
        ofMembers: (walk) => wordsOf(admission, walk),
        tell: options.tell,
      })
    : null;
  const isOwn = (walk: WalkId, device: string) => device === witness?.source || admission.isOwn(walk, device);
  const parts: HubParts = {
    engine,
    surroundings,
    admission,
    intake: new Intake({
      engine,
      surroundings,
      listener: metrics,
      isOwn,
      keyOf: (walk, device) => admission.keyOf(walk, device),
    }),
    fanOut,
    curtain,
    cursors,
    tell: options.tell,
    journal,
    presence: new PresenceBoard(engine, admission, surroundings),
    beyond,
    metrics,
    witness,
    isOwn,
    key,
    id,
    name,
  };
  await witness?.begin();
  const endNews = startNews(parts, options.tell);
  const server = await makeServer(parts, options);
  return {
    parts,
    server,
    close: async () => {
      endNews();
      for (const stop of stopNoting) stop();
      fanOut.close();
      curtain.close();
      await server.close();
      await witness?.close();
      parts.intake.close();
      parts.presence.close();
      admission.close();
      await engine.close();
      journal.note({ event: "ended", epoch: engine.epoch });
      journal.close();
    },
  };
}

/** The device name of this hub, where it is a device to others; made once for all hubs on the engine. */
async function hubId({ keep }: Engine, { randomBytes }: Surroundings): Promise<string> {
  const made = `/hubs/${Buffer.from(randomBytes(8)).toString("hex")}`;
  return (await keep.create("hub.id", made)) ? made : ((await keep.get("hub.id")) ?? made);
}

/** What a hub says of those who are in a walk. Another hub is no device: what it brings has its devices' seals, and its own. */
function wordsOf(admission: Admission, walk: WalkId): readonly Word[] {
  return admission.members(walk).flatMap(({ device: source, role, name }): readonly Word[] => {
    const key = admission.keyOf(walk, source);
    if (role !== "relay") return [{ name: "device.admitted", data: { source, key, role, name } }];
    return key === null ? [] : [{ name: "hub.vouched", data: { source, key } }];
  });
}
