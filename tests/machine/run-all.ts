import { execFile, spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { chromiumVersion, NoChromiumError, obtainChromium } from "./find-chromium.ts";
import { freePort } from "./free-port.ts";
import { type Counts, laterTries, playwrightCounts, ReportError, vitestCounts } from "./test-counts.ts";

/** Runs every stage in order, stops at the first that fails, and ends with the line `N passed, N failed`. */
interface Stage {
  readonly title: string;
  readonly command: readonly [string, ...string[]];
  readonly environment?: () => Promise<NodeJS.ProcessEnv>;
  /** Where the stage counts tests: its report, and how to read it. */
  readonly report?: readonly [file: string, counts: (report: unknown) => Counts];
}

const reports = mkdtempSync(join(tmpdir(), "tetherline-reports-"));
const unitReport = join(reports, "unit.json");
const browserReport = join(reports, "browser.json");

/** What needs nothing but the sources, and runs side by side: the build is there for the tests. */
const checks: readonly Stage[] = [
  { title: "Types", command: ["npm", "run", "-s", "types"] },
  { title: "Lint and format", command: ["npm", "run", "-s", "lint"] },
  { title: "Unused code and packages", command: ["npm", "run", "-s", "unused"] },
  { title: "Imports between folders", command: ["npm", "run", "-s", "imports"] },
  { title: "Build", command: ["npm", "run", "-s", "build"] },
];

const stages: readonly Stage[] = [
  {
    title: "Unit, property, truth, house and component tests",
    command: [
      ...(["npm", "run", "-s", "unit", "--"] as const),
      ...["--reporter=default", "--reporter=json", `--outputFile.json=${unitReport}`],
    ],
    report: [unitReport, vitestCounts],
  },
  { title: "Native projects take the build", command: ["npm", "run", "-s", "cap:sync"] },
  {
    title: "Browser tests",
    // On a busy machine a test may miss its moment; what passes at another try is told of at the end.
    command: ["npx", "playwright", "test", "--retries=2"],
    environment: async () => {
      const chromium = obtainChromium();
      console.log(`${chromium}: ${chromiumVersion(chromium)}`);
      return {
        TETHERLINE_CHROMIUM: chromium,
        TETHERLINE_PORT: String(await freePort(4179)),
        TETHERLINE_BUILT: "1",
        PLAYWRIGHT_JSON_OUTPUT_FILE: browserReport,
      };
    },
    report: [browserReport, playwrightCounts],
  },
];

/** Runs one check and prints what it said once it is over; resolves to whether it passed. */
async function check({ title, command: [program, ...rest] }: Stage): Promise<boolean> {
  let hasPassed = true;
  const { stdout, stderr } = await promisify(execFile)(program, rest, { maxBuffer: 2 ** 26 }).catch(
    (failure: unknown) => {
      hasPassed = false;
      return failure as { readonly stdout: string; readonly stderr: string };
    },
  );
  console.log(`\n== ${title} ==\n${stdout}${stderr}`.trimEnd());
  return hasPassed;
}

/** Runs one stage; a stage that fails without a count of its own counts as one failure. */
async function run({ title, command, environment, report }: Stage): Promise<Counts> {
  console.log(`\n== ${title} ==`);
  const [program, ...rest] = command;
  try {
    const { status } = spawnSync(program, rest, {
      stdio: "inherit",
      env: { ...process.env, ...(await environment?.()) },
    });
    const counts = report?.[1](JSON.parse(readFileSync(report[0], "utf8"))) ?? { passed: 0, failed: 0 };
    if (report?.[0] === browserReport) tellLaterTries();
    return status === 0 ? counts : { ...counts, failed: Math.max(counts.failed, 1) };
  } catch (error) {
    const noReport = error instanceof Error && "code" in error && error.code === "ENOENT";
    if (!(noReport || error instanceof ReportError || error instanceof NoChromiumError)) throw error;
    console.error(noReport ? `${title}: no report was written.` : (error as Error).message);
    return { passed: 0, failed: 1 };
  }
}

/** A browser test that passes only at another try does not stop the run, and is not kept quiet either. */
function tellLaterTries(): void {
  const tests = laterTries(JSON.parse(readFileSync(browserReport, "utf8")));
  if (tests > 0)
    console.warn(
      `Browser tests that failed at first and passed at another try: ${tests}. See "flaky" above.`,
    );
}

let passed = 0;
const checked = await Promise.all(checks.map(check));
const wrong = checks.filter((_, index) => !checked[index]);
let failed = wrong.length;
if (failed > 0) console.log(`\nStopped at: ${wrong.map(({ title }) => title).join(", ")}.`);
for (const stage of failed > 0 ? [] : stages) {
  const counts = await run(stage);
  passed += counts.passed;
  failed += counts.failed;
  if (failed > 0) {
    console.log(`\nStopped at: ${stage.title}.`);
    break;
  }
}
rmSync(reports, { recursive: true, force: true });
process.exitCode = failed > 0 ? 1 : 0;
console.log(`\n${passed} passed, ${failed} failed`);
