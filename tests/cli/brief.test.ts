import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { LAMP_FILE } from "../core/briefing/brief-course.ts";
import { fileWith, step } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const file = scratch.write("lamp.procedure.json", JSON.stringify(LAMP_FILE));
const out = (name: string) => scratch.write(name, "");

describe("brief", () => {
  it("[BRF4] writes the briefing of a plan, the same bytes each time, and says so beside the result", async () => {
    const [first, second] = [out("first.html"), out("second.html")];
    const one = await tetherline("brief", file, "--html", first);
    expect(one).toMatchObject({ status: 0, out: "" });
    expect(one.err).toMatch(/first\.html: written, [\d,]+ bytes\./);
    await tetherline("brief", file, "--html", second);
    expect(readFileSync(first, "utf8")).toBe(readFileSync(second, "utf8"));
    expect(readFileSync(first, "utf8")).toContain("As planned");
  });

  it("[BRF4] takes a start, and writes a walk as it was played from its log", async () => {
    const page = out("start.html");
    expect((await tetherline("brief", file, "--html", page, "--start", "2031-04-02T09:00:00Z")).status).toBe(
      0,
    );
    expect(readFileSync(page, "utf8")).toContain("PET 0 at 2031-04-02 09:00 UTC");
    const log = scratch.write(
      "walk.jsonl",
      (await tetherline("rehearse", file, "--start", "2031-04-02T09:00:00Z")).out,
    );
    expect((await tetherline("brief", log, "--html", page)).status).toBe(0);
    expect(readFileSync(page, "utf8")).toContain("A rehearsal, as it was played");
  });

  it("[BRF4] refuses what it cannot use in one sentence, and writes nothing where there is no plan", async () => {
    const page = out("none.html");
    const log = scratch.write(
      "log.jsonl",
      (await tetherline("rehearse", file, "--start", "2031-04-02T09:00:00Z")).out,
    );
    const refused = await tetherline("brief", log, "--html", page, "--start", "2031-04-02T09:00:00Z");
    expect(refused).toMatchObject({
      status: 2,
      err: "A log has its own start and light: --start and --orbit are for a procedure.\n",
    });
    expect((await tetherline("brief", file)).status).toBe(2);
    expect((await tetherline("brief", file, "--html", "/no/such/folder/x.html")).status).toBe(2);
    const ring = fileWith([step("a", "ev1", 1, { after: ["b"] }), step("b", "ev2", 1, { after: ["a"] })]);
    const stuck = await tetherline("brief", scratch.write("ring.json", JSON.stringify(ring)), "--html", page);
    expect(stuck.status).toBe(1);
    expect(stuck.err).toContain("nothing was written");
    expect(readFileSync(page, "utf8")).toBe("");
  });
});
