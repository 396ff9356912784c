import { createContext, use } from "react";
import type { Instant } from "../../core/units/index.ts";
import type { LinkKeeper } from "../../io/link/index.ts";
import type { DeviceStore } from "../../io/store/index.ts";

/** The services that every screen uses. */
export interface Services {
  readonly store: DeviceStore;
  /** The links of this device's walks with a hub. */
  readonly links: LinkKeeper;
  /** The device's clock. */
  readonly now: () => Instant;
}

/** Thrown when a screen is drawn outside the provider, which is a bug in this program. */
export class NoServicesError extends Error {
  override readonly name = "NoServicesError";
}

/** Passes the services down to the screens. */
export const ServicesContext = createContext<Services | null>(null);

/** The services of the app. */
export function useServices(): Services {
  const services = use(ServicesContext);
  if (!services) throw new NoServicesError("no services were provided above this screen");
  return services;
}
