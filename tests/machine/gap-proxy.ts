import { once } from "node:events";
import { connect, createServer, type Server, type Socket } from "node:net";

/** A stretch of network before a hub that can be cut, slowed, and made to swallow everything. */
export class GapProxy {
  readonly #server: Server;
  readonly #sockets = new Set<Socket>();
  /** `closed`: connections are refused; `silent`: they are taken and nothing comes through. */
  #state: "open" | "closed" | "silent" = "open";
  /** Each way takes so long, in ms. */
  delay = 0;

  private constructor(target: () => number) {
    this.#server = createServer((near) => {
      if (this.#state === "closed") {
        near.resetAndDestroy();
        return;
      }
      const far = connect(target(), "127.0.0.1");
      for (const socket of [near, far]) {
        this.#sockets.add(socket);
        socket.on("error", () => {});
        socket.once("close", () => this.#sockets.delete(socket));
      }
      this.#pass(near, far);
      this.#pass(far, near);
    });
  }

  static async open(target: () => number): Promise<GapProxy> {
    const proxy = new GapProxy(target);
    proxy.#server.listen(0, "127.0.0.1");
    await once(proxy.#server, "listening");
    return proxy;
  }

  get address(): string {
    const address = this.#server.address();
    if (address === null || typeof address === "string") throw new Error("no port");
    return `http://127.0.0.1:${address.port}`;
  }

  /** Cuts all connections there are. */
  cut(): void {
    for (const socket of this.#sockets) socket.destroy();
  }

  set(state: "open" | "closed" | "silent"): void {
    this.#state = state;
    if (state === "closed") this.cut();
  }

  async close(): Promise<void> {
    this.cut();
    this.#server.close();
    await once(this.#server, "close");
  }

  #pass(from: Socket, to: Socket): void {
    const later = (work: () => void) => setTimeout(() => this.#state !== "silent" && work(), this.delay);
    from.on("data", (data) => later(() => to.write(data)));
    from.once("close", () => later(() => to.destroy()));
  }
}
