import { EventSourceParserStream } from "eventsource-parser/stream";

/** An event of a stream. */
export interface StreamEvent {
  readonly event: string | undefined;
  readonly id: string | undefined;
  readonly data: string;
}

/** An open stream, read in the background. */
export class EventStream {
  readonly response: Response;
  readonly events: StreamEvent[] = [];
  readonly ended: Promise<void>;
  readonly #abort: AbortController;
  #wake: () => void = () => {};
  #isOver = false;

  private constructor(response: Response, abort: AbortController) {
    this.response = response;
    this.#abort = abort;
    this.ended = this.#read();
  }

  static async open(url: string, token: string, headers: Record<string, string> = {}): Promise<EventStream> {
    const abort = new AbortController();
    const response = await fetch(url, {
      headers: { accept: "text/event-stream", authorization: `Bearer ${token}`, ...headers },
      signal: abort.signal,
    });
    return new EventStream(response, abort);
  }

  /** Entries so far, by id. */
  get entries(): string[] {
    return this.events.flatMap(({ event, data }) =>
      event === undefined ? [(JSON.parse(data) as { id: string }).id] : [],
    );
  }

  /** The events of a name so far, as read. */
  named<Data>(name: string): Data[] {
    return this.events.flatMap(({ event, data }) => (event === name ? [JSON.parse(data) as Data] : []));
  }

  /** Waits until something holds of what has come; fails when the stream ends first. */
  async until(holds: () => boolean): Promise<void> {
    while (!holds()) {
      if (this.#isOver) throw new Error(`The stream ended after ${JSON.stringify(this.events)}`);
      await new Promise<void>((resolve) => {
        this.#wake = resolve;
      });
    }
  }

  close(): void {
    this.#abort.abort();
  }

  async #read(): Promise<void> {
    try {
      const { body } = this.response;
      if (!body) return;
      const events = body
        .pipeThrough(new TextDecoderStream() as ReadableWritablePair<string, Uint8Array<ArrayBuffer>>)
        .pipeThrough(new EventSourceParserStream());
      for await (const { event, id, data } of events) {
        this.events.push({ event, id, data });
        this.#wake();
      }
    } catch {
      // Closed here or cut off there: either way it is over.
    } finally {
      this.#isOver = true;
      this.#wake();
    }
  }
}
