import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { readCursor, writeCursor } from "../../../src/core/link/index.ts";

const letters = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789_-"];
const epochs = fc.string({ unit: fc.constantFrom(...letters), minLength: 1, maxLength: 64 });

describe("[LINK] a cursor", () => {
  test.prop([epochs, fc.maxSafeNat()])("is read as it was written", (epoch, offset) => {
    expect(readCursor(writeCursor({ epoch, offset }))).toEqual({ epoch, offset });
  });

  test.prop([fc.string()])("is written again as it was read, or is none", (text) => {
    const cursor = readCursor(text);
    if (cursor) expect(writeCursor(cursor)).toBe(text);
  });

  it.each([
    "",
    ":",
    "epoch",
    "epoch:",
    ":7",
    "epoch:-1",
    "epoch:+1",
    "epoch:07",
    "epoch:1.5",
    "epoch:1e3",
    "epoch:0x7",
    "epoch:7 ",
    " epoch:7",
    "epoch:7\n",
    "ep och:7",
    "epoch:7:8",
    "épöch:7",
    "epoch:9007199254740992",
    "epoch:99999999999999999999",
    `${"e".repeat(65)}:7`,
  ])("is not read from %j", (text) => {
    expect(readCursor(text)).toBeNull();
  });
});
