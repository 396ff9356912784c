import { randomBytes } from "node:crypto";
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { FarHub } from "../../../src/core/link/index.ts";
import type { Entry } from "../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import { openEngine } from "../../../src/hub/engine/index.ts";
import { type OpenHub, openHub } from "../../../src/hub/open-hub.ts";
import type { ServerOptions } from "../../../src/hub/routes/index.ts";
import { readAll } from "../engine/read-all.ts";
import { WALK } from "../engine/written-notes.ts";

const LIMITS = { perToken: 1e9, perAddress: 1e9, filesPerAddress: 1e9, wrongCodes: 1e9 };

/** A hub in this process that listens on a port of its own, and can be closed and opened again. */
export class LiveHub {
  readonly #folder = mkdtempSync(join(tmpdir(), "tetherline-live-"));
  readonly #name: string;
  readonly #tls: ServerOptions["tls"];
  readonly #engine: string | null;
  #hub: OpenHub | null = null;
  #port = 0;
  /** Whether it writes of itself into logs, which most tests have no use for. */
  isWitness = false;
  /** The hub's clock. */
  now: () => Instant = () => Date.now() as Instant;

  /** `engine` is the address of JetStream; without one it keeps its entries in a folder of its own. */
  constructor(name: string, tls: ServerOptions["tls"] = null, engine: string | null = null) {
    this.#name = name;
    this.#tls = tls;
    this.#engine = engine;
  }

  async open(): Promise<this> {
    const now = () => this.now();
    const engine = await openEngine({ data: join(this.#folder, "data"), engine: this.#engine, now });
    this.#hub = await openHub(
      engine,
      { now, randomBytes },
      { name: this.#name, newOwnerCode: false, isWitness: this.isWitness },
      {
        tls: this.#tls,
        insistsOnTls: false,
        authority: null,
        app: null,
        names: null,
        limits: LIMITS,
        address: () => null,
        tell: () => {},
      },
    );
    await this.#hub.server.listen({ port: this.#port, host: "127.0.0.1" });
    const address = this.#hub.server.server.address();
    if (address === null || typeof address === "string") throw new Error("no port");
    this.#port = address.port;
    return this;
  }

  get parts(): OpenHub["parts"] {
    if (!this.#hub) throw new Error("the hub is closed");
    return this.#hub.parts;
  }

  get port(): number {
    return this.#port;
  }

  get ownerCode(): string {
    return this.parts.admission.ownerCode;
  }

  async close(): Promise<void> {
    await this.#hub?.close();
    this.#hub = null;
  }

  /** Sets a copy of its data aside, of a closed hub. */
  backUp(): void {
    cpSync(join(this.#folder, "data"), join(this.#folder, "backup"), { recursive: true });
  }

  /** Brings the copy back, of a closed hub. */
  bringBack(): void {
    rmSync(join(this.#folder, "data"), { recursive: true });
    cpSync(join(this.#folder, "backup"), join(this.#folder, "data"), { recursive: true });
  }

  async remove(): Promise<void> {
    await this.close();
    rmSync(this.#folder, { recursive: true, force: true });
  }

  /** Entries of a device of this hub's own side. */
  async write(entries: readonly Entry[], walk: WalkId = WALK): Promise<void> {
    const offered = entries.map(({ wire }) => wire);
    const { results } = await this.parts.intake.take(walk, offered, null);
    for (const result of results) if ("reason" in result) throw new Error(result.words);
  }

  /** Source and number of everything it has of a walk, in its own order. */
  async keys(walk: WalkId = WALK): Promise<readonly string[]> {
    const kept = await readAll(this.parts.engine, walk);
    return kept.map(({ source, id }) => `${source} ${Number(id)}`);
  }

  /** How it says that it is linked for a walk. */
  beyond(walk: WalkId = WALK): FarHub | undefined {
    return this.parts.beyond.of(walk)[0];
  }
}
