import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { cruise, type ICruiseOptions, type ICruiseResult, type IRuleSetType } from "dependency-cruiser";
import extractTSConfig from "dependency-cruiser/config-utl/extract-ts-config";
import { afterEach, describe, expect, it } from "vitest";
import config, { importTable } from "../../.dependency-cruiser.mjs";
import { filesUnder } from "./source-files.ts";

async function cruised(folder: string, baseDir = process.cwd()): Promise<ICruiseResult> {
  const { tsConfig: _, ...options } = config.options as ICruiseOptions;
  const result = await cruise(
    [folder],
    {
      ...options,
      baseDir,
      validate: true,
      ruleSet: { forbidden: config.forbidden } as IRuleSetType,
      outputType: "json",
    },
    undefined,
    { tsConfig: extractTSConfig("tsconfig.json") },
  );
  return JSON.parse(String(result.output)) as ICruiseResult;
}

const broken = (result: ICruiseResult) =>
  result.summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} → ${to}`).sort();

describe("the import table", () => {
  it("holds for every file of the source, type imports included", async () => {
    const result = await cruised("src");
    expect(broken(result)).toEqual([]);

    const onDisk = filesUnder("src").filter((path) => /\.tsx?$/.test(path));
    const seen = result.modules.map((module) => module.source).filter((path) => /^src\/.*\.tsx?$/.test(path));
    expect(onDisk.length).toBeGreaterThan(0);
    expect(seen.sort()).toEqual(onDisk);
  });

  it("names only folders that rest on one another without a circle", () => {
    const reaches = (from: string, path: readonly string[]): void => {
      expect(path, "a circle in the table").not.toContain(from);
      for (const to of importTable[from] ?? []) reaches(to, [...path, from]);
    };
    for (const folder of Object.keys(importTable)) reaches(folder, []);
  });
});

describe("the rules catch what they are for", () => {
  let checkout = "";

  afterEach(() => rmSync(checkout, { recursive: true, force: true }));

  /** Cruises a small source written for the purpose. */
  async function brokenBy(files: Record<string, string>): Promise<readonly string[]> {
    checkout = mkdtempSync(join(tmpdir(), "tetherline-table-"));
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(join(checkout, dirname(path)), { recursive: true });
      writeFileSync(join(checkout, path), text);
    }
    return broken(await cruised("src", checkout));
  }

  const units = { "src/core/units/index.ts": "export type Duration = number;\nexport const zero = 0;\n" };

  it("passes what the table allows", async () => {
    expect(
      await brokenBy({
        ...units,
        "src/core/log/index.ts":
          'import type { Duration } from "../units/index.ts";\nexport const pause: Duration = 1;\n',
      }),
    ).toEqual([]);
  });

  it("reports an import against the table, even of a type alone", async () => {
    expect(
      await brokenBy({
        "src/core/plan/index.ts": "export type Plan = string;\n",
        "src/core/units/index.ts":
          'import type { Plan } from "../plan/index.ts";\nexport const units = (plan: Plan) => plan;\n',
      }),
    ).toEqual(["table-core-units: src/core/units/index.ts → src/core/plan/index.ts"]);
  });

  it("reports an import past another folder's index", async () => {
    expect(
      await brokenBy({
        "src/core/units/duration.ts": "export const zero = 0;\n",
        "src/core/log/index.ts": 'export { zero } from "../units/duration.ts";\n',
      }),
    ).toEqual(["only-through-index: src/core/log/index.ts → src/core/units/duration.ts"]);
  });

  it("reports a circle of types inside one folder", async () => {
    const found = await brokenBy({
      "src/core/units/index.ts": 'export type { A } from "./a.ts";\n',
      "src/core/units/a.ts": 'import type { B } from "./b.ts";\nexport type A = B | 1;\n',
      "src/core/units/b.ts": 'import type { A } from "./a.ts";\nexport type B = A | 2;\n',
    });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^no-circle: /);
  });

  it("reports the machine and the screen in the core", async () => {
    expect(
      await brokenBy({
        "src/core/units/index.ts":
          'import { readFileSync } from "node:fs";\nexport const read = () => readFileSync("x");\n',
        "src/core/log/index.ts": 'export { useState } from "react";\n',
        "node_modules/react/package.json": '{ "name": "react", "version": "1.0.0", "main": "index.js" }',
        "node_modules/react/index.js": "exports.useState = () => {};\n",
        "package.json": '{ "dependencies": { "react": "1.0.0" } }',
      }),
    ).toEqual([
      "core-has-no-machine: src/core/units/index.ts → fs",
      "core-is-pure: src/core/log/index.ts → node_modules/react/index.js",
    ]);
  });

  it("reports a folder that has no row", async () => {
    expect(
      await brokenBy({ ...units, "src/core/odds/index.ts": 'export { zero } from "../units/index.ts";\n' }),
    ).toEqual(["outside-the-table: src/core/odds/index.ts → src/core/units/index.ts"]);
  });
});
