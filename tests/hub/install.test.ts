import { execFile, execFileSync, spawnSync } from "node:child_process";
import { once } from "node:events";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { describe, expect, it } from "vitest";
import { buildState } from "../../src/build-state.mjs";
import { tetherline } from "../cli/run-tetherline.ts";

const read = (name: string) => readFileSync(`src/hub/install/${name}`, "utf8");
const container = read("Containerfile");
const unit = read("tetherline-hub.service");
const { files } = JSON.parse(readFileSync("package.json", "utf8")) as { files: string[] };

/** The words of the hub's command in the unit and in the container, without the program itself. */
const started = {
  "the service": (/^ExecStart=\S+ (.+)$/m.exec(unit)?.[1] ?? "").split(" "),
  "the container": JSON.parse(/^CMD (\[.+\])$/m.exec(container)?.[1] ?? "[]") as string[],
};

describe("what a hub is installed by", () => {
  it.each(Object.entries(started))("[HUB] %s starts it with options that it has", async (_name, words) => {
    expect(words[0]).toBe("hub");
    const { out } = await tetherline("hub", "--help");
    const options = words.filter((word) => word.startsWith("--"));
    expect(options).toContain("--data");
    for (const option of options) expect(out).toContain(`${option} <`);
  });

  it("[HUB] both listen at the hub's own port, which the container opens and asks for its health", async () => {
    const { out } = await tetherline("hub", "--help");
    const port = /--port <n>.*?default:\s+(\d+)/s.exec(out)?.[1] ?? "";
    expect(port).toMatch(/^\d+$/);
    for (const words of Object.values(started)) expect(words[words.indexOf("--port") + 1]).toBe(port);
    expect(container).toMatch(new RegExp(`^EXPOSE ${port}$`, "m"));
    expect(container).toContain(`:${port}/api/health`);
  });

  it("[HUB] the container keeps its log in the volume, as a user who is not root, and copies what the package holds", () => {
    const folder = started["the container"][started["the container"].indexOf("--data") + 1];
    expect(container).toMatch(new RegExp(`^VOLUME ${folder}$`, "m"));
    expect(container).toMatch(/^USER node$/m);
    const copied = [...container.matchAll(/^COPY --from=build (.+)$/gm)].flatMap(([, words = ""]) =>
      words
        .split(" ")
        .slice(0, -1)
        .map((path) => path.replace("/build/", "")),
    );
    for (const path of copied) expect(path === "dist" || existsSync(path), path).toBe(true);
    // What `start.mjs` does is done in a checkout alone: it builds.
    for (const path of files.filter((one) => one !== "src/start.mjs")) expect(copied).toContain(path);
  });

  it("[HUB] the container is built by the lock file, with scripts that there are", () => {
    const { scripts } = JSON.parse(readFileSync("package.json", "utf8")) as { scripts: object };
    expect(container).toMatch(/^COPY package\.json package-lock\.json /m);
    expect(container).toContain("npm ci ");
    for (const [, script = ""] of container.matchAll(/npm run (?:-s )?([\w:]+)/g))
      expect(scripts).toHaveProperty(script);
  });

  it("[HUB] the container tells a hub that is well from one that is not, and from none", async () => {
    const check = /HEALTHCHECK .*CMD (.+)$/m.exec(container)?.[1] ?? "";
    const hub = createServer((request, response) => {
      response.writeHead(request.url === "/api/health" ? status : 404).end();
    }).listen(0, "127.0.0.1");
    await once(hub, "listening");
    const { port } = hub.address() as AddressInfo;
    const asked = () =>
      promisify(execFile)("sh", ["-c", check.replace(":4173", `:${port}`)]).then(
        () => "well",
        () => "not well",
      );
    let status = 200;
    expect(await asked()).toBe("well");
    status = 503;
    expect(await asked()).toBe("not well");
    hub.closeAllConnections();
    hub.close();
    await once(hub, "close");
    expect(await asked()).toBe("not well");
  });

  const hasSystemd = spawnSync("systemd-analyze", ["--version"]).status === 0;
  it.skipIf(!hasSystemd)(
    `[HUB] the service is one that systemd understands${hasSystemd ? "" : ", was not looked at: there is no systemd-analyze"}`,
    () => {
      const folder = mkdtempSync(join(tmpdir(), "tetherline-unit-"));
      try {
        // The program is not installed here; everything else in the unit is looked at as it is.
        const file = join(folder, "tetherline-hub.service");
        writeFileSync(file, unit.replace("/usr/local/bin/tetherline", process.execPath));
        const { stderr } = spawnSync(
          "systemd-analyze",
          ["verify", "--man=no", "--recursive-errors=no", file],
          {
            encoding: "utf8",
          },
        );
        expect(stderr.split("\n").filter((line) => line.includes("tetherline-hub"))).toEqual([]);
        writeFileSync(file, unit.replace("ProtectHome=yes", "ProtectHom=yes"));
        expect(
          spawnSync("systemd-analyze", ["verify", "--man=no", file], { encoding: "utf8" }).stderr,
        ).toContain("ProtectHom");
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  );

  it.skipIf(buildState("program") === "missing")("[HUB] the program tells its version", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
    const said = execFileSync(process.execPath, ["src/tetherline.mjs", "--version"], { encoding: "utf8" });
    expect(said).toBe(`${version}\n`);
  });
});
