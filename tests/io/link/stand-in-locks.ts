import type { Locks } from "../../../src/io/link/leadership.ts";

interface Request {
  readonly whileHeld: () => Promise<void>;
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
}

const abortError = () => new DOMException("The request was aborted.", "AbortError");

/** Exclusive locks as the Web Locks API (W3C, sections 3 and 4) has them, between the pages of one browser. */
export class StandInLocks implements Locks {
  readonly #held = new Map<string, Request>();
  readonly #queues = new Map<string, Request[]>();
  /** Requests granted so far. */
  granted = 0;

  request(
    name: string,
    { signal, steal = false }: { readonly signal?: AbortSignal; readonly steal?: boolean },
    whileHeld: () => Promise<void>,
  ): Promise<unknown> {
    if (steal && signal) return Promise.reject(new DOMException("both", "NotSupportedError"));
    if (signal?.aborted) return Promise.reject(abortError());
    return new Promise((resolve, reject) => {
      const request = { whileHeld, resolve, reject };
      const queue = this.#queues.get(name) ?? [];
      this.#queues.set(name, queue);
      if (steal) {
        this.#held.get(name)?.reject(abortError());
        this.#held.delete(name);
        queue.unshift(request);
      } else queue.push(request);
      signal?.addEventListener("abort", () => {
        const place = queue.indexOf(request);
        // One that is held is held until it is let go.
        if (place < 0) return;
        queue.splice(place, 1);
        reject(abortError());
      });
      this.#grantNext(name);
    });
  }

  #grantNext(name: string): void {
    if (this.#held.has(name)) return;
    const next = this.#queues.get(name)?.shift();
    if (!next) return;
    this.#held.set(name, next);
    this.granted += 1;
    const letGo = () => {
      if (this.#held.get(name) !== next) return;
      this.#held.delete(name);
      this.#grantNext(name);
    };
    // In a task of its own.
    setImmediate(() => {
      next.whileHeld().then(next.resolve, next.reject).finally(letGo);
    });
  }
}
