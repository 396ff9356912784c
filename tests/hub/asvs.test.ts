import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

it("[HUB] the table of a published standard names tests that there are", () => {
  const table = readFileSync("src/hub/ASVS.md", "utf8");
  const named = [...table.matchAll(/`([\w./-]+\.(?:test|spec)\.tsx?|malformed\.ts)`/g)].map(
    ([, path = ""]) => path,
  );
  expect(named.length).toBeGreaterThan(40);
  const missing = named.filter((path) => !existsSync(path.startsWith("tests/") ? path : `tests/hub/${path}`));
  expect(missing).toEqual([]);
});
