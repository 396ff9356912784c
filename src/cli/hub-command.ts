import { hostname } from "node:os";
import { fileURLToPath } from "node:url";
import { words } from "../words/index.ts";
import { hubDataFolder } from "./hub-data-folder.ts";
import type { ExitStatus, Terminal } from "./terminal.ts";
import { EXIT } from "./terminal.ts";

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
      engine: flags.engine ?? null,
      name: flags.name ?? hostname(),
      plain,
      newOwnerCode,
      upstream: flags.upstream ?? null,
      upstreamCode: flags.upstreamCode ?? null,
      rate,
      app,
    },
    terminal,
  );
  return EXIT.fine;
}
