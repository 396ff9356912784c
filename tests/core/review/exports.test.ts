import { fc, test } from "@fast-check/vitest";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describe, expect, it } from "vitest";
import type { Review } from "../../../src/core/review/index.ts";
import { reviewCsv, reviewOf, reviewXes } from "../../../src/core/review/index.ts";
import { inWords } from "../../../src/words/index.ts";
import { LogWriter, minute } from "../log-writer.ts";
import { fileWith, step } from "../procedure-builder.ts";

/** Reads CSV as RFC 4180 has it: fields apart by commas, records by CRLF, quotes doubled inside quotes. */
function readCsv(text: string): string[][] {
  const records: string[][] = [];
  let record: string[] = [];
  for (let at = 0; at < text.length; ) {
    let field = "";
    if (text[at] === '"') {
      for (at += 1; !(text[at] === '"' && text[at + 1] !== '"'); at += 1) {
        if (at >= text.length) throw new Error("a quote is not closed");
        if (text[at] === '"') at += 1;
        field += text[at];
      }
      at += 1;
    } else {
      const end = /[,\r\n]/.exec(text.slice(at))?.index ?? text.length - at;
      field = text.slice(at, at + end);
      if (field.includes('"')) throw new Error("a quote stands in a bare field");
      at += end;
    }
    record.push(field);
    if (text[at] === ",") at += 1;
    else if (text.startsWith("\r\n", at)) {
      records.push(record);
      record = [];
      at += 2;
    } else throw new Error(`neither comma nor CRLF at ${at}`);
  }
  return records;
}

const FILE = fileWith(
  [
    step("a", ["ev1", "ev2"], 5, {
      do: 'Say "go",\nthen wait',
      records: [{ id: "turns", unit: "1", max: 7 }],
    }),
    step("b", "ev1", 3, { do: "=HYPERLINK(1)" }),
    step("c", "iv", 1),
  ],
  { title: 'Ünder & "over" <1>' },
);

function reviewed(log: LogWriter): Review {
  const review = reviewOf(log.folded, minute(60));
  if (!review) throw new Error("no walk was opened");
  return review;
}

const walked = () =>
  LogWriter.started(FILE)
    .enter("record.taken", { step: "a", record: "turns", value: 8 }, 3)
    .done(["a", 4])
    .enter("note.made", { step: "a", text: "@home" }, 4)
    .enter("step.skipped", { step: "c", reason: "+1 later" }, 5)
    .done(["b", 9])
    .enter("walk.closed", { end: "complete" }, 9);

describe("the review as CSV", () => {
  const rowsOf = (review: Review) => {
    const [heading = [], ...rows] = readCsv(reviewCsv(review, inWords));
    return rows.map((row) => {
      expect(row).toHaveLength(heading.length);
      return Object.fromEntries(heading.map((name, column) => [name, row[column]]));
    });
  };

  it("[REV2] has a heading and one record a step, as RFC 4180 asks", () => {
    const [a, b, c] = rowsOf(reviewed(walked()));
    expect(a).toMatchObject({
      number: "1.1",
      step: "a",
      by: "ev1 ev2",
      action: 'Say "go",\nthen wait',
      ending: "done",
      planned_finish_s: "300",
      actual_finish_s: "240",
      actual_finish_utc: "2031-04-02T09:04:00.000Z",
      finish_difference_s: "-60",
      out_of_order: "no",
      records: "turns 8 (out of range)",
    });
    expect(b).toMatchObject({ step: "b", start_difference_s: "-60", time_difference_s: "120" });
    expect(c).toMatchObject({ step: "c", ending: "skipped", actual_start_s: "300" });
  });

  it("[REV2] marks as text what a spreadsheet would run, and leaves numbers below zero alone", () => {
    const [a, b, c] = rowsOf(reviewed(walked()));
    expect([a?.["notes"], b?.["action"], c?.["reason"]]).toEqual(["'@home", "'=HYPERLINK(1)", "'+1 later"]);
    expect(a?.["finish_difference_s"]).toBe("-60");
  });

  test.prop([
    fc.array(fc.string({ unit: "binary", maxLength: 20, minLength: 1 }), { minLength: 1, maxLength: 3 }),
  ])("[REV2] carries any text", (texts) => {
    const file = fileWith(texts.map((text, index) => step(`s${index}`, "ev1", 1, { do: text })));
    const log = LogWriter.opened(file);
    if (!log.folded.ledger) return;
    const actions = rowsOf(reviewed(log)).map(({ action }) => action);
    expect(actions.map((action, index) => (action === `'${texts[index]}` ? texts[index] : action))).toEqual(
      texts,
    );
  });
});

