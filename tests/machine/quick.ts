import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { promisify } from "node:util";

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
const run = promisify(execFile);
await Promise.all(
  checks.map(async (check) => {
    const { stdout, stderr } = await run("npx", check, { maxBuffer: 2 ** 26 }).catch((failure: unknown) => {
      process.exitCode = 1;
      return failure as { readonly stdout: string; readonly stderr: string };
    });
    console.log(`${stdout}${stderr}`.trimEnd());
  }),
);
