import type { z } from "zod";
import type { Entry, Role } from "../log/index.ts";
import type { Instant, WalkId } from "../units/index.ts";
import type { Cursor } from "./cursor.ts";
import { writeCursor } from "./cursor.ts";
import type { HubSession, HubWalk, Invitation, Joined, OpenInvitation, PushAnswer } from "./exchange.ts";
import {
  challengeSchema,
  hubClockSchema,
  hubWalksSchema,
  invitationSchema,
  joinedSchema,
  openInvitationsSchema,
  pushAnswerSchema,
  sessionSchema,
  withdrawnSchema,
} from "./exchange.ts";
import type { HubManner } from "./hub-answers.ts";
import { goodAnswer, HubRefusedError, readAs, textOf } from "./hub-answers.ts";
import type { AskHub, HubAnswer, HubRequest } from "./hub-request.ts";
import type { JoinProof, SigningKey } from "./join-proof.ts";
import { joinText } from "./join-proof.ts";

/** What a client of a hub is made of. */
export interface HubClientParts {
  readonly ask: AskHub;
  readonly manner: HubManner;
}

/** What a device, or another hub, says on joining. */
export interface JoinRequest {
  /** An invitation's code, or the owner's. */
  readonly code: string;
  readonly device: string;
  readonly name: string;
  /** Which walk; needed with the owner's code, while an invitation has its own. */
  readonly walk?: WalkId;
  /** The role that is wished for with the owner's code; lead unless given. */
  readonly role?: Role;
  /** How the token is given: in a cookie that no script sees, or in the answer. */
  readonly use: "cookie" | "bearer";
}

/** By what a device proves its key, and where it reaches the hub, `name:port`. */
export interface Prover {
  readonly key: SigningKey;
  readonly host: string;
}

/** What may go along with a request. */
export interface RequestOptions {
  /** A token or the owner's code; when missing, the caller's own credentials are used, such as a cookie. */
  readonly credential?: string;
  readonly signal?: AbortSignal;
}

const JSON_BODY = { "content-type": "application/json" };

/**
 * A hub, asked over HTTP. Everything rejects with an `UnreachableError`, a `TurnedAwayError` or a `HubRefusedError`, whose
 * message is a sentence for the reader.
 */
export class HubClient {
  readonly manner: HubManner;
  readonly #ask: AskHub;

  constructor({ ask, manner }: HubClientParts) {
    this.#ask = ask;
    this.manner = manner;
  }

