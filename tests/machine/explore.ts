import { spawnSync } from "node:child_process";
import { randomInt } from "node:crypto";

/** Looks for what properties have not met yet: runs tests with one new seed after another until the minutes given are over or one fails. */
const [given = "10", ...tests] = process.argv.slice(2);
const minutes = Number(given);
if (!(minutes > 0)) {
  console.error("usage: npm run explore -- [minutes, 10 unless said] [tests, all unless said]");
  process.exit(2);
}
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
console.log(`\n${rounds} rounds: nothing found.`);
