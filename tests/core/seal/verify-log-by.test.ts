import { describe, expect, it, vi } from "vitest";
import { verifyLog, verifyLogBy } from "../../../src/core/seal/index.ts";
import { entriesOf, HUB_KEY, wires } from "./sealed-log.ts";

describe("[SEL7] a log verified by the platform", () => {
  it("is asked about each seal once, and told of as they are looked at", async () => {
    const log = entriesOf(wires());
    const asked = vi.fn(async () => true);
    const onProgress = vi.fn();
    const found = await verifyLogBy(asked, log, [HUB_KEY], { onProgress });
    expect(found).toEqual(verifyLog(log, [HUB_KEY]));
    expect(asked).toHaveBeenCalledTimes(log.filter(({ wire }) => wire["seal"] !== undefined).length);
    expect(onProgress).toHaveBeenLastCalledWith(asked.mock.calls.length, asked.mock.calls.length);
  });

  it("that finds nothing to fit is not believed: what it refuses is looked at here", async () => {
    const log = entriesOf(wires());
    expect(await verifyLogBy(async () => false, log, [HUB_KEY])).toEqual(verifyLog(log, [HUB_KEY]));
  });

  it("of no entries is nothing, and one whose platform fails fails", async () => {
    expect(await verifyLogBy(async () => true, [], [])).toBeNull();
    const failing = () => Promise.reject(new Error("gone"));
    await expect(verifyLogBy(failing, entriesOf(wires()), [])).rejects.toThrow("gone");
  });
});
