import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";

const ticketSchema = z.object({
  token: z.string().min(1),
  hub: z.string().min(1),
  hubName: z.string(),
  /** The mark of the invitation that it was given for; `null` when it was the owner's code. */
  invitation: z.string().nullable().default(null),
});

/** What another hub gave this one on joining a walk: a token, and its own name. */
export type Ticket = z.output<typeof ticketSchema>;

/** The tickets of another hub, kept so that a restart needs no code. */
export interface UpstreamBook {
  /** All tickets that can be read; for the others this hub has to join anew. */
  all(): Promise<ReadonlyMap<WalkId, Ticket>>;
  put(walk: WalkId, ticket: Ticket): Promise<void>;
  remove(walk: WalkId): Promise<void>;
}

/** The book of the hub at an address. */
export function upstreamBook(keep: Keep, origin: string): UpstreamBook {
  const prefix = `upstream.ticket ${origin} `;
  return {
    all: async () => {
      const tickets = new Map<WalkId, Ticket>();
      for (const [key, value] of await keep.list(prefix)) {
        const { data: ticket } = ticketSchema.safeParse(jsonOf(value));
        if (ticket) tickets.set(key.slice(prefix.length) as WalkId, ticket);
      }
      return tickets;
    },
    put: (walk, ticket) => keep.put(`${prefix}${walk}`, JSON.stringify(ticket)),
    remove: (walk) => keep.remove(`${prefix}${walk}`),
  };
}
