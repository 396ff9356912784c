import { once } from "node:events";
import { connect, type Socket } from "node:net";

/** What comes back from a request. */
interface Answer {
  readonly status: number;
  readonly body: string;
}

const HEAD_END = "\r\n\r\n";

/** A time in ms that means the same in every process of this machine. */
export function machineNow(): number {
  const [seconds, nanoseconds] = process.hrtime();
  return seconds * 1000 + nanoseconds / 1e6;
}

/** One connection that stays open and sends one request after the other, with as little work as may be. */
export class WireConnection {
  readonly #socket: Socket;
  #text = "";
  #resolve: (answer: Answer) => void = () => {};
  #reject: (cause: Error) => void = () => {};

  private constructor(socket: Socket) {
    this.#socket = socket;
    socket.setNoDelay(true).setEncoding("latin1");
    socket.on("data", (text: string) => this.#hear(text));
    socket.on("error", (cause) => this.#reject(cause));
    socket.on("close", () => this.#reject(new Error("the connection was closed")));
  }

  static async open(port: number): Promise<WireConnection> {
    const socket = connect(port, "127.0.0.1");
    await once(socket, "connect");
    return new WireConnection(socket);
  }

  /** Posts a batch of entries; one at a time. */
  post(path: string, token: string, body: string): Promise<Answer> {
    return new Promise((resolve, reject) => {
      this.#resolve = resolve;
      this.#reject = reject;
      this.#socket.write(
        `POST ${path} HTTP/1.1\r\nhost: 127.0.0.1:${this.#socket.remotePort}\r\nauthorization: Bearer ${token}\r\n` +
          `content-type: application/cloudevents-batch+json\r\ncontent-length: ${Buffer.byteLength(body)}\r\n\r\n${body}`,
      );
    });
  }

  close(): void {
    this.#socket.destroy();
  }

  #hear(text: string): void {
    this.#text += text;
    const head = this.#text.indexOf(HEAD_END);
    if (head < 0) return;
    const [, length] = /^content-length: (\d+)\r?$/im.exec(this.#text.slice(0, head + 2)) ?? [];
    const begin = head + HEAD_END.length;
    const end = begin + Number(length);
    if (!(this.#text.length >= end)) return;
    const answer = { status: Number(this.#text.slice(9, 12)), body: this.#text.slice(begin, end) };
    this.#text = this.#text.slice(end);
    this.#resolve(answer);
  }
}
