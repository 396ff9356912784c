import fc from "fast-check";
import type { InjectOptions } from "fastify";
import {
  anyText,
  anything,
  type Credentials,
  ENTRIES,
  headerText,
  isJson,
  type Malformed,
  notText,
} from "./malformed-request.ts";
import { WALK } from "./test-hub.ts";

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
