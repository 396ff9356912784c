import { afterAll, describe, expect, it } from "vitest";
import { fileWith, step } from "../core/procedure-builder.ts";
import { Scratch, tetherline } from "./run-tetherline.ts";

const scratch = new Scratch();
afterAll(() => scratch.remove());

const orbit = scratch.write(
  "orbit.tle",
  "1 25544U 98067A   14020.93268519  .00009878  00000-0  18200-3 0  5082\n" +
    "2 25544  51.6498 109.4756 0003572  55.9686 274.8005 15.49815350868473",
);
const file = scratch.write(
  "trial.procedure.json",
  JSON.stringify(
    fileWith(
      [
        step("leave", "ev1", 5),
        step("look", "ev1", 10, { within: ["night"] }),
        step("weld", "ev2", 45, { within: ["day"] }),
      ],
      {
        windows: [
          { id: "night", kind: "darkness" },
          { id: "day", kind: "daylight" },
        ],
        limits: { elapsed: "PT3H" },
      },
    ),
  ),
);

interface PlanDocument {
  readonly start: string;
  readonly finish: number;
  readonly steps: readonly {
    readonly id: string;
    readonly start: number;
    readonly finish: number;
    readonly waits: readonly unknown[];
  }[];
}

// Dark from 0:38:09.7 to 1:13:59.1 after midnight.
const START = "2014-01-20T00:00:00Z";
const seconds = (clock: string) => (Date.parse(`2014-01-20T${clock}Z`) - Date.parse(START)) / 1000;

describe("plan with an orbit", () => {
  it("[LGT2] [PLN1] puts steps into the right light", async () => {
    const { status, out, err } = await tetherline("plan", file, "--start", START, "--orbit", orbit, "--json");
    expect([status, err]).toEqual([0, ""]);
    const { start, finish, steps } = JSON.parse(out) as PlanDocument;
    expect(start).toBe("2014-01-20T00:00:00.000Z");
    const [, look, weld] = steps;
    expect(Math.abs((look?.start ?? 0) - seconds("00:38:09.688"))).toBeLessThan(0.5);
    const [wait] = look?.waits ?? [];
    expect(wait).toEqual({
      crew: "ev1",
      seconds: expect.closeTo((look?.start ?? 0) - 300, 3) as number,
      on: { window: "night" },
    });
    // 45 min do not fit before sunset, so it waits for the sunrise.
    expect(Math.abs((weld?.start ?? 0) - seconds("01:13:59.103"))).toBeLessThan(0.5);
    expect(finish).toBe(weld?.finish);
  });

  it("[LGT2] another start is another light; the same spans as passes tells", async () => {
    const at = "2014-01-20T00:40:00Z";
    const planned = await tetherline("plan", file, "--start", at, "--orbit", orbit, "--json");
    const { steps } = JSON.parse(planned.out) as PlanDocument;
    expect(steps[1]?.start).toBe(300);
    const passes = await tetherline("passes", orbit, "--from", at, "--hours", "24", "--json");
    const { spans } = JSON.parse(passes.out) as { spans: { kind: string; start: string }[] };
    const sunrise = spans.find(({ kind }) => kind === "daylight")?.start ?? "";
    expect(steps[2]?.start).toBeCloseTo((Date.parse(sunrise) - Date.parse(at)) / 1000, 3);
  });

  it("[LGT2] without an orbit the windows are not known, which is a caution", async () => {
    const { status, out, err } = await tetherline("plan", file, "--start", START, "--json");
    expect(status).toBe(0);
    expect((JSON.parse(out) as PlanDocument).finish).toBe(45 * 60);
    expect(err).toMatch(/caution.*not known/);
  });

  it("[LGT1] --orbit without --start cannot be used, nor an orbit that is refused", async () => {
    const without = await tetherline("plan", file, "--orbit", orbit, "--json");
    expect([without.status, without.out]).toEqual([2, ""]);
    expect(without.err).toMatch(/^--orbit needs --start[^\n]+\n$/);
    const refused = await tetherline(
      "plan",
      file,
      "--start",
      START,
      "--orbit",
      scratch.write("no", "no"),
      "--json",
    );
    expect([refused.status, refused.out]).toEqual([2, ""]);
    expect(refused.err).toMatch(/^[^\n]*is refused as an orbit: [^\n]+\.\n$/);
    const missing = await tetherline("plan", file, "--start", START, "--orbit", scratch.path("none"));
    expect([missing.status, missing.out]).toEqual([2, ""]);
  });

  it("[LGT4] an old element set is told on standard error, and the plan is made", async () => {
    const { status, out, err } = await tetherline(
      "plan",
      file,
      "--start",
      "2014-03-01T00:00:00Z",
      "--orbit",
      orbit,
      "--json",
    );
    expect(status).toBe(0);
    expect(err).toMatch(/caution.*more than 14 days/);
    expect((JSON.parse(out) as PlanDocument).steps).toHaveLength(3);
  });
});

