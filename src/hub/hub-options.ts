import { SaidError } from "../words/index.ts";
/** How a hub is to run, as its owner says. */
export interface HubOptions {
  /** 0 takes any free one. */
  readonly port: number;
  /** Name or address to listen at; `0.0.0.0` or `::` for all. Only this machine reaches `localhost`. */
  readonly host: string;
  /** Folder for the log and the hub's own certificate; made when it is not there. */
  readonly data: string;
  /** Files of a certificate and its key, in PEM; both or none. */
  readonly certificate: string | null;
  readonly key: string | null;
  /** Address of an engine that several hubs share; `null` keeps the log in the data folder. */
  readonly engine: string | null;
  /** What people call this hub. */
  readonly name: string;
  /** Plain HTTP though the host is not this machine alone: for a proxy in front that does TLS. */
  readonly plain: boolean;
  /** Makes another owner's code; the old one, all members and all invitations are of no use any more. */
  readonly newOwnerCode: boolean;
  /** Another hub to link with, and a code of it. */
  readonly upstream: string | null;
  readonly upstreamCode: string | null;
  /** File for the journal of who came in, who was turned away and what was refused; `null` or missing for none. */
  readonly journal?: string | null;
  /** File for what the console is told while the hub runs; `null` or missing for none. */
  readonly log?: string | null;
  /** Further names under which the hub is served, such as that of a proxy in front of it. */
  readonly alsoAs?: readonly string[];
  /** Addresses and networks of proxies in front, which are believed whom they speak for (`X-Forwarded-For`) and whether over TLS (`X-Forwarded-Proto`). */
  readonly proxies?: readonly string[];
  /** How many requests a minute one token may make; 30,000 unless said. */
  readonly rate?: number;
  /** Folder of the built app. */
  readonly app: string;
}

/** A hub cannot run as it was asked to; its message is the one sentence that its owner reads. */
export class HubTroubleError extends SaidError {
  override readonly name = "HubTroubleError";
}

const ITSELF: ReadonlySet<string> = new Set(["localhost", "127.0.0.1", "::1"]);

/** Whether only this machine reaches a host. */
export function isOnlyHere(host: string): boolean {
  return ITSELF.has(host);
}
