import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/** Checks what was changed in one folder of the source: all types, and the manner and the tests of that folder. */
const [folder = ""] = process.argv.slice(2).map((one) => one.replace(/^(src|tests)\//, ""));
const source = `src/${folder}`;
const tests = `tests/${folder}`;
if (folder === "" || !existsSync(source)) {
  console.error("usage: npm run quick -- <folder of src, such as core/plan>");
  process.exit(2);
}
const folders = [source, tests].filter((one) => existsSync(one));
const checks: readonly (readonly string[])[] = [
  ["tsc"],
  ["biome", "check", "--error-on-warnings", ...folders],
  ["vitest", "run", "--passWithNoTests", tests],
];
for (const check of checks) {
  const { status } = spawnSync("npx", check, { stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
}
