import { randomBytes } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { InjectOptions, LightMyRequestResponse } from "fastify";
import type { Role } from "../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../src/core/units/index.ts";
import { type Engine, openEngine } from "../../src/hub/engine/index.ts";
import { type HubIdentity, type OpenHub, openHub } from "../../src/hub/open-hub.ts";
import { RATE_LIMITS, type ServerOptions } from "../../src/hub/routes/index.ts";

/** The walk of most tests. */
export const WALK = "walk-1" as WalkId;
/** When the tests' hubs think they are started. */
export const NOON = Date.UTC(2031, 3, 2, 12) as Instant;

/** A request, in short. */
export interface Asked {
  readonly token?: string | undefined;
  readonly body?: unknown;
  readonly type?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

/** A hub in this process, with a clock that stands still until it is moved. */
export class TestHub {
  now: Instant = NOON;
  readonly told: string[] = [];
  readonly hub: OpenHub;
  readonly engine: Engine;
  readonly #end: () => void;

  private constructor(hub: OpenHub, engine: Engine, clock: { hub: TestHub | null }, end: () => void) {
    this.hub = hub;
    this.engine = engine;
    this.#end = end;
    clock.hub = this;
  }

  /** Opens a hub on a new store, or on the engine of another one; it writes nothing of itself into logs unless asked. */
  static async open(
    { isWitness = false, ...options }: Partial<ServerOptions & HubIdentity> = {},
    shared: Engine | null = null,
  ): Promise<TestHub> {
    const clock: { hub: TestHub | null } = { hub: null };
    const now = () => clock.hub?.now ?? NOON;
    const data = mkdtempSync(join(tmpdir(), "tetherline-hub-"));
    const engine = shared ?? (await openEngine({ data, engine: null, now }));
    const hub = await openHub(
      engine,
      { now, randomBytes },
      { name: "Test hub", newOwnerCode: false, isWitness },
      {
        tls: null,
        insistsOnTls: false,
        authority: null,
        app: null,
        names: null,
        limits: RATE_LIMITS,
        address: () => null,
        tell: (words) => clock.hub?.told.push(words),
        ...options,
      },
    );
    return new TestHub(hub, engine, clock, () => rmSync(data, { recursive: true, force: true }));
  }

  get owner(): string {
    return this.hub.parts.admission.ownerCode;
  }

  /** Sends a request past the network. */
  ask(method: "GET" | "POST" | "DELETE", url: string, asked: Asked = {}): Promise<LightMyRequestResponse> {
    const { token, body, type = "application/json", headers = {} } = asked;
    const options: InjectOptions = {
      method,
      url,
      headers: {
        ...(body === undefined ? {} : { "content-type": type }),
        ...(token === undefined ? {} : { authorization: `Bearer ${token}` }),
        ...headers,
      },
      ...(body === undefined ? {} : { payload: typeof body === "string" ? body : JSON.stringify(body) }),
    };
    return this.hub.server.inject(options);
  }

  /** Joins with the owner's code; returns the token. */
  async join(device: string, role: Role = "lead", walk: string = WALK): Promise<string> {
    const answer = await this.ask("POST", "/api/join", { body: { code: this.owner, device, walk, role } });
    if (answer.statusCode !== 201) throw new Error(answer.body);
    return answer.json<{ token: string }>().token;
  }

  /** Makes an invitation as the owner; returns its code. */
  async invite(role: Role, minutes = 15, walk: string = WALK): Promise<string> {
    const answer = await this.ask("POST", `/api/walks/${walk}/invitations`, {
      token: this.owner,
      body: { role, minutes },
    });
    if (answer.statusCode !== 201) throw new Error(answer.body);
    return answer.json<{ code: string }>().code;
  }

  push(token: string, entries: unknown, walk: string = WALK): Promise<LightMyRequestResponse> {
    return this.ask("POST", `/api/walks/${walk}/entries`, {
      token,
      body: entries,
      type: "application/cloudevents-batch+json",
    });
  }

  /** What the walk's log is, as JSON Lines. */
  async log(walk: string = WALK): Promise<string> {
    return (await this.ask("GET", `/api/walks/${walk}/entries`, { token: this.owner })).body;
  }

  /** Listens at a free port; returns the address. */
  listen(): Promise<string> {
    return this.hub.server.listen({ port: 0, host: "127.0.0.1" });
  }

  async close(): Promise<void> {
    await this.hub.close();
    this.#end();
  }
}
