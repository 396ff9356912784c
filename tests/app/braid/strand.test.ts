import { describe, expect, it } from "vitest";
import { strandsOf } from "../../../src/app/braid/index.ts";
import type { CrewMember } from "../../../src/core/procedure/index.ts";

const crewOf = (...stations: CrewMember["station"][]) =>
  stations.map((station, index) => ({
    id: `c${index}`,
    call: `C${index}`,
    station,
  })) as unknown as CrewMember[];

const looks = (...stations: CrewMember["station"][]) =>
  strandsOf(crewOf(...stations)).map(({ colour }) => colour);

describe("the strands of a crew", () => {
  it("go with the station and the place in the list, in whatever order a file has them", () => {
    const [first, second, inside, ground] = looks("outside", "outside", "inside", "ground");
    expect(new Set([first, second, inside, ground]).size).toBe(4);
    expect(looks("ground", "inside", "outside", "outside")).toEqual([ground, inside, first, second]);
    expect(looks("inside", "outside")).toEqual([inside, first]);
  });

  it("are shared in turn by those who have no look of their own", () => {
    const [, , third, fourth, fifth] = looks("outside", "outside", "outside", "outside", "outside");
    expect(third).not.toBe(fourth);
    expect(fifth).toBe(third);
    const own = looks("outside", "outside", "inside", "ground");
    expect(own).not.toContain(third);
    expect(own).not.toContain(fourth);
  });
});
