import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import { Listeners } from "../../core/units/index.ts";
import { message, words } from "../../words/index.ts";
import { writeTextWhole } from "../data-folder/index.ts";
import type { Keep } from "./engine.ts";
import { EngineTroubleError } from "./engine.ts";

/** What lets somebody in, or lets this hub in elsewhere, by the beginning of its key. */
const SECRETS = ["admission.owner", "admission.signing", "cursor.key", "upstream.ticket ", "hub.key"];

const secretsSchema = z.object({ about: z.string(), secrets: z.record(z.string(), z.string()) });

/** Whether what is kept under a key is nobody else's business. */
export function isSecret(key: string): boolean {
  return SECRETS.some((beginning) => key.startsWith(beginning));
}

/** The secrets of a hub in a file of their own, so that neither the log nor a backup of it has them. */
export class SecretFile {
  /** Whether there was a file at opening. */
  readonly wasThere: boolean;
  readonly #path: string;
  readonly #values: Map<string, string>;

  /** Throws {@link EngineTroubleError} when the file is damaged. */
  constructor(folder: string) {
    this.#path = join(folder, "hub-secrets.json");
    const text = readIfThere(this.#path);
    this.wasThere = text !== null;
    const read = text === null ? null : secretsSchema.safeParse(jsonOf(text)).data;
    if (text !== null && !read) {
      throw new EngineTroubleError(message("engine/secrets-damaged", { path: this.#path }));
    }
    this.#values = new Map(Object.entries(read?.secrets ?? {}));
  }

  get(key: string): string | null {
    return this.#values.get(key) ?? null;
  }

  /** All keys that begin with a prefix, with their values. */
  list(prefix: string): ReadonlyMap<string, string> {
    return new Map([...this.#values].filter(([key]) => key.startsWith(prefix)));
  }

  /** Puts values, or removes those that are `null`; durable when it returns. */
  change(values: ReadonlyMap<string, string | null>): void {
    const next = new Map(this.#values);
    for (const [key, value] of values) {
      if (value === null) next.delete(key);
      else next.set(key, value);
    }
    const secrets = Object.fromEntries([...next].sort());
    const text = JSON.stringify({ about: words("engine/secrets-about"), secrets }, null, 2);
    writeTextWhole(this.#path, `${text}\n`);
    this.#values.clear();
    for (const [key, value] of next) this.#values.set(key, value);
  }
}

/** The small values of a hub: secrets from their file, everything else from the store. */
export function withSecrets(keep: Keep, secrets: SecretFile, ask: <T>(work: () => T) => Promise<T>): Keep {
  const changes = new Listeners<[key: string, value: string | null]>();
  const put = (key: string, value: string | null) => {
    secrets.change(new Map([[key, value]]));
    changes.tell(key, value);
  };
  return {
    get: (key) => (isSecret(key) ? ask(() => secrets.get(key)) : keep.get(key)),
    put: (key, value) => (isSecret(key) ? ask(() => put(key, value)) : keep.put(key, value)),
    create: (key, value) => {
      if (!isSecret(key)) return keep.create(key, value);
      return ask(() => {
        if (secrets.get(key) !== null) return false;
        put(key, value);
        return true;
      });
    },
    remove: (key) => {
      if (!isSecret(key)) return keep.remove(key);
      return ask(() => {
        if (secrets.get(key) !== null) put(key, null);
      });
    },
    list: async (prefix) => new Map([...(await keep.list(prefix)), ...secrets.list(prefix)]),
    watch: (prefix, onChange) => {
      const stop = keep.watch(prefix, onChange);
      const stopSecrets = changes.add((key, value) => {
        if (key.startsWith(prefix)) onChange(key, value);
      });
      return () => {
        stop();
        stopSecrets();
      };
    },
  };
}

function readIfThere(path: string): string | null {
  try {
    return readFileSync(path, "utf8");
  } catch (cause) {
    if (cause instanceof Error && "code" in cause && cause.code === "ENOENT") return null;
    throw cause;
  }
}
