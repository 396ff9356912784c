import type { Role } from "../../core/log/index.ts";
import { ROLES } from "../../core/log/index.ts";
import type { SourceVerified } from "../../core/seal/index.ts";
import { words } from "../../words/index.ts";

/** A source by the name that a hub, or itself being one, gives it; else by what it is called in the log. */
export const sourceName = ({ by, named, source }: SourceVerified): string =>
  by?.name || named || source.replace(/^\/(devices|hubs)\//, "");

/** A source by name and role, in words. */
export function sourceWords(one: SourceVerified): string {
  const name = sourceName(one);
  if (one.source.startsWith("/hubs/")) {
    return words("seal/device-as", { name, role: words("seal/role-hub") });
  }
  const role = one.by ? roleWords(one.by.role) : words("seal/not-admitted");
  return words("seal/device-as", { name, role });
}

const roleWords = (role: string): string => (isRole(role) ? words(`parts/role-${role}`) : role);

const isRole = (role: string): role is Role => ROLES.some((one) => one === role);
