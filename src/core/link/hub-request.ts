/** A request to a hub, as its interface over HTTP has it. */
export interface HubRequest {
  readonly method: "GET" | "POST" | "DELETE";
  /** Begins with a slash. */
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
  /** Gives the request up, and the reading of its answer. */
  readonly signal?: AbortSignal;
  /** Whether the answer may take as long as the signal allows; all other requests get a limit from their sender. */
  readonly isLong: boolean;
}

/** The answer of a hub, of any status, once its head is there. */
export interface HubAnswer {
  readonly status: number;
  /** A header by its name in lower case; `null` when the answer has none. */
  header(name: string): string | null;
  /**
   * The body as text, piece by piece as it arrives. Iterating throws when the connection breaks off; leaving the iteration
   * early lets the connection go. To be iterated once, or dropped.
   */
  readonly text: AsyncIterable<string>;
  /** Lets the connection go without reading the body. */
  drop(): void;
}

/**
 * Asks a hub and resolves with whatever it answers. The origin, the credentials and the way in which a certificate is
 * trusted are the asker's own. Rejects with an `UnreachableError` when no answer came.
 */
export type AskHub = (request: HubRequest) => Promise<HubAnswer>;
