import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { briefingFile, briefingOf } from "../../../src/core/briefing/index.ts";
import { PLAYER_HASH, PLAYER_SCRIPT } from "../../../src/core/briefing/player-script.ts";
import type { ProcedureFile } from "../../../src/core/procedure/index.ts";
import { flownCourseOf } from "../../../src/core/walk/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { briefingOfFile, LAMP_FILE } from "./brief-course.ts";
import { bundledFiles } from "./bundled-files.ts";

const written = (file: unknown) => briefingFile(briefingOfFile(file), "plan", inWords);

/** The longest text that a procedure may have. */
const MOST_LETTERS = 4000;

/** Text as a procedure could have it that was written to break out of a page, to turn its letters round, or to fill it. */
const HOSTILE = [
  ["the end of a script", '</script><script>document.title = "out"</script>'],
  ["an image with a handler", '"><img src=x onerror=alert(1)>'],
  ["the end of a style and the beginning of a comment", "</style></title><!--"],
  ["letters turned round", "\u202Egnorw yaw eht\u2066"],
  ["as many letters as a text may have", "W".repeat(MOST_LETTERS)],
  ["signs of a script's own texts", "`x` \\u003c \u2028"],
] as const;

const hostileFile = (text: string): ProcedureFile => {
  const file = structuredClone(LAMP_FILE);
  const [first, second] = file.tasks;
  const [step] = first?.steps ?? [];
  if (!first || !second || !step) throw new Error("the test's procedure has changed");
  file.title = text;
  first.title = text;
  step.do = text;
  step.brief = text;
  step.alerts = [{ level: "warning", text }];
  for (const one of [...(file.places ?? []), ...(file.items ?? [])]) one.label = text;
  file.pictures = [{ id: "p", label: text, type: "image/svg+xml", data: "PHN2Zy8+" }];
  step.pictures = ["p"];
  return file;
};

describe("a briefing as one file", () => {
  it("[BRF4] is the same text for the same briefing", () => {
    expect(written(LAMP_FILE)).toBe(written(structuredClone(LAMP_FILE)));
  });

  it("[BRF4] has the storyboard in it for readers that run no script, with every frame", () => {
    const file = written(LAMP_FILE);
    const [body] = file.split('<script type="application/json"');
    expect(body?.match(/<article class="frame">/g)).toHaveLength(2);
    expect(body).toContain("EV1 and EV2, together: Do fit-it");
    expect(body).toContain("at Boom");
    expect(body).toContain("2 m of line left");
    expect(body).toMatch(/CAUTION 1\.1<\/b> <bdi>Hot edge/);
  });

  it("[BRF4] says what it shows: a plan, or what happened", () => {
    expect(written(LAMP_FILE)).toContain("As planned");
    const log = LogWriter.started(LAMP_FILE).done(["take", 3], ["ready", 4]);
    const flown = briefingOf(flownCourseOf(log.ledger, minute(6)), log.ledger.petZero);
    const file = briefingFile(flown, "flown", inWords);
    expect(file).toContain("As flown: what happened");
    expect(file).toContain("PET 0 at 2031-04-02 09:00 UTC");
    expect(file).not.toContain("As planned");
  });

  it("[BRF4] has a policy that forbids every request, and lets its own script run alone", () => {
    const hash = createHash("sha256").update(PLAYER_SCRIPT).digest("base64");
    expect(PLAYER_HASH).toBe(`sha256-${hash}`);
    const file = written(LAMP_FILE);
    expect(file).toContain(
      `content="default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src 'sha256-${hash}'; base-uri 'none'; form-action 'none'"`,
    );
    expect(file.match(/(?:src|href)="(?!data:|#)[^"]*"/g)).toBeNull();
    expect(file).not.toMatch(/url\(|@import/);
  });

  it.each(HOSTILE)("[BRF4] keeps %s text", (_name, text) => {
    const file = written(hostileFile(text));
    const tags = (page: string) => page.match(/<\/?(?:script|style|title|img|table|article|main)\b/g);
    expect(tags(file)).toEqual(tags(written(hostileFile("plain"))));
    const data = /<script type="application\/json" id="data">(.*?)<\/script>/s.exec(file)?.[1] ?? "";
    expect(JSON.stringify(JSON.parse(data).chapters)).toContain(JSON.stringify(`1 ${text}`).slice(1, -1));
  });

  it("[BRF4] has each picture once, and says where it is when a later frame has it too", () => {
    const file = hostileFile("plain");
    const last = file.tasks[1]?.steps[0];
    if (!last) throw new Error("the test's procedure has changed");
    last.pictures = ["p"];
    const text = written(file);
    expect(text.match(/data:image\/svg\+xml;base64,PHN2Zy8\+/g)).toHaveLength(1);
    expect(text).toContain("Picture: plain, see frame 1");
  });

  it.each(bundledFiles())("[BRF4] of %s has at most 600 kB", (_name, file) => {
    const size = Buffer.byteLength(written(file));
    expect(size).toBeGreaterThan(30_000);
    expect(size).toBeLessThanOrEqual(600_000);
  });
});