  /** What the hub's clock shows. */
  async clock(options: RequestOptions = {}): Promise<Instant> {
    return (await this.#read(hubClockSchema(), get("/api/clock", options))).now;
  }

  /** Asks to be let into a walk, and proves the device's key where it has one. */
  async join(
    request: JoinRequest,
    { prover = null, ...options }: RequestOptions & { readonly prover?: Prover | null } = {},
  ): Promise<Joined> {
    const proof = prover && (await this.#prove(request, prover, options));
    return this.#read(
      joinedSchema(),
      post("/api/join", { ...request, ...(proof === null ? {} : { proof }) }, options),
    );
  }

  /** The walks that the hub shows: all of them for the owner's code. */
  async walks(options: RequestOptions): Promise<readonly HubWalk[]> {
    return (await this.#read(hubWalksSchema(), get("/api/walks", options))).walks;
  }

  /** What this device is in a walk, by its cookie; rejects with a {@link TurnedAwayError} when it is nothing. */
  session(walk: WalkId, options: RequestOptions = {}): Promise<HubSession> {
    return this.#read(sessionSchema(), get(`${pathOf(walk)}/session`, options));
  }

  /** Leaves a walk: the device's token is dead from then on. */
  async leave(walk: WalkId): Promise<void> {
    await this.#done(post(`${pathOf(walk)}/leave`, {}));
  }

  /** Makes a code by which so many devices may join within so many minutes. */
  invite(walk: WalkId, role: Role, minutes: number, devices = 1): Promise<Invitation> {
    return this.#read(invitationSchema(), post(`${pathOf(walk)}/invitations`, { role, minutes, devices }));
  }

  /** The invitations of a walk that are still good. */
  async invitations(walk: WalkId): Promise<readonly OpenInvitation[]> {
    return (await this.#read(openInvitationsSchema(), get(`${pathOf(walk)}/invitations`))).invitations;
  }

  /** Ends an invitation by its name: its code is dead, who came by it stays. */
  async endInvitation(walk: WalkId, name: string): Promise<void> {
    const path = `${pathOf(walk)}/invitations/${encodeURIComponent(name)}`;
    await this.#done({ ...get(path), method: "DELETE" });
  }

  /** Takes another device off a walk. */
  async withdraw(walk: WalkId, device: string): Promise<void> {
    const path = `${pathOf(walk)}/followers/${encodeURIComponent(device)}`;
    await this.#done({ ...get(path), method: "DELETE" });
  }

  /** Takes everybody but this device off a walk and ends its invitations; resolves with how many devices were taken off. */
  async withdrawAll(walk: WalkId): Promise<number> {
    const request = { ...get(`${pathOf(walk)}/followers`), method: "DELETE" } as const;
    return (await this.#read(withdrawnSchema(), request)).withdrawn;
  }

  /** Tells the hub how far this reader has read. */
  async present(walk: WalkId, cursor: Cursor, options: RequestOptions = {}): Promise<void> {
    await this.#done(post(`${pathOf(walk)}/presence`, { cursor: writeCursor(cursor) }, options));
  }

  /** Offers entries; the answer may take as long as the signal allows. */
  push(walk: WalkId, entries: readonly Entry[], options: RequestOptions = {}): Promise<PushAnswer> {
    const batch = entries.map(({ wire }) => wire);
    const { headers, ...request } = post(`${pathOf(walk)}/entries`, batch, options);
    return this.#read(pushAnswerSchema(), {
      ...request,
      headers: { ...headers, "content-type": "application/cloudevents-batch+json" },
      isLong: true,
    });
  }

  /** Opens the stream of a walk's log behind a cursor, or from its beginning. */
  stream(walk: WalkId, after: Cursor | null, options: RequestOptions = {}): Promise<HubAnswer> {
    const { headers, ...request } = get(`${pathOf(walk)}/entries`, options);
    const resumed = after === null ? {} : { "last-event-id": writeCursor(after) };
    return this.#good({
      ...request,
      headers: { ...headers, accept: "text/event-stream", ...resumed },
      isLong: true,
    });
  }

  /** `null` for a hub of an earlier version, which asks for no proof. */
  async #prove(
    { code, device, walk: wished }: JoinRequest,
    { key, host }: Prover,
    options: RequestOptions,
  ): Promise<JoinProof | null> {
    const asked = { code, device, ...(wished === undefined ? {} : { walk: wished }) };
    try {
      const { challenge, walk } = await this.#read(
        challengeSchema(),
        post("/api/join/challenge", asked, options),
      );
      const signature = await key.sign(joinText({ challenge, walk, device, host }));
      return { key: key.publicKey, challenge, host, signature };
    } catch (cause) {
      if (cause instanceof HubRefusedError && cause.reason === "not-found") return null;
      throw cause;
    }
  }

  #good(request: HubRequest): Promise<HubAnswer> {
    return goodAnswer(this.#ask, request, this.manner);
  }

  async #read<Schema extends z.ZodType>(schema: Schema, request: HubRequest): Promise<z.output<Schema>> {
    return readAs(await this.#good(request), schema, this.manner);
  }

  /** For an answer of which only the status counts. */
  async #done(request: HubRequest): Promise<void> {
    await textOf(await this.#good(request), this.manner);
  }
}

function get(path: string, { credential, signal }: RequestOptions = {}): HubRequest {
  return {
    method: "GET",
    path,
    headers: credential === undefined ? {} : { authorization: `Bearer ${credential}` },
    isLong: false,
    ...(signal === undefined ? {} : { signal }),
  };
}

function post(path: string, body: unknown, options: RequestOptions = {}): HubRequest {
  const { headers, ...request } = get(path, options);
  return { ...request, method: "POST", headers: { ...headers, ...JSON_BODY }, body: JSON.stringify(body) };
}

function pathOf(walk: WalkId): string {
  return `/api/walks/${encodeURIComponent(walk)}`;
}
