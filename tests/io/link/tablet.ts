import type { Draft, Entry } from "../../../src/core/log/index.ts";
import type { Instant, WalkId } from "../../../src/core/units/index.ts";
import type { Fetch } from "../../../src/io/link/fetch-hub.ts";
import type { LinkKeeper, LinkStatus, OpenLinksParts } from "../../../src/io/link/index.ts";
import { openLinks } from "../../../src/io/link/index.ts";
import { waited } from "../../../src/io/link/timers.ts";
import type { DeviceStore, IndexedDbParts } from "../../../src/io/store/index.ts";
import { openStore } from "../../../src/io/store/index.ts";
import { freshIndexedDb } from "../store/stand-ins.ts";

/** What a browser does beside fetching: it keeps the cookies of each path, and has a network or has not. */
export class BrowserFetch {
  isOffline = false;
  /** Every request made, as `METHOD /path`. */
  readonly asked: string[] = [];
  readonly #cookies = new Map<string, string>();
  readonly #open = new Set<AbortController>();

  readonly fetch: Fetch = async (address, init) => {
    const { pathname } = new URL(address);
    this.asked.push(`${init.method ?? "GET"} ${pathname}`);
    if (this.isOffline) throw new TypeError("fetch failed");
    const cookies = [...this.#cookies].filter(([path]) => pathname.startsWith(path)).map(([, pair]) => pair);
    const headers = new Headers(init.headers);
    if (cookies.length > 0) headers.set("cookie", cookies.join("; "));
    const cut = new AbortController();
    this.#open.add(cut);
    init.signal?.addEventListener("abort", () => cut.abort(), { once: true });
    if (init.signal?.aborted) cut.abort();
    const response = await fetch(address, { ...init, headers, signal: cut.signal });
    for (const cookie of response.headers.getSetCookie()) {
      const [pair = "", ...attributes] = cookie.split("; ");
      const path = attributes.find((one) => one.startsWith("Path="))?.slice(5) ?? "/";
      if (pair.endsWith("=")) this.#cookies.delete(path);
      else this.#cookies.set(path, pair);
    }
    return response;
  };

  /** Breaks all connections, and has none made until {@link reconnect}. */
  disconnect(): void {
    this.isOffline = true;
    for (const cut of this.#open) cut.abort();
    this.#open.clear();
  }

  reconnect(): void {
    this.isOffline = false;
  }

  forgetCookies(): void {
    this.#cookies.clear();
  }
}

/** A tablet: its store, its browser and its links with a hub. */
export interface Tablet {
  readonly store: DeviceStore;
  readonly links: LinkKeeper;
  readonly browser: BrowserFetch;
  readonly indexedDb: IndexedDbParts;
  append(walk: WalkId, ...drafts: Draft[]): Promise<readonly Entry[]>;
  entries(walk: WalkId): Promise<readonly Entry[]>;
  close(): void;
}

/** Opens a tablet, or another page of one. */
export async function openTablet(
  origin: string,
  parts: Partial<OpenLinksParts> & { readonly now: () => Instant; readonly of?: Tablet },
): Promise<Tablet> {
  const { of, ...more } = parts;
  const indexedDb = of?.indexedDb ?? freshIndexedDb();
  const browser = of?.browser ?? new BrowserFetch();
  const store = await openStore({ now: parts.now, indexedDb });
  const links = openLinks({
    store,
    home: origin,
    fetch: browser.fetch,
    locks: null,
    channel: null,
    page: null,
    random: () => 0,
    // Ten times as fast, so that nothing here waits for seconds.
    wait: (ms, signal) => waited(ms / 10, signal),
    ...more,
  });
  return {
    store,
    links,
    browser,
    indexedDb,
    append: (walk, ...drafts) => store.log.append(walk, drafts),
    entries: async (walk) => (await store.log.read(walk, 0)).entries,
    close: () => {
      links.close();
      store.close();
    },
  };
}

/** Resolves with the status of a walk once it is such. */
export function statusWhen(
  links: LinkKeeper,
  walk: WalkId,
  isSuch: (status: LinkStatus) => boolean,
): Promise<LinkStatus> {
  return new Promise((resolve) => {
    let end = () => {};
    const look = () => {
      const status = links.status(walk);
      if (!isSuch(status)) return;
      end();
      resolve(status);
    };
    end = links.watch(walk, look);
    look();
  });
}

/** Waits until something holds; the test's own time limit ends it otherwise. */
export async function eventually(holds: () => Promise<boolean> | boolean): Promise<void> {
  while (!(await holds())) await new Promise((resolve) => setTimeout(resolve, 10));
}
