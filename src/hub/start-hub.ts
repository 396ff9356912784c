import { isIP } from "node:net";
import type { Message } from "../words/index.ts";
import { inWords, message, words } from "../words/index.ts";
import { shownCode } from "./admission/index.ts";
import { hasApp } from "./app-files/index.ts";
import { serveBackups } from "./backup/index.ts";
import { makeFolder } from "./data-folder/index.ts";
import { type Engine, EngineTroubleError, openEngine } from "./engine/index.ts";
import { addressesOf } from "./hub-addresses.ts";
import { type HubOptions, HubTroubleError, isOnlyHere } from "./hub-options.ts";
import { JournalTroubleError, NO_JOURNAL, openJournal } from "./journal/index.ts";
import { type OpenHub, openHub } from "./open-hub.ts";
import { RATE_LIMITS } from "./routes/index.ts";
import { machineSurroundings } from "./surroundings/index.ts";
import {
  CertificateTroubleError,
  givenCertificate,
  type HubCertificate,
  type MachineNames,
  machineNames,
  selfMadeCertificate,
} from "./tls/index.ts";
import {
  askFar,
  farClient,
  machineTime,
  readFarAddress,
  startUpstream,
  type Upstream,
} from "./upstream/index.ts";

/** Hosts that stand for every address, and name none. */
const ANY_HOST: ReadonlySet<string> = new Set(["0.0.0.0", "::"]);

/** Where a hub writes: `out` gets what its owner is to know, `err` gets trouble. */
export interface HubConsole {
  out(text: string): void;
  err(text: string): void;
}

/** A hub that listens. */
export interface RunningHub {
  /** Where to open it, without a slash at the end: this machine's own address first. */
  readonly addresses: readonly string[];
  /** Ends it; what was confirmed is kept. */
  close(): Promise<void>;
}

/**
 * Starts a hub and prints where it is, its fingerprint and its owner's code; the last line is the address to open.
 * Rejects with {@link HubTroubleError} when it cannot run so.
 */
export async function startHub(options: HubOptions, { out, err }: HubConsole): Promise<RunningHub> {
  try {
    return await start(options, { out, err });
  } catch (cause) {
    throw asTrouble(cause, options);
  }
}

async function start(options: HubOptions, { out, err }: HubConsole): Promise<RunningHub> {
  const { port, host, data, name, newOwnerCode, engine: address } = options;
  checkOptions(options);
  makeFolder(data);
  const engine = await openEngine({ data, engine: address, now: machineSurroundings.now });
  let hub: OpenHub | null = null;
  const onConsole = (line: string) => err(`${line}\n`);
  const [journal = NO_JOURNAL, log = NO_JOURNAL] = [options.journal, options.log].map((path) =>
    path == null ? NO_JOURNAL : openJournal(path, machineSurroundings.now, onConsole),
  );
  const told = (line: string) => {
    onConsole(line);
    log.note({ event: "told", words: line });
  };
  const reopen = () => {
    journal.reopen();
    log.reopen();
  };
  try {
    const certificate = await certificateFor(options);
    const app = hasApp(options.app) ? options.app : null;
    let addresses: readonly string[] = [];
    hub = await openHub(
      engine,
      machineSurroundings,
      { name, newOwnerCode },
      {
        tls: certificate,
        insistsOnTls: certificate !== null && certificate.authority === null,
        authority: certificate?.authority?.certificate ?? null,
        app,
        names: namesOf(options),
        proxies: options.proxies ?? [],
        journal,
        limits: { ...RATE_LIMITS, perToken: options.rate ?? RATE_LIMITS.perToken },
        address: () => addresses.find((one) => !isOnlyHere(new URL(one).hostname)) ?? null,
        ...(address === null ? { data } : {}),
        tell: told,
      },
    );
    log.note({ event: "started", epoch: engine.epoch });
    for (const finding of [...engine.findings, ...(engine.caution ? [engine.caution] : [])])
      told(inWords(finding));
    await hub.server.listen({ port, host });
    addresses = addressesOf(hub.server.addresses(), host, certificate ? "https" : "http");
    out(
      introduction(options, {
        kind: engine.kind,
        certificate,
        ownerCode: hub.parts.admission.ownerCode,
        keyCode: hub.parts.key.publicKey,
        hasApp: app !== null,
      }),
    );
    out(`${addresses.join("\n")}\n`);
    const link = linkUpstream(options, hub.parts, told);
    process.on("SIGHUP", reopen);
    const { close } = hub;
    const endBackups = await serveBackups(data, engine, told);
    return {
      addresses,
      close: async () => {
        process.off("SIGHUP", reopen);
        await endBackups();
        await link?.stop();
        await close();
        log.note({ event: "ended", epoch: engine.epoch });
        log.close();
      },
    };
  } catch (cause) {
    await (hub ?? engine).close();
    throw cause;
  }
}

