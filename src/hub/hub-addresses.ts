import type { AddressInfo } from "node:net";
import { isOnlyHere } from "./hub-options.ts";
import { lanAddresses } from "./tls/index.ts";

const ALL: ReadonlySet<string> = new Set(["0.0.0.0", "::"]);

/** Where a hub that listens at `host` can be opened, without a slash at the end; the last is for others where there is one. */
export function addressesOf(
  listening: readonly (AddressInfo | string)[],
  host: string,
  scheme: "http" | "https",
): readonly string[] {
  const [port] = listening.flatMap((one) => (typeof one === "string" ? [] : [one.port]));
  const hosts = ALL.has(host)
    ? ["localhost", ...lanAddresses().filter((address) => host === "::" || !address.includes(":"))]
    : [isOnlyHere(host) ? "localhost" : host];
  const standard = scheme === "https" ? 443 : 80;
  return hosts.map((one) => {
    const named = one.includes(":") ? `[${one}]` : one;
    return `${scheme}://${named}${port === undefined || port === standard ? "" : `:${port}`}`;
  });
}
