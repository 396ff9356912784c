import fc from "fast-check";
import type { InjectOptions } from "fastify";
import { NOON, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

/** A request that is wrong by the way it was made, and what it may be answered. */
export interface Malformed {
  readonly request: InjectOptions;
  /** Statuses that refuse it. 200 is only for a batch, whose every result has to be a refusal. */
  readonly refused: readonly number[];
}

/** What requests are made with. */
export interface Credentials {
  readonly device: string;
  readonly lead: string;
  readonly owner: string;
}

const ENTRIES = `/api/walks/${WALK}/entries`;
const isJson = (text: string) => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};
const anything = fc.anything({
  maxDepth: 2,
  withNullPrototype: false,
  values: [
    fc.string(),
    fc.integer(),
    fc.boolean(),
    fc.constant(null),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
  ],
});
const anyText = fc.oneof(fc.string({ unit: "binary", maxLength: 40 }), fc.string({ maxLength: 40 }));
const notText = anything.filter((value) => typeof value !== "string" && value !== undefined);
/** Text that a header can carry. */
const headerText = fc.string({
  unit: fc.integer({ min: 0x20, max: 0x7e }).map((code) => String.fromCharCode(code)),
  maxLength: 60,
});
const deep = fc.integer({ min: 101, max: 600 }).map((depth) => `${"[".repeat(depth)}${"]".repeat(depth)}`);

/** How many entries of the device the hub has before, numbered from 1. */
export const KEPT = 3;

/** One attribute of a good entry, made wrong; each says why no entry has it so. */
function brokenEntry(device: string): fc.Arbitrary<unknown> {
  const good = fc.integer({ min: 1, max: 1e9 }).map((number) => written(device, number));
  const required = ["specversion", "id", "source", "type", "subject", "time", "sequence", "hlc"];
  const set = (name: string, value: fc.Arbitrary<unknown>) =>
    fc.tuple(good, value).map(([entry, wrong]) => ({ ...entry, [name]: wrong }));
  return fc.oneof(
    fc
      .tuple(good, fc.constantFrom(...required))
      .map(([entry, name]) => Object.fromEntries(Object.entries(entry).filter(([key]) => key !== name))),
    fc
      .tuple(good, fc.constantFrom(...required), notText)
      .map(([entry, name, value]) => ({ ...entry, [name]: value })),
    set(
      "specversion",
      anyText.filter((text) => text !== "1.0"),
    ),
    set(
      "id",
      fc.oneof(
        fc.constant(""),
        fc.string({ minLength: 201, maxLength: 300 }),
        anyText.map((text) => `${text}\u0000`),
      ),
    ),
    // Another device's, none at all, or with a blank.
    set(
      "source",
      fc.oneof(
        anyText.map((text) => `/devices/other${text}`),
        anyText.map((text) => `${device} ${text}`),
        fc.constant(""),
        fc.constant(`${device}/${"x".repeat(400)}`),
      ),
    ),
    set(
      "subject",
      anyText.filter((text) => text !== WALK),
    ),
    set(
      "time",
      anyText.filter((text) => !/^\d{4}-\d\d-\d\d[Tt]/.test(text)),
    ),
    set(
      "time",
      fc.constantFrom(
        "2031-02-30T00:00:00Z",
        "2031-13-01T00:00:00Z",
        "2031-04-02T25:00:00Z",
        "2031-04-02T09:00:00",
        "2031-04-02",
        "2031-04-02T09:00Z",
      ),
    ),
    set("recordedtime", fc.oneof(notText, fc.constantFrom("", "yesterday", "2031-04-31T00:00:00Z"))),
    set(
      "sequence",
      anyText.filter((text) => !/^[0-9]+$/.test(text)),
    ),
    set("sequence", fc.constantFrom("-1", "1.0", "0x1", " 1", "123456789012345678901")),
    set(
      "hlc",
      anyText.filter((text) => !/^[0-9]{15}-/.test(text)),
    ),
    // Over a minute ahead of the hub's clock; under a key that the hub has it would be in conflict, and kept aside.
    fc
      .tuple(
        good.filter(({ id }) => Number(id) > KEPT),
        fc.integer({ min: 60_001, max: 1e12 }),
      )
      .map(([entry, ahead]) => ({ ...entry, hlc: `${String(NOON + ahead).padStart(15, "0")}-0000` })),
    set("type", fc.constant("")),
    set("type", fc.string({ minLength: 201, maxLength: 220 })),
    set("data", fc.oneof(notText, fc.record({ text: notText }), fc.constant({ text: "x".repeat(20_001) }))),
    set("actor", notText),
    fc
      .tuple(good, deep)
      .map(([entry, nested]) => ({ ...entry, data: { text: "x", more: JSON.parse(nested) as unknown } })),
    anything.filter(
      (value) =>
        value !== undefined && (typeof value !== "object" || value === null || !("specversion" in value)),
    ),
  );
}

