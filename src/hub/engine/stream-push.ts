import type { JetStreamClient, JetStreamManager, JsMsg } from "@nats-io/jetstream";
import { AckPolicy, DeliverPolicy } from "@nats-io/jetstream";
import { createInbox, type NatsConnection, nanos } from "@nats-io/transport-node";

/** A connection to a JetStream. */
export interface Streams {
  readonly connection: NatsConnection;
  readonly client: JetStreamClient;
  readonly manager: JetStreamManager;
}

/** What is to be sent of a stream. */
export interface PushWish {
  readonly stream: string;
  readonly subject: string;
  /** The first sequence that may be sent. */
  readonly from: number;
  readonly onMessage: (message: JsMsg) => void;
  /** It will not go on: a message was missed, or no sign of life came. Called at most once. */
  readonly onBroken: () => void;
}

/** Messages of a stream that the server sends. */
export interface Push {
  /** How many there were to be sent at the beginning. */
  readonly pending: number;
  stop(): void;
}

/** The interval of the server's heartbeats, in ms. Missing two of them ends the push. */
const HEARTBEAT = 1_000;
/** How long the server remembers a reader that has gone, in ms. */
const FORGET_AFTER = 30_000;

/**
 * Has the server send messages of a stream, in order and without gaps until it is broken. The library's own ordered
 * consumer looks for signs of life every 30 s only, which is too long for a server that died.
 */
export async function pushFrom({ client, manager }: Streams, wish: PushWish): Promise<Push> {
  const { stream, subject, from, onMessage, onBroken } = wish;
  const inbox = createInbox();
  let delivered = 0;
  let isOver = false;
  let remove = (): void => {};
  const stop = (): void => {
    if (isOver) return;
    isOver = true;
    messages.stop();
    remove();
  };
  const broken = (): void => {
    if (isOver) return;
    stop();
    onBroken();
  };
  const bound = await client.consumers.getBoundPushConsumer({
    deliver_subject: inbox,
    idle_heartbeat: nanos(HEARTBEAT),
  });
  const messages = await bound.consume({
    callback: (message) => {
      if (isOver) return;
      delivered += 1;
      if (message.info.deliverySequence === delivered) onMessage(message);
      else broken();
    },
  });
  void (async () => {
    for await (const { type } of messages.status()) {
      if (type === "heartbeats_missed" || type === "consumer_deleted") broken();
    }
  })();
  try {
    const { name, num_pending } = await manager.consumers.add(stream, {
      ack_policy: AckPolicy.None,
      deliver_policy: DeliverPolicy.StartSequence,
      opt_start_seq: from,
      deliver_subject: inbox,
      filter_subject: subject,
      flow_control: true,
      idle_heartbeat: nanos(HEARTBEAT),
      inactive_threshold: nanos(FORGET_AFTER),
      max_deliver: 1,
      mem_storage: true,
      num_replicas: 1,
    });
    // A server that is gone has forgotten it anyway.
    remove = () => void manager.consumers.delete(stream, name).catch(() => {});
    if (isOver) remove();
    return { pending: num_pending + delivered, stop };
  } catch (cause) {
    stop();
    throw cause;
  }
}
