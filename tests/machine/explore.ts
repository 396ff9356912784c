import { spawnSync } from "node:child_process";
import { randomInt } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Looks for what properties have not met yet: runs them with one new seed after another until the minutes given are over or one fails. */
const minutes = Number(process.argv[2] ?? 10);
if (!(minutes > 0)) {
  console.error("usage: npm run explore -- [minutes, 10 unless said]");
  process.exit(2);
}
const isOfProperties = (file: string) => /\bfc\.assert\(|\.prop\(/.test(readFileSync(file, "utf8"));
const tests = readdirSync("tests", { recursive: true, encoding: "utf8" })
  .map((file) => join("tests", file))
  .filter((file) => /\.test\.tsx?$/.test(file) && isOfProperties(file));
const end = performance.now() + minutes * 60_000;
let rounds = 0;
while (performance.now() < end) {
  rounds += 1;
  const seed = randomInt(2 ** 31);
  console.log(`\n== Round ${rounds}: TETHERLINE_SEED=${seed} ==`);
  const { status } = spawnSync("npx", ["vitest", "run", "--reporter=dot", ...tests], {
    stdio: "inherit",
    env: { ...process.env, TETHERLINE_SEED: String(seed) },
  });
  if (status !== 0) {
    console.error(
      `\nSee it again: TETHERLINE_SEED=${seed} npm run unit -- <file>; pin it before it is mended.`,
    );
    process.exit(1);
  }
}
console.log(`\n${tests.length} files in ${rounds} rounds: nothing found.`);
