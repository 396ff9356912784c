import { isIP } from "node:net";
import type { FastifyInstance } from "fastify";
import { message } from "../../words/index.ts";
import { AnswerError } from "../answer/index.ts";
import type { Journal } from "../journal/index.ts";
import { PRIVATE_ENDINGS } from "../tls/index.ts";

const HOST_PATTERN = /^(\[[0-9a-f:.]+\]|[^:[\]]*)(:\d{1,5})?$/;

/**
 * Whether a hub is served under what a `Host` header says: an address, which no page elsewhere can make a browser take for
 * its own, or one of the names, with the endings of private networks.
 */
export function isServedUnder(host: string | undefined, names: ReadonlySet<string>): boolean {
  const name = nameIn(host);
  return isIP(name) !== 0 || isOneOf(name, names);
}

/**
 * Whether what a device signed for is this hub: the `Host` that it asks by or, where a proxy in front changes that, one
 * of the hub's names.
 */
export function isThisHub(
  signed: string,
  host: string | undefined,
  names: ReadonlySet<string> | null,
): boolean {
  if (signed.toLowerCase() === host?.toLowerCase()) return true;
  return names !== null && isOneOf(nameIn(signed), names);
}

/** The name or address in `name:port`, in lower case; empty when there is none. */
function nameIn(host: string | undefined): string {
  const [, written = ""] = HOST_PATTERN.exec(host?.toLowerCase() ?? "") ?? [];
  return written.replace(/^\[|\]$/g, "").replace(/\.$/, "");
}

function isOneOf(name: string, names: ReadonlySet<string>): boolean {
  return PRIVATE_ENDINGS.some(
    (ending) => name.endsWith(ending) && names.has(name.slice(0, name.length - ending.length)),
  );
}

/**
 * Refuses requests under any other name before anything is done for them: a page of elsewhere whose name was made to point
 * here would be of this origin to the browser.
 */
export function insistOnNames(app: FastifyInstance, names: ReadonlySet<string>, journal: Journal): void {
  app.addHook("onRequest", async ({ headers, ip }) => {
    if (!isServedUnder(headers.host, names)) {
      journal.note({ event: "other-name", address: ip });
      throw new AnswerError(421, "other-name", message("answer/other-name"));
    }
  });
}
