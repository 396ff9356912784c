import { readFileSync } from "node:fs";
import type { NodeConnectionOptions } from "@nats-io/transport-node";
import { message } from "../../words/index.ts";
import { EngineTroubleError } from "./engine.ts";

/** An address of `--engine`, as read. */
export interface NatsAddress {
  /** How it is named in messages: without passwords. */
  readonly shown: string;
  readonly connection: NodeConnectionOptions;
  /** Copies of everything in a cluster; `null` leaves it as it is, or makes one. */
  readonly replicas: number | null;
  /** Begins the names of all that is kept there, so that several sites may share a cluster. */
  readonly name: string;
}

const ADDRESS_PATTERN = /^(nats|tls):\/\/(?:([^@/?]*)@)?([^@/?]+)\/?(?:\?(.*))?$/;
const HOST_PATTERN = /^(?:\[[0-9A-Fa-f:.]+\]|[A-Za-z0-9._-]+)(?::\d{1,5})?$/;
const KNOWN: ReadonlySet<string> = new Set(["replicas", "name", "token", "ca", "cert", "key"]);

/**
 * Reads `nats://[user:password@|token@]host:port[,host:port…][?replicas=1|3|5&name=…&token=…&ca=…&cert=…&key=…]`; `tls://`
 * insists on TLS, and `ca`, `cert` and `key` are files in PEM. Throws {@link EngineTroubleError} when it is none.
 */
export function readNatsAddress(text: string): NatsAddress {
  const [, scheme, credentials, hosts = "", query = ""] = ADDRESS_PATTERN.exec(text) ?? [];
  const servers = hosts.split(",");
  if (scheme === undefined || !servers.every((host) => HOST_PATTERN.test(host))) {
    throw new EngineTroubleError(message("engine/address-not-understood"));
  }
  const parameters = new URLSearchParams(query);
  const unknown = [...parameters.keys()].find((key) => !KNOWN.has(key));
  if (unknown !== undefined)
    throw new EngineTroubleError(message("engine/address-has-unknown", { what: unknown }));
  const replicas = parameters.get("replicas");
  if (replicas !== null && !["1", "3", "5"].includes(replicas)) {
    throw new EngineTroubleError(message("engine/bad-replicas"));
  }
  const name = parameters.get("name") ?? "tetherline";
  if (!/^[A-Za-z0-9_-]{1,32}$/.test(name)) {
    throw new EngineTroubleError(message("engine/bad-name"));
  }
  const files = { ca: pem(parameters, "ca"), cert: pem(parameters, "cert"), key: pem(parameters, "key") };
  const isTls = scheme === "tls" || Object.values(files).some((file) => file !== null);
  return {
    shown: `${scheme}://${hosts}`,
    connection: {
      servers,
      ...whoAmI(credentials, parameters.get("token")),
      ...(isTls
        ? { tls: Object.fromEntries(Object.entries(files).filter(([, file]) => file !== null)) }
        : {}),
    },
    replicas: replicas === null ? null : Number(replicas),
    name,
  };
}

function whoAmI(credentials: string | undefined, token: string | null): NodeConnectionOptions {
  if (token !== null) return { token };
  if (!credentials) return {};
  const [user = "", ...password] = credentials.split(":");
  if (password.length === 0) return { token: decoded(user) };
  return { user: decoded(user), pass: decoded(password.join(":")) };
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

function pem(parameters: URLSearchParams, key: string): string | null {
  const path = parameters.get(key);
  if (path === null) return null;
  try {
    return readFileSync(path, "utf8");
  } catch (cause) {
    throw new EngineTroubleError(message("engine/unreadable-file", { path }), { cause });
  }
}