/** The link with the hub beyond that the options ask for; `null` when they ask for none. */
function linkUpstream(
  { upstream, upstreamCode }: HubOptions,
  { engine, isOwn, key, witness, journal, beyond, id, name, surroundings }: OpenHub["parts"],
  tell: (line: string) => void,
): Upstream | null {
  const address = upstream === null ? null : readFarAddress(upstream);
  if (!address || upstreamCode === null) return null;
  return startUpstream({
    engine,
    board: beyond,
    journal,
    isOwn,
    key,
    say: (walk, word) => witness?.say(walk, word),
    id,
    name,
    far: farClient(askFar(address)),
    origin: address.origin,
    code: upstreamCode,
    time: machineTime(surroundings),
    tell,
  });
}

function checkOptions({ certificate, key, host, plain, upstream, upstreamCode }: HubOptions): void {
  if ((certificate === null) !== (key === null)) {
    throw new HubTroubleError(message("hub/cert-and-key"));
  }
  if (plain && certificate !== null) {
    throw new HubTroubleError(message("hub/plain-or-cert"));
  }
  if ((upstream === null) !== (upstreamCode === null)) {
    throw new HubTroubleError(message("hub/upstream-and-code"));
  }
  if (upstream !== null && !readFarAddress(upstream)) {
    throw new HubTroubleError(message("hub/upstream-not-understood"));
  }
  if (host === "") throw new HubTroubleError(message("hub/no-host"));
}

/** The certificate that the options ask for; `null` for plain HTTP. */
async function certificateFor(options: HubOptions): Promise<HubCertificate | null> {
  const { certificate, key, plain, host, data, name } = options;
  if (certificate !== null && key !== null) return givenCertificate(certificate, key);
  if (plain || isOnlyHere(host)) return null;
  return selfMadeCertificate(data, name, namesToServe(options), machineSurroundings);
}

/** The names and addresses of this machine, and those that the options say. */
function namesToServe({ host, alsoAs = [] }: HubOptions): MachineNames {
  const { names, addresses } = machineNames();
  const said = [host, ...alsoAs].map((one) => one.toLowerCase()).filter((one) => !ANY_HOST.has(one));
  return {
    names: [...new Set([...names, ...said.filter((one) => isIP(one) === 0)])],
    addresses: [...new Set([...addresses, ...said.filter((one) => isIP(one) !== 0)])],
  };
}

function namesOf(options: HubOptions): ReadonlySet<string> {
  return new Set(namesToServe(options).names);
}

/** What a hub tells its owner of itself when it starts. */
interface Introduced {
  readonly kind: Engine["kind"];
  readonly certificate: HubCertificate | null;
  readonly ownerCode: string;
  readonly keyCode: string;
  readonly hasApp: boolean;
}

function introduction(
  { name, data, app, host, plain }: HubOptions,
  { kind, certificate, ownerCode, keyCode, hasApp }: Introduced,
): string {
  const lines = [words("hub/kept-in", { name, place: kind === "sqlite" ? data : kind })];
  if (!hasApp) lines.push(words("hub/no-app", { folder: app }));
  if (plain && !isOnlyHere(host)) {
    lines.push(words("hub/plain"));
  }
  if (certificate) {
    lines.push(words("hub/certificate", { fingerprint: certificate.fingerprint }));
    if (certificate.authority) {
      lines.push(words("hub/authority", { fingerprint: certificate.authority.fingerprint }));
      lines.push(words("hub/to-trust"));
    }
  }
  lines.push(
    words("hub/key-code", { key: keyCode }),
    words("hub/owner-code", { code: shownCode(ownerCode) }),
    words("hub/how-to-stop"),
  );
  return `${lines.join("\n")}\n`;
}

/** A failure to start, put into a sentence for the owner where it is one that the owner can do something about. */
function asTrouble(cause: unknown, { port, host, data }: HubOptions): unknown {
  if (
    cause instanceof EngineTroubleError ||
    cause instanceof CertificateTroubleError ||
    cause instanceof JournalTroubleError
  ) {
    return new HubTroubleError(cause.said, { cause });
  }
  const code = cause instanceof Error && "code" in cause ? String(cause.code) : "";
  const said: Readonly<Record<string, Message>> = {
    EADDRINUSE: message("hub/port-in-use", { port }),
    EACCES: message("hub/port-or-folder-denied", { port, folder: data }),
    EADDRNOTAVAIL: message("hub/not-this-machine", { host }),
    ENOTFOUND: message("hub/not-this-machine", { host }),
    EEXIST: message("hub/data-not-a-folder", { folder: data }),
    ENOTDIR: message("hub/data-not-in-folder", { folder: data }),
    ENOENT: message("hub/data-not-made", { folder: data }),
    EPERM: message("hub/data-denied", { folder: data }),
    EROFS: message("hub/data-not-written", { folder: data }),
    ENOSPC: message("hub/data-disk-full", { folder: data }),
  };
  const why = said[code];
  return why === undefined ? cause : new HubTroubleError(why, { cause });
}