interface XesNode {
  readonly "@key": string;
  readonly "@value": string;
}
interface XesEvent {
  readonly string: readonly XesNode[];
  readonly date: readonly XesNode[];
}

/** Reads the events of an XES log, each as its attributes by key. */
function readXes(text: string): {
  readonly log: Record<string, unknown>;
  readonly events: readonly Record<string, string>[];
} {
  expect(XMLValidator.validate(text)).toBe(true);
  const parser = new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    parseAttributeValue: false,
    isArray: (name) =>
      ["event", "string", "date", "extension", "global", "classifier", "trace"].includes(name),
  });
  const { log } = parser.parse(text) as {
    log: { trace: { event?: XesEvent[] }[] } & Record<string, unknown>;
  };
  const events = (log.trace[0]?.event ?? []).map((event) =>
    Object.fromEntries([...event.string, ...event.date].map((node) => [node["@key"], node["@value"]])),
  );
  return { log, events };
}

describe("the review as an event log", () => {
  it("[REV2] declares what IEEE 1849 asks for, and has one trace, the walk", () => {
    const { log } = readXes(reviewXes(reviewed(walked())));
    expect(log).toMatchObject({
      "@xes.version": "1849.2016",
      "@xmlns": "http://www.xes-standard.org/",
      extension: ["concept", "lifecycle", "org", "time"].map((prefix) => ({
        "@prefix": prefix,
        "@uri": `http://www.xes-standard.org/${prefix}.xesext`,
      })),
      global: [{ "@scope": "trace" }, { "@scope": "event" }],
      string: [
        { "@key": "concept:name", "@value": 'Ünder & "over" <1>' },
        { "@key": "lifecycle:model", "@value": "standard" },
      ],
    });
    expect(log["trace"]).toHaveLength(1);
  });

  it("[REV2] has start and completion of every step for each performer, and skips, in the order of time", () => {
    const { events } = readXes(reviewXes(reviewed(walked())));
    expect(
      events.map((event) =>
        ["concept:instance", "org:resource", "lifecycle:transition", "time:timestamp"].map(
          (key) => event[key],
        ),
      ),
    ).toEqual([
      ["a", "ev1", "start", "2031-04-02T09:00:00.000Z"],
      ["a", "ev2", "start", "2031-04-02T09:00:00.000Z"],
      ["a", "ev1", "complete", "2031-04-02T09:04:00.000Z"],
      ["a", "ev2", "complete", "2031-04-02T09:04:00.000Z"],
      ["b", "ev1", "start", "2031-04-02T09:04:00.000Z"],
      ["c", "iv", "manualskip", "2031-04-02T09:05:00.000Z"],
      ["b", "ev1", "complete", "2031-04-02T09:09:00.000Z"],
    ]);
    expect(events[0]?.["concept:name"]).toBe('1.1 Say "go", then wait');
  });

  it("[REV2] of a walk whose clock was never started has no events", () => {
    expect(readXes(reviewXes(reviewed(LogWriter.opened(FILE)))).events).toEqual([]);
  });

  test.prop([fc.string({ unit: "binary", minLength: 1, maxLength: 30 })])(
    "[REV2] is well-formed whatever the text",
    (text) => {
      const log = LogWriter.started(fileWith([step("s", "ev1", 1, { do: text })])).done(["s", 1]);
      const { events } = readXes(reviewXes(reviewed(log)));
      expect(events).toHaveLength(2);
    },
  );
});
