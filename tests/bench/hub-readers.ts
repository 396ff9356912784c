import { connect } from "node:net";
import { machineNow } from "./hub-wire.ts";

/** Opens streams of a side, one for each token. */
export interface OpenReaders {
  readonly kind: "open";
  readonly side: string;
  readonly port: number;
  readonly path: string;
  readonly tokens: readonly string[];
}

/** Asks for what came to the streams of a side, and ends them. */
export interface ReportReaders {
  readonly kind: "report";
  readonly side: string;
}

/** Answers: all streams are past what was there before; or when each entry came to each, as `machineNow` says. */
export type ReadersAnswer =
  | { readonly kind: "opened" }
  | { readonly kind: "report"; readonly arrivals: readonly Float64Array[] }
  | { readonly kind: "failed"; readonly words: string };

interface Reader {
  readonly arrivals: number[];
  end(): void;
}

/** Only the writer makes notes: a hub writes entries of its own into a walk, which tell of devices. */
const WRITTEN = '"type":"tetherline.note.made"';
const SEQUENCE = '"sequence":"';
const DIGITS = 10;
const LIVE = "event: cursor\n";

const buffer = Buffer.alloc(1024 * 1024);
const sides = new Map<string, readonly Reader[]>();
const say = (answer: ReadersAnswer) => void process.send?.(answer);
const fail = (words: string) => say({ kind: "failed", words });

/** One stream, read with as little work as may be: when each entry came, and that none is missing or doubled. */
function openReader({ side, port, path }: OpenReaders, token: string, onLive: () => void): Reader {
  const arrivals: number[] = [];
  let rest = "";
  let isLive = false;
  const hear = (length: number): true => {
    const now = machineNow();
    const text = rest + buffer.toString("latin1", 0, length);
    let [from, isWithin] = [0, false];
    for (;;) {
      const written = text.indexOf(WRITTEN, from);
      const found = written < 0 ? -1 : text.indexOf(SEQUENCE, written);
      const end = found + SEQUENCE.length + DIGITS;
      if (found < 0 || end > text.length) {
        // A piece that ends within an entry: read again from its beginning with the next.
        isWithin = written >= 0;
        if (isWithin) from = written;
        break;
      }
      const number = Number(text.slice(end - DIGITS, end));
      arrivals.push(now);
      if (number !== arrivals.length) fail(`${side}: entry ${number} came for entry ${arrivals.length}`);
      from = end;
    }
    if (!isLive && text.includes(LIVE)) {
      isLive = true;
      onLive();
    }
    rest = isWithin ? text.slice(from) : text.slice(Math.max(from, text.length - WRITTEN.length));
    return true;
  };
  const socket = connect({ port, host: "127.0.0.1", onread: { buffer, callback: hear } });
  socket.write(
    `GET ${path} HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\naccept: text/event-stream\r\nauthorization: Bearer ${token}\r\n\r\n`,
  );
  const onClose = () => fail(`${side}: a stream ended`);
  socket.once("close", onClose);
  socket.on("error", () => {});
  return {
    arrivals,
    end: () => {
      socket.off("close", onClose);
      socket.destroy();
    },
  };
}

process.on("message", (asked: OpenReaders | ReportReaders) => {
  if (asked.kind === "open") {
    let left = asked.tokens.length;
    const onLive = () => {
      left -= 1;
      if (left === 0) say({ kind: "opened" });
    };
    sides.set(
      asked.side,
      asked.tokens.map((token) => openReader(asked, token, onLive)),
    );
    return;
  }
  const readers = sides.get(asked.side) ?? [];
  for (const reader of readers) reader.end();
  say({ kind: "report", arrivals: readers.map(({ arrivals }) => Float64Array.from(arrivals)) });
});
process.once("disconnect", () => process.exit());
