import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { text } from "node:stream/consumers";
import { gunzipSync, gzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { RATE_LIMITS } from "../../src/hub/routes/index.ts";
import { TestHub, WALK } from "./test-hub.ts";

const folder = mkdtempSync(join(tmpdir(), "tetherline-app-"));
const app = join(folder, "dist");
let hub: TestHub;
let port: number;

beforeAll(async () => {
  mkdirSync(join(app, "assets"), { recursive: true });
  mkdirSync(join(folder, "dist-secret"));
  writeFileSync(join(folder, "secret.txt"), "SECRET");
  writeFileSync(join(folder, "dist-secret", "index.html"), "SECRET");
  writeFileSync(join(app, ".hidden"), "SECRET");
  writeFileSync(join(app, "index.html"), "<!doctype html><title>app</title>");
  writeFileSync(join(app, "sw.js"), "// worker");
  writeFileSync(join(app, "assets", "index-abc123.js"), "// code");
  writeFileSync(join(app, "assets", "index-abc123.js.gz"), gzipSync("// code"));
  writeFileSync(join(app, "assets", "proof-worker-abc123.js"), "// code");
  hub = await TestHub.open({ app });
  port = Number(new URL(await hub.listen()).port);
});
afterAll(async () => {
  await hub.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Sends a path as it is, which no well-behaved client would. */
async function raw(path: string, head = ""): Promise<string> {
  const socket = connect(port, "127.0.0.1");
  socket.write(`GET ${path} HTTP/1.1\r\nHost: hub\r\nConnection: close\r\n${head}\r\n`);
  return text(socket);
}

describe("[HUB] the app is served", () => {
  it("at its address and at every page's, never in the place of what is not there", async () => {
    for (const url of ["/", "/plan/some-procedure", "/join/ABCDEFGHJ", "/index.html"]) {
      const answer = await hub.ask("GET", url, { headers: { accept: "text/html" } });
      expect([url, answer.statusCode, answer.headers["content-type"]]).toEqual([
        url,
        200,
        "text/html; charset=utf-8",
      ]);
      expect(answer.body).toContain("<title>app</title>");
    }
    for (const url of [
      "/assets/gone.js",
      "/api",
      "/api/none",
      "/gone.png",
      "/metrics/none",
      "/.git/config",
    ]) {
      const answer = await hub.ask("GET", url, { headers: { accept: "text/html" } });
      expect([url, answer.statusCode, answer.json().error]).toEqual([url, 404, "not-found"]);
    }
    const post = await hub.ask("POST", "/plan/some-procedure");
    expect(post.statusCode).toBe(404);
    const data = await hub.ask("GET", "/plan/x", { headers: { accept: "application/json" } });
    expect(data.statusCode).toBe(404);
  });

  it("with headers that let a browser keep what never changes, and ask anew for the rest", async () => {
    const kept = async (url: string) => (await hub.ask("GET", url)).headers["cache-control"];
    expect(await kept("/assets/index-abc123.js")).toBe("public, max-age=31536000, immutable");
    for (const url of ["/", "/index.html", "/sw.js", "/plan/x"])
      expect([url, await kept(url)]).toEqual([url, "no-cache"]);
  });

  it("packed as the build packed it to whoever takes that, and as it is to others and where nothing is packed", async () => {
    const asked = (url: string, takes: string) =>
      hub.ask("GET", url, { headers: { "accept-encoding": takes } });
    const packed = await asked("/assets/index-abc123.js", "gzip, deflate, br");
    expect(packed.headers).toMatchObject({
      "content-encoding": "gzip",
      "content-type": "application/javascript; charset=utf-8",
      "cache-control": "public, max-age=31536000, immutable",
    });
    expect(packed.headers["vary"]).toMatch(/accept-encoding/);
    expect(gunzipSync(packed.rawPayload).toString()).toBe("// code");
    for (const [url, takes] of [
      ["/assets/index-abc123.js", "identity"],
      ["/assets/proof-worker-abc123.js", "gzip"],
    ] as const) {
      const plain = await asked(url, takes);
      expect([url, plain.statusCode, plain.headers["content-encoding"]]).toEqual([url, 200, undefined]);
      expect(plain.body).toBe("// code");
      expect(plain.headers["vary"]).toMatch(/accept-encoding/);
    }
  });

  it("under a policy that runs nothing but its own files", async () => {
    const { headers } = await hub.ask("GET", "/");
    const policy = String(headers["content-security-policy"]).split(";");
    expect(policy.sort()).toEqual(
      [
        "base-uri 'none'",
        "connect-src 'self'",
        "default-src 'self'",
        "font-src 'self'",
        "form-action 'self'",
        "frame-ancestors 'none'",
        "img-src 'self' data: blob:",
        "manifest-src 'self'",
        "object-src 'none'",
        "script-src 'self'",
        "style-src 'self' 'unsafe-inline'",
        "worker-src 'self'",
      ].sort(),
    );
    expect(headers["x-content-type-options"]).toBe("nosniff");
    expect(headers).not.toHaveProperty("strict-transport-security");
    expect(headers).not.toHaveProperty("access-control-allow-origin");
  });

  it("under a policy that lets one worker alone compile, and evaluate nothing", async () => {
    const policyOf = async (url: string) =>
      String((await hub.ask("GET", url)).headers["content-security-policy"]);
    const others = await policyOf("/assets/index-abc123.js");
    expect(others).toContain("script-src 'self';");
    expect(await policyOf("/assets/proof-worker-abc123.js")).toBe(
      others.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"),
    );
  });

  const climbing = [
    "/../secret.txt",
    "/assets/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/..%5csecret.txt",
    "/%2e%2e%2fsecret.txt",
    "/assets/..%2f..%2fsecret.txt",
    "/..%252fsecret.txt",
    "/%c0%ae%c0%ae/secret.txt",
    "//..//secret.txt",
    "/..;/secret.txt",
    "/../dist-secret/index.html",
    "/.hidden",
    "/%2ehidden",
    "/index.html%00.txt",
    "//etc/passwd",
    "/%2fetc%2fpasswd",
    "http://hub/../secret.txt",
    "*",
    "secret.txt",
    "/%",
    "/%zz",
    "/%ff",
  ];
  it.each(climbing)("and nothing beside its folder is: GET %s", async (path) => {
    const answer = await raw(path);
    expect(answer).toMatch(/^HTTP\/1\.1 (200|[34]\d\d) /);
    expect(answer).not.toMatch(/SECRET|root:/);
    // A page may answer; a file may not.
    if (answer.startsWith("HTTP/1.1 200")) expect(answer).toContain("<title>app</title>");
  });
});

describe("[HUB] requests that are none", () => {
  it.each([
    ["no HTTP at all", "hello\r\n\r\n", 400],
    ["headers over 16 kB", `GET / HTTP/1.1\r\nHost: h\r\nX: ${"x".repeat(20_000)}\r\n\r\n`, 431],
    [
      "two lengths",
      "POST /api/join HTTP/1.1\r\nHost: h\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\nab",
      400,
    ],
    [
      "length and chunks",
      "POST /api/join HTTP/1.1\r\nHost: h\r\nContent-Length: 3\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n",
      400,
    ],
    [
      "a bad chunk",
      "POST /api/join HTTP/1.1\r\nHost: h\r\nContent-Type: application/json\r\nTransfer-Encoding: chunked\r\n\r\nZZ\r\n",
      400,
    ],
    ["a header with a line end in it", "GET / HTTP/1.1\r\nHost: h\r\nX: a\u0000b\r\n\r\n", 400],
  ])("are answered in our form: %s", async (_what, request, status) => {
    const socket = connect(port, "127.0.0.1");
    socket.write(request);
    const answer = await text(socket);
    expect(answer).toMatch(new RegExp(`^HTTP/1\\.1 ${status} `));
    expect(JSON.parse(answer.slice(answer.indexOf("{")))).toEqual({
      error: expect.any(String),
      words: expect.any(String),
    });
  });

  it("with keys that could change objects are refused", async () => {
    for (const body of [
      '{"code":"aaaaaaaaa","device":"/devices/a","__proto__":{"walk":"w"}}',
      '[{"constructor":{"prototype":{"a":1}}}]',
      '[{"data":{"__proto__":null}}]',
    ]) {
      const answer = await hub.ask("POST", `/api/walks/${WALK}/entries`, { token: hub.owner, body });
      expect([body, answer.statusCode]).toEqual([body, 400]);
    }
  });

  it("in bytes that are no UTF-8 are refused", async () => {
    const answer = await hub.hub.server.inject({
      method: "POST",
      url: "/api/join",
      headers: { "content-type": "application/json" },
      payload: Buffer.from([0x22, 0xc3, 0x28, 0x22]),
    });
    expect([answer.statusCode, answer.json().error]).toEqual([400, "bad-body"]);
  });
});

describe("[HUB] rates", () => {
  it("are limited by token where there is one, and by address otherwise", async () => {
    const strict = await TestHub.open({
      limits: { ...RATE_LIMITS, perToken: 4, perAddress: 2, filesPerAddress: 3 },
    });
    const statuses = async (url: string, token?: string, times = 5) => {
      const all = [];
      for (let time = 0; time < times; time += 1)
        all.push((await strict.ask("GET", url, { token })).statusCode);
      return all;
    };
    const one = await strict.join("/devices/1");
    const two = await strict.join("/devices/2");
    expect(await statuses("/api/walks", one)).toEqual([200, 200, 200, 200, 429]);
    expect(await statuses("/api/walks", two, 1)).toEqual([200]);
    expect(await statuses("/api/walks", undefined, 3)).toEqual([401, 401, 429]);
    expect(await statuses("/api/clock", undefined, 4)).toEqual([200, 200, 200, 429]);
    const answer = await strict.ask("GET", "/api/walks", { token: one });
    expect(answer.json()).toEqual({ error: "too-many", words: expect.any(String) });
    expect(Number(answer.headers["retry-after"])).toBeGreaterThan(0);
    await strict.close();
  });
});
