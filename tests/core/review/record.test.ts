import { describe, expect, it } from "vitest";
import { reviewDocument, reviewOf, reviewXes } from "../../../src/core/review/index.ts";
import { verifyLog } from "../../../src/core/seal/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

const log = LogWriter.started(fileWith([step("a", "ev1", 5)])).done(["a", 5]);
const review = reviewOf(log.folded, minute(10));
if (!review) throw new Error("no walk was opened");
const { entries } = log.folded;

describe("what a review says of its log as a record", () => {
  it("[SEL7] is why it was not verified", () => {
    expect(reviewDocument(review, inWords).record).toEqual({ verified: false, why: "not-asked" });
    const record = { found: null, why: "not-finished" } as const;
    expect(reviewDocument(review, inWords, record).record).toEqual({ verified: false, why: "not-finished" });
    expect(reviewXes(review, record)).toContain('<string key="record.verified" value="false"/>');
    expect(reviewXes(review, record)).toContain('<string key="record.why" value="not-finished"/>');
  });

  it("[SEL6] [SEL7] is the verdict, with root and code, and by whose keys", () => {
    const found = verifyLog(entries, [], { isQuick: true });
    if (!found) throw new Error("nothing to verify");
    const { root, order, code } = found;
    const record = { found, trust: ["a", "b"] };
    expect(reviewDocument(review, inWords, record).record).toEqual({
      verified: true,
      verdict: "partly",
      quick: true,
      trusted: ["a", "b"],
      entries: entries.length,
      root,
      order,
      code,
    });
    const xes = reviewXes(review, record);
    expect(xes).toContain('<string key="record.verdict" value="partly"/>');
    expect(xes).toContain(`<string key="record.code" value="${code}"/>`);
    expect(xes).toContain('<string key="record.trusted" value="a b"/>');
  });
});
