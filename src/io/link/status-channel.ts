import type { WalkId } from "../../core/units/index.ts";
import type { LinkStatus } from "./link-keeper.ts";

/** The part of a BroadcastChannel that is used. */
export interface Channel {
  postMessage(message: unknown): void;
  close(): void;
  onmessage: ((event: MessageEvent) => void) | null;
}

/** What pages of this device tell one another: the status of a walk that one of them links, or the wish to know it. */
export type ChannelMessage =
  | { readonly kind: "status"; readonly walk: WalkId; readonly status: LinkStatus }
  | { readonly kind: "ask"; readonly walk: WalkId };

/** Calls back with what other pages say on a channel; messages of other versions of this app are ignored. */
export function hearOn(channel: Channel, hear: (message: ChannelMessage) => void): void {
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (typeof data !== "object" || data === null) return;
    const { version, message } = data as { version?: unknown; message?: unknown };
    if (version === VERSION) hear(message as ChannelMessage);
  };
}

/** Says something to the other pages. */
export function sayOn(channel: Channel, message: ChannelMessage): void {
  channel.postMessage({ version: VERSION, message });
}

/** Changes with the shape of {@link ChannelMessage}: pages of two versions may be open at once. */
const VERSION = 2;