describe("check with a start and an orbit", () => {
  const long = scratch.write(
    "long.procedure.json",
    JSON.stringify(
      fileWith([step("weld", "ev2", 90, { within: ["day"] })], {
        windows: [{ id: "day", kind: "daylight" }],
      }),
    ),
  );
  const codesOf = async (...args: string[]) => {
    const { status, out } = await tetherline("check", long, "--json", ...args);
    const { files } = JSON.parse(out) as { files: { findings: { code: string }[] }[] };
    return [status, ...(files[0]?.findings.map(({ code }) => code) ?? [])];
  };

  it("[PLN4] [LGT2] finds what does not fit into the day that there is, and without them says that it is not known", async () => {
    const start = "2014-01-20T23:00:00Z";
    expect(await codesOf()).toEqual([0, "window/not-known"]);
    expect(await codesOf("--start", start)).toEqual([0, "window/not-known"]);
    expect(await codesOf("--start", start, "--orbit", orbit)).toEqual([1, "window/no-fit"]);
  });

  it("[LGT1] an orbit without a start cannot be used", async () => {
    const { status, err } = await tetherline("check", long, "--orbit", orbit);
    expect(status).toBe(2);
    expect(err).toMatch(/^[^\n]+\n$/);
  });
});

describe("contact from an orbit and a site", () => {
  const calling = scratch.write(
    "calling.procedure.json",
    JSON.stringify(
      fileWith([step("call", ["ev1", "ground"], 3, { within: ["contact"] })], {
        crew: [
          { id: "ev1", call: "EV1", station: "inside" },
          { id: "ground", call: "Ground", station: "ground" },
        ],
        windows: [{ id: "contact", label: "Contact", kind: "listed", spans: [{ from: "PT0M", to: "PT5M" }] }],
      }),
    ),
  );
  const site = ["--site", "48.1,11.6,520,5"];

  it("[LGT3] gives the windows of contact of a plan, and says which site and mask they are from", async () => {
    const given = ["--start", START, "--orbit", orbit];
    const { out, err } = await tetherline("plan", calling, ...given, ...site, "--json");
    const passes = await tetherline("passes", orbit, "--from", START, "--hours", "24", ...site, "--json");
    const { spans } = JSON.parse(passes.out) as {
      spans: { kind: string; start: string; end: string }[];
    };
    const first = spans.find(
      (one) => one.kind === "contact" && Date.parse(one.end) - Date.parse(one.start) >= 180_000,
    );
    const { steps, contact } = JSON.parse(out) as PlanDocument & { contact: string | null };
    expect(contact).toContain("the passes over 48.1°, 11.6°, 520 m, above a mask of 5°");
    expect(steps[0]?.start).toBeCloseTo((Date.parse(first?.start ?? "") - Date.parse(START)) / 1000, 3);
    expect(err).toContain("Contact: the passes over 48.1°, 11.6°, 520 m, above a mask of 5°");
    const checked = await tetherline("check", calling, ...given, ...site);
    expect(checked.err).toContain("above a mask of 5°");
    const compared = await tetherline("compare", calling, calling, ...given, ...site);
    expect(compared.err).toContain("above a mask of 5°");
  });

  it("[LGT3] is refused without an orbit, and with what is no site", async () => {
    const { status, err } = await tetherline("plan", calling, "--start", START, ...site);
    expect([status, err]).toEqual([2, expect.stringContaining("--site needs --orbit")]);
    const wrong = await tetherline("check", calling, "--orbit", orbit, "--start", START, "--site", "95,0,0");
    expect(wrong.status).toBe(2);
  });
});
