import { expect, it } from "vitest";
import { tetherline } from "./run-tetherline.ts";

const PLAN = ["plan", "procedures/practice.procedure.json", "--start", "2028-02-29T09:00:00Z"];

it("[WRD6] instants have their date where --utc is missing, and the day of the year where it asks for that", async () => {
  expect((await tetherline(...PLAN)).out).toContain("PET 0 at 2028-02-29 09:00:00 UTC");
  expect((await tetherline(...PLAN, "--utc", "day")).out).toContain("PET 0 at 2028-060 09:00:00 UTC");
  expect((await tetherline("--utc=day", ...PLAN)).out).toContain("PET 0 at 2028-060 09:00:00 UTC");
  expect((await tetherline(...PLAN)).out).toContain("PET 0 at 2028-02-29 09:00:00 UTC");
});

it("[WRD6] documents for machines keep their instants", async () => {
  for (const form of ["--json", "--csv"]) {
    const plain = (await tetherline(...PLAN, form)).out;
    expect(plain).toContain("2028-02-29T09:0");
    expect((await tetherline(...PLAN, form, "--utc", "day")).out).toBe(plain);
  }
});

it("[WRD6] a style that there is not is refused, with those that there are", async () => {
  expect(await tetherline(...PLAN, "--utc", "sidereal")).toMatchObject({
    status: 2,
    err: expect.stringContaining("plain and day"),
  });
  expect((await tetherline(...PLAN, "--utc")).status).toBe(2);
});
