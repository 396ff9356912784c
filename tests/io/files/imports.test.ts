import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

it("the files of the command line rest on Node and the words alone, not on a database or a browser", () => {
  const folder = "src/io/files";
  const imported = readdirSync(folder).flatMap((name) =>
    [...readFileSync(`${folder}/${name}`, "utf8").matchAll(/\b(?:from|import)\s*\(?\s*"([^"]+)"/g)].map(
      ([, from]) => from,
    ),
  );
  expect(imported).toContain("node:fs");
  expect(imported.filter((from) => !/^(node:|\.\/|\.\.\/\.\.\/words\/index\.ts$)/.test(from ?? ""))).toEqual(
    [],
  );
});