/** Bodies of entries: no JSON, the wrong JSON, or batches of what are no entries. */
export function malformedBatches({ device, lead }: Credentials): fc.Arbitrary<Malformed> {
  const post = (
    payload: string | Buffer,
    refused: readonly number[],
    type = "application/cloudevents-batch+json",
  ) => ({
    request: {
      method: "POST" as const,
      url: ENTRIES,
      headers: { authorization: `Bearer ${lead}`, "content-type": type },
      payload,
    },
    refused,
  });
  const goodBatch = JSON.stringify([written(device, 1)]);
  return fc.oneof(
    {
      weight: 6,
      arbitrary: fc
        .array(brokenEntry(device), { minLength: 1, maxLength: 4 })
        .map((batch) => JSON.stringify(batch))
        // A key that would change an object's prototype makes the whole body one that is not read.
        .map((text) => post(text, text.includes('"__proto__"') ? [200, 400] : [200])),
    },
    { weight: 1, arbitrary: anyText.filter((text) => !isJson(text)).map((text) => post(text, [400])) },
    {
      weight: 1,
      arbitrary: fc
        .uint8Array({ minLength: 1, maxLength: 60 })
        .filter((bytes) => !isJson(Buffer.from(bytes).toString()))
        .map((bytes) => post(Buffer.from(bytes), [400])),
    },
    {
      weight: 1,
      arbitrary: anything
        .filter((value) => value !== undefined && !Array.isArray(value))
        .map((value) => post(JSON.stringify(value), [400])),
    },
    // A good batch cut short, or with a byte that is no UTF-8 in a text.
    {
      weight: 1,
      arbitrary: fc
        .integer({ min: 1, max: goodBatch.length - 1 })
        .map((length) => post(goodBatch.slice(0, length), [400])),
    },
    {
      weight: 1,
      arbitrary: fc
        .integer({ min: 0x80, max: 0xff })
        .map((byte) =>
          post(
            Buffer.concat([
              Buffer.from(goodBatch.slice(0, 20)),
              Buffer.from([byte, 0x20]),
              Buffer.from(goodBatch.slice(20)),
            ]),
            [400],
          ),
        ),
    },
    {
      weight: 1,
      arbitrary: fc
        .constantFrom("__proto__", "constructor")
        .map((key) =>
          post(
            goodBatch.replace(
              '"text"',
              key === "__proto__"
                ? '"__proto__":{"a":1},"text"'
                : '"constructor":{"prototype":{"a":1}},"text"',
            ),
            [400],
          ),
        ),
    },
    {
      weight: 1,
      arbitrary: headerText
        .filter((type) => !/json/i.test(type))
        .map((type) => post(goodBatch, [400, 415], type)),
    },
    { weight: 1, arbitrary: deep.map((nested) => post(nested, [200, 400])) },
  );
}

