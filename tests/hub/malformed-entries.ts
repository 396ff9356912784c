import fc from "fast-check";
import {
  anyText,
  anything,
  type Credentials,
  deep,
  ENTRIES,
  headerText,
  isJson,
  type Malformed,
  notText,
} from "./malformed-request.ts";
import { NOON, WALK } from "./test-hub.ts";
import { written } from "./written-entry.ts";

/** How many entries of the device the hub has before, numbered from 1. */
export const KEPT = 3;

/** One attribute of a good entry, made wrong; each says why no entry has it so. */
function brokenEntry(device: string): fc.Arbitrary<unknown> {
  const good = fc.integer({ min: 1, max: 1e9 }).map((number) => written(device, number));
  const required = ["specversion", "id", "source", "type", "subject", "time", "sequence", "hlc"];
  const set = (name: string, value: fc.Arbitrary<unknown>) =>
    fc.tuple(good, value).map(([entry, wrong]) => ({ ...entry, [name]: wrong }));
  return fc.oneof(
    fc
      .tuple(good, fc.constantFrom(...required))
      .map(([entry, name]) => Object.fromEntries(Object.entries(entry).filter(([key]) => key !== name))),
    fc
      .tuple(good, fc.constantFrom(...required), notText)
      .map(([entry, name, value]) => ({ ...entry, [name]: value })),
    set(
      "specversion",
      anyText.filter((text) => text !== "1.0"),
    ),
    set(
      "id",
      fc.oneof(
        fc.constant(""),
        fc.string({ minLength: 201, maxLength: 300 }),
        anyText.map((text) => `${text}\u0000`),
      ),
    ),
    // Another device's, none at all, or with a blank.
    set(
      "source",
      fc.oneof(
        anyText.map((text) => `/devices/other${text}`),
        anyText.map((text) => `${device} ${text}`),
        fc.constant(""),
        fc.constant(`${device}/${"x".repeat(400)}`),
      ),
    ),
    set(
      "subject",
      anyText.filter((text) => text !== WALK),
    ),
    set(
      "time",
      anyText.filter((text) => !/^\d{4}-\d\d-\d\d[Tt]/.test(text)),
    ),
    set(
      "time",
      fc.constantFrom(
        "2031-02-30T00:00:00Z",
        "2031-13-01T00:00:00Z",
        "2031-04-02T25:00:00Z",
        "2031-04-02T09:00:00",
        "2031-04-02",
        "2031-04-02T09:00Z",
      ),
    ),
    set("recordedtime", fc.oneof(notText, fc.constantFrom("", "yesterday", "2031-04-31T00:00:00Z"))),
    set(
      "sequence",
      anyText.filter((text) => !/^[0-9]+$/.test(text)),
    ),
    set("sequence", fc.constantFrom("-1", "1.0", "0x1", " 1", "123456789012345678901")),
    set(
      "hlc",
      anyText.filter((text) => !/^[0-9]{15}-/.test(text)),
    ),
    // Over a minute ahead of the hub's clock; under a key that the hub has it would be in conflict, and kept aside.
    fc
      .tuple(
        good.filter(({ id }) => Number(id) > KEPT),
        fc.integer({ min: 60_001, max: 1e12 }),
      )
      .map(([entry, ahead]) => ({ ...entry, hlc: `${String(NOON + ahead).padStart(15, "0")}-0000` })),
    set("type", fc.constant("")),
    set("type", fc.string({ minLength: 201, maxLength: 220 })),
    set("data", fc.oneof(notText, fc.record({ text: notText }), fc.constant({ text: "x".repeat(20_001) }))),
    set("actor", notText),
    fc
      .tuple(good, deep)
      .map(([entry, nested]) => ({ ...entry, data: { text: "x", more: JSON.parse(nested) as unknown } })),
    anything.filter(
      (value) =>
        value !== undefined && (typeof value !== "object" || value === null || !("specversion" in value)),
    ),
  );
}

/** Bodies of entries: no JSON, the wrong JSON, or batches of what are no entries. */
export function malformedBatches({ device, lead }: Credentials): fc.Arbitrary<Malformed> {
  const post = (
    payload: string | Buffer,
    refused: readonly number[],
    type = "application/cloudevents-batch+json",
  ) => ({
    request: {
      method: "POST" as const,
      url: ENTRIES,
      headers: { authorization: `Bearer ${lead}`, "content-type": type },
      payload,
    },
    refused,
  });
  const goodBatch = JSON.stringify([written(device, 1)]);
  return fc.oneof(
    {
      weight: 6,
      arbitrary: fc
        .array(brokenEntry(device), { minLength: 1, maxLength: 4 })
        .map((batch) => JSON.stringify(batch))
        // A key that would change an object's prototype makes the whole body one that is not read.
        .map((text) => post(text, text.includes('"__proto__"') ? [200, 400] : [200])),
    },
    { weight: 1, arbitrary: anyText.filter((text) => !isJson(text)).map((text) => post(text, [400])) },
    {
      weight: 1,
      arbitrary: fc
        .uint8Array({ minLength: 1, maxLength: 60 })
        .filter((bytes) => !isJson(Buffer.from(bytes).toString()))
        .map((bytes) => post(Buffer.from(bytes), [400])),
    },
    {
      weight: 1,
      arbitrary: anything
        .filter((value) => value !== undefined && !Array.isArray(value))
        .map((value) => post(JSON.stringify(value), [400])),
    },
    // A good batch cut short, or with a byte that is no UTF-8 in a text.
    {
      weight: 1,
      arbitrary: fc
        .integer({ min: 1, max: goodBatch.length - 1 })
        .map((length) => post(goodBatch.slice(0, length), [400])),
    },
    {
      weight: 1,
      arbitrary: fc
        .integer({ min: 0x80, max: 0xff })
        .map((byte) =>
          post(
            Buffer.concat([
              Buffer.from(goodBatch.slice(0, 20)),
              Buffer.from([byte, 0x20]),
              Buffer.from(goodBatch.slice(20)),
            ]),
            [400],
          ),
        ),
    },
    {
      weight: 1,
      arbitrary: fc
        .constantFrom("__proto__", "constructor")
        .map((key) =>
          post(
            goodBatch.replace(
              '"text"',
              key === "__proto__"
                ? '"__proto__":{"a":1},"text"'
                : '"constructor":{"prototype":{"a":1}},"text"',
            ),
            [400],
          ),
        ),
    },
    {
      weight: 1,
      arbitrary: headerText
        .filter((type) => !/json/i.test(type))
        .map((type) => post(goodBatch, [400, 415], type)),
    },
    { weight: 1, arbitrary: deep.map((nested) => post(nested, [200, 400])) },
  );
}
