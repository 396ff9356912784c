import { readFileSync } from "node:fs";
import { hostname } from "node:os";
import { fileURLToPath } from "node:url";
import { words } from "../words/index.ts";
import { hubDataFolder } from "./hub-data-folder.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";
import { UnusableInputError } from "./unusable-input-error.ts";

/** How a hub is to run, as given on the command line. `null` stands for an option that was not given. */
export interface HubArguments {
  readonly port: number;
  readonly host: string;
  readonly data: string;
  readonly certificate: string | null;
  readonly key: string | null;
  readonly engine: string | null;
  readonly name: string;
  readonly plain: boolean;
  readonly newOwnerCode: boolean;
  readonly upstream: string | null;
  readonly upstreamCode: string | null;
  /** The file for the hub's journal. */
  readonly journal: string | null;
  /** The file for what the console is told. */
  readonly log: string | null;
  /** Further names under which the hub is served. */
  readonly alsoAs: readonly string[];
  /** Addresses and networks of proxies in front of the hub. */
  readonly proxies: readonly string[];
  /** The number of requests that one token may make in a minute. */
  readonly rate: number;
  /** The folder of the built app. */
  readonly app: string;
}

/** Runs a hub until it is told to stop. Rejects with `UnusableInputError` when it cannot run with these arguments. */
export type ServeHub = (hubArguments: HubArguments, terminal: Terminal) => Promise<void>;

/** The options of `hub`, as they are parsed. */
export interface HubFlags {
  readonly port: number;
  readonly host: string;
  readonly data?: string;
  readonly rate: number;
  readonly cert?: string;
  readonly key?: string;
  readonly engine?: string;
  readonly name?: string;
  readonly plain?: boolean;
  readonly newOwnerCode?: boolean;
  readonly upstream?: string;
  readonly upstreamCode?: string;
  readonly upstreamCodeFile?: string;
  readonly engineFile?: string;
  readonly alsoAs?: readonly string[];
  readonly proxy?: readonly string[];
  readonly journal?: string;
  readonly log?: string;
  readonly app?: string;
}

/** The folder into which `npm run build` puts the app. Seen from this file and from the built program it is the same. */
const BUILT_APP = fileURLToPath(new URL("../../dist/app", import.meta.url));

/** `hub`: runs the server that keeps several devices in agreement and serves the app. */
export async function hubCommand(
  flags: HubFlags,
  terminal: Terminal,
  serveHub: ServeHub,
): Promise<ExitStatus> {
  const { port, host, rate, plain = false, newOwnerCode = false, app = BUILT_APP } = flags;
  const { folder, isEarlier } =
    flags.data === undefined ? hubDataFolder() : { folder: flags.data, isEarlier: false };
  if (isEarlier) {
    terminal.out(`${words("cli/hub-earlier-log", { folder })}\n`);
  }
  await serveHub(
    {
      port,
      host,
      data: folder,
      certificate: flags.cert ?? null,
      key: flags.key ?? null,
      engine: secretOf(flags.engine, flags.engineFile, "TETHERLINE_ENGINE"),
      name: flags.name ?? hostname(),
      plain,
      newOwnerCode,
      upstream: flags.upstream ?? null,
      upstreamCode:
        flags.upstream === undefined && flags.upstreamCode === undefined
          ? null
          : secretOf(flags.upstreamCode, flags.upstreamCodeFile, "TETHERLINE_UPSTREAM_CODE"),
      alsoAs: flags.alsoAs ?? [],
      proxies: flags.proxy ?? [],
      journal: flags.journal ?? null,
      log: flags.log ?? null,
      rate,
      app,
    },
    terminal,
  );
  return EXIT.fine;
}

/**
 * What is given on the command line, where every user of the machine can read it, or else in a file, or else in the
 * environment; `null` when it is given nowhere. Throws `UnusableInputError` when the file cannot be read.
 */
function secretOf(given: string | undefined, file: string | undefined, variable: string): string | null {
  if (given !== undefined) return given;
  if (file === undefined) return process.env[variable] ?? null;
  try {
    return readFileSync(file, "utf8").trim();
  } catch {
    throw new UnusableInputError(words("cli/secret-unreadable", { file }));
  }
}