/** Credentials that are none. */
export function malformedCredentials({ lead, owner }: Credentials): fc.Arbitrary<Malformed> {
  const [header = "", payload = "", signature = ""] = lead.split(".");
  const part = fc.base64String({ maxLength: 60 }).map((text) => text.replaceAll(/[+/=]/g, "-"));
  const forged = fc.oneof(
    headerText.filter(
      (text) => !text.includes(lead) && text.replaceAll(/[\s-]/g, "").toLowerCase() !== owner,
    ),
    fc.tuple(part, part, part).map((parts) => parts.join(".")),
    part.filter((other) => other !== payload).map((other) => `${header}.${other}.${signature}`),
    part
      .filter((other) => !signature.startsWith(other) && !other.startsWith(signature))
      .map((other) => `${header}.${payload}.${other}`),
    fc.integer({ min: 0, max: lead.length - 2 }).map((length) => lead.slice(0, length)),
  );
  const url = fc.constantFrom(
    ENTRIES,
    "/api/walks",
    `/api/walks/${WALK}/session`,
    `/api/walks/${WALK}/refused`,
  );
  return fc.oneof(
    fc
      .tuple(url, forged, fc.constantFrom("Bearer ", "bearer  ", "Basic ", ""))
      .map(([to, token, scheme]) => ({
        request: { method: "GET" as const, url: to, headers: { authorization: scheme + token } },
        refused: [401],
      })),
    fc.tuple(url, forged).map(([to, token]) => ({
      request: { method: "GET" as const, url: to, headers: { cookie: `tetherline=${token}` } },
      refused: [401],
    })),
  );
}

/** Cursors that are none, in all places where one goes. */
export function malformedCursors({ lead }: Credentials): fc.Arbitrary<Malformed> {
  // A name of letters, digits, hyphens and underscores, a colon, and a whole number as one writes it; the rest is wrong.
  const isCursor = (text: string) => {
    const [epoch = "", offset = "", ...more] = text.split(":");
    return (
      more.length === 0 &&
      epoch.length <= 64 &&
      [...epoch].length > 0 &&
      [...epoch].every((letter) => /[A-Za-z0-9_-]/.test(letter)) &&
      Number.isSafeInteger(Number(offset)) &&
      String(Math.abs(Number(offset))) === offset
    );
  };
  const cursor = fc
    .oneof(
      anyText,
      headerText,
      fc.tuple(headerText, anything).map(([a, b]) => `${a}:${JSON.stringify(b)}`),
      fc.constantFrom(
        "a:",
        ":1",
        "a:01",
        "a:-1",
        "a:1.5",
        "a:1e3",
        "a:9999999999999999",
        "a:1:1",
        "ä:1",
        "a b:1",
        `${"x".repeat(65)}:1`,
      ),
    )
    .filter((text) => text !== "" && !isCursor(text));
  const authorization = `Bearer ${lead}`;
  return fc.oneof(
    fc
      .tuple(
        cursor.filter((text) => text.isWellFormed()),
        fc.constantFrom("text/event-stream", "*/*"),
      )
      .map(([text, accept]) => ({
        request: {
          method: "GET" as const,
          url: `${ENTRIES}?after=${encodeURIComponent(text)}`,
          headers: { authorization, accept },
        },
        refused: [400],
      })),
    cursor
      .filter((text) => /^[\x21-\x7e]+$/.test(text))
      .map((text) => ({
        request: {
          method: "GET" as const,
          url: ENTRIES,
          headers: { authorization, accept: "text/event-stream", "last-event-id": text },
        },
        refused: [400],
      })),
    fc
      .oneof(
        cursor.map((text) => ({ cursor: text })),
        anything.filter((value) => typeof value !== "object" || value === null || !("cursor" in value)),
      )
      .map((body) => ({
        request: {
          method: "POST" as const,
          url: `/api/walks/${WALK}/presence`,
          headers: { authorization, "content-type": "application/json" },
          payload: JSON.stringify(body) ?? "",
        },
        refused: [400],
      })),
  );
}

