import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { filesUnder } from "./source-files.ts";

/** What means another side when a page runs the other way. */
const ONE_SIDED = /\b(border|margin|padding)-(left|right)\b|\btext-align:\s*(left|right)\b/;
/** The one that says what the other way is. */
const TURNED = "src/app/theme/base.css";

describe("[WRD3] the styles of the app", () => {
  it("say start and end, and not left and right, so that a page from right to left is the other's mirror", () => {
    const styles = filesUnder("src/app").filter((path) => path.endsWith(".css") && path !== TURNED);
    expect(styles.length).toBeGreaterThan(10);
    const found = styles.flatMap((path) =>
      readFileSync(path, "utf8")
        .split("\n")
        .flatMap((line, at) => (ONE_SIDED.test(line) ? [`${path}:${at + 1} ${line.trim()}`] : [])),
    );
    expect(found).toEqual([]);
  });
});