/** Walks and devices that are not there or are no names, and paths that lead nowhere. */
export function malformedAddresses({ lead, owner }: Credentials): fc.Arbitrary<Malformed> {
  const name = fc
    .oneof(anyText, fc.constantFrom("__proto__", "constructor", "..", ".", "%", "\u0000", "%2e%2e"))
    .filter((text) => text.isWellFormed() && text !== WALK && text !== "");
  const rawName = fc
    .oneof(
      name.map(encodeURIComponent),
      headerText.map((text) => text.replaceAll(/[\s?#]/g, "")),
      fc.constantFrom("%", "%zz", "%ff", "%c0%ae", "%00", "%e0%80%80"),
    )
    .filter((text) => text !== WALK && text !== "" && !/^[\\/]|\/\//.test(text));
  const below = fc.constantFrom(
    "entries",
    "session",
    "presence",
    "refused",
    "followers",
    "invitations",
    "leave",
  );
  const method = fc.constantFrom(
    "GET" as const,
    "POST" as const,
    "DELETE" as const,
    "PUT" as const,
    "PATCH" as const,
  );
  const ask = (verb: Malformed["request"]["method"], url: string, token: string) =>
    ({ method: verb, url, headers: { authorization: `Bearer ${token}` } }) as InjectOptions;
  return fc.oneof(
    fc.tuple(rawName, below, method).map(([walk, what, verb]) => ({
      request: ask(verb, `/api/walks/${walk}/${what}`, lead),
      refused: [400, 403, 404],
    })),
    rawName.map((device) => ({
      request: ask("DELETE", `/api/walks/${WALK}/followers/${device}`, lead),
      refused: [400, 404],
    })),
    // Ids that not even the owner may use.
    fc
      .oneof(
        fc.string({ minLength: 201, maxLength: 300 }),
        anyText.map((text) => `${text}\u0001`),
      )
      .filter((text) => text.isWellFormed())
      .map((walk) => ({
        request: ask("POST", `/api/walks/${encodeURIComponent(walk)}/invitations`, owner),
        refused: [400],
      })),
    fc.tuple(rawName, method).map(([path, verb]) => ({
      request: ask(verb, `/api/${path}`, lead),
      refused: [400, 403, 404, 405, 415],
    })),
    fc
      .tuple(rawName, rawName, fc.constantFrom("POST" as const, "DELETE" as const, "PUT" as const))
      .map(([one, two, verb]) => ({
        request: ask(verb, `/api/${one}/${two}`, owner),
        refused: [400, 403, 404, 405, 415],
      })),
  );
}

/** Bodies of joining and inviting that are not what these take. */
export function malformedForms({ lead, owner }: Credentials): fc.Arbitrary<Malformed> {
  const join = { code: owner, device: "/devices/new", walk: WALK, role: "lead", use: "bearer", name: "New" };
  const wrong: fc.Arbitrary<readonly [keyof typeof join, unknown]> = fc.oneof(
    fc.tuple(
      fc.constantFrom(
        "code" as const,
        "device" as const,
        "walk" as const,
        "role" as const,
        "use" as const,
        "name" as const,
      ),
      notText,
    ),
    fc.tuple(
      fc.constant("code" as const),
      anyText.filter((text) => text.replaceAll(/[\s-]/g, "").toLowerCase().replaceAll("o", "0") !== owner),
    ),
    fc.tuple(
      fc.constant("device" as const),
      fc.oneof(
        fc.constant(""),
        anyText.map((text) => `/devices/a ${text}`),
        anyText.map((text) => `/devices/a/${text}`),
        fc.string({ minLength: 401, maxLength: 450 }),
      ),
    ),
    fc.tuple(
      fc.constant("walk" as const),
      fc.oneof(
        fc.constant(""),
        anyText.map((text) => `${text}\n`),
        fc.string({ minLength: 201, maxLength: 250 }),
      ),
    ),
    fc.tuple(
      fc.constantFrom("role" as const, "use" as const),
      anyText.filter((text) => !["lead", "marker", "watcher", "relay", "bearer", "cookie"].includes(text)),
    ),
    fc.tuple(
      fc.constant("name" as const),
      fc.oneof(
        fc.constant(""),
        anyText.map((text) => `${text}\u0007`),
        fc.string({ minLength: 81, maxLength: 120 }),
      ),
    ),
  );
  const post = (url: string, body: unknown, headers: Record<string, string>): Malformed => ({
    request: {
      method: "POST",
      url,
      headers: { "content-type": "application/json", ...headers },
      payload: typeof body === "string" ? body : (JSON.stringify(body) ?? ""),
    },
    refused: [400, 403],
  });
  const invite = { role: "marker", minutes: 5 };
  return fc.oneof(
    wrong.map(([name, value]) => post("/api/join", { ...join, [name]: value }, {})),
    anything
      .filter((value) => typeof value !== "object" || value === null || !("code" in value))
      .map((body) => post("/api/join", body, {})),
    anyText.filter((text) => !isJson(text)).map((text) => post("/api/join", text, {})),
    fc
      .oneof(
        notText.map((role) => ({ ...invite, role })),
        anyText
          .filter((text) => !["lead", "marker", "watcher", "relay"].includes(text))
          .map((role) => ({ ...invite, role })),
        fc
          .oneof(
            anything.filter((value) => typeof value !== "number" && value !== undefined),
            fc.constantFrom(0, -1, 1e9, 1441),
          )
          .map((minutes) => ({ ...invite, minutes })),
      )
      .map((body) => post(`/api/walks/${WALK}/invitations`, body, { authorization: `Bearer ${lead}` })),
  );
}

/** What is sent down a connection and is no request that a server could fulfil. */
export function malformedBytes({ lead }: Credentials): fc.Arbitrary<Buffer> {
  const line = headerText.map((text) => text.replaceAll(/[\r\n]/g, ""));
  const head = `POST ${ENTRIES} HTTP/1.1\r\nHost: h\r\nAuthorization: Bearer ${lead}\r\nContent-Type: application/json\r\n`;
  return fc.oneof(
    fc.uint8Array({ minLength: 1, maxLength: 200 }).map((bytes) => Buffer.from(bytes)),
    line
      .filter((text) => !/^[A-Z]+ /.test(text))
      .map((text) => Buffer.from(`${text} HTTP/1.1\r\nHost: h\r\n\r\n`)),
    fc
      .constantFrom("HTTP/9.9", "HTTP/0.9", "HTTP/1.1x", "http/1.1", "FTP/1.0", "")
      .map((version) => Buffer.from(`GET ${ENTRIES} ${version}\r\nHost: h\r\n\r\n`)),
    fc
      .tuple(
        line,
        fc.integer({ min: 0, max: 31 }).filter((code) => ![9, 10, 13].includes(code)),
      )
      .map(([text, code]) =>
        Buffer.from(`GET /api/walks HTTP/1.1\r\nHost: h\r\nX-A: ${text}${String.fromCharCode(code)}\r\n\r\n`),
      ),
    fc
      .constantFrom("-1", "x", "1e3", "0x10", "99999999999999999999", "1, 2", "")
      .map((length) => Buffer.from(`${head}Content-Length: ${length}\r\n\r\n[]`)),
    line
      .filter((text) => !/^\s*[0-9a-f]/i.test(text))
      .map((size) => Buffer.from(`${head}Transfer-Encoding: chunked\r\n\r\n${size}\r\n[]\r\n0\r\n\r\n`)),
    fc
      .constantFrom(
        "Content-Length: 2\r\nContent-Length: 3",
        "Content-Length: 2\r\nTransfer-Encoding: chunked",
        "Transfer-Encoding: gzip, x",
        " Folded: x",
        "No colon",
        ": no name",
      )
      .map((lines) => Buffer.from(`${head}${lines}\r\n\r\n[]`)),
    fc
      .integer({ min: 17_000, max: 40_000 })
      .map((length) =>
        Buffer.from(`GET /api/walks HTTP/1.1\r\nHost: h\r\nX-Long: ${"x".repeat(length)}\r\n\r\n`),
      ),
  );
}
