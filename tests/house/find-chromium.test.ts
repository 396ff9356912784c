import { describe, expect, it, vi } from "vitest";
import {
  installedChromium,
  type Machine,
  NoChromiumError,
  obtainChromium,
} from "../machine/find-chromium.ts";

const OWN = "/cache/playwright/chrome";
const SYSTEMS = "/usr/bin/chromium";

/** A machine with these programs on it, where nothing can be installed unless said so. */
function machine(programs: string[], more: Partial<Machine> = {}): Machine {
  return {
    named: null,
    playwrights: () => OWN,
    isExecutable: (path) => programs.includes(path),
    installPlaywrights: vi.fn(() => false),
    isRootOnDebian: () => false,
    installDebians: vi.fn(() => false),
    ...more,
  };
}

describe("the search for a Chromium", () => {
  it("takes the one named by hand before all others", () => {
    expect(installedChromium(machine(["/opt/mine", OWN, SYSTEMS], { named: "/opt/mine" }))).toBe("/opt/mine");
  });

  it("says so when the one named by hand cannot be run, instead of taking another", () => {
    expect(() => obtainChromium(machine([OWN], { named: "/opt/gone" }))).toThrow(
      /^TETHERLINE_CHROMIUM names \/opt\/gone, which is not/,
    );
  });

  it("takes Playwright's own before the system's, and the system's before installing", () => {
    expect(obtainChromium(machine([OWN, SYSTEMS]))).toBe(OWN);
    const withSystems = machine([SYSTEMS]);
    expect(obtainChromium(withSystems)).toBe(SYSTEMS);
    expect(withSystems.installPlaywrights).not.toHaveBeenCalled();
  });

  it("lets Playwright install its own when there is none", () => {
    const programs: string[] = [];
    const installPlaywrights = vi.fn(() => programs.push(OWN) > 0);
    expect(obtainChromium(machine(programs, { installPlaywrights }))).toBe(OWN);
  });

  it("asks Debian's packages only as root, after Playwright failed", () => {
    const programs: string[] = [];
    const installDebians = vi.fn(() => programs.push(SYSTEMS) > 0);
    expect(() => obtainChromium(machine(programs, { installDebians }))).toThrow(NoChromiumError);
    expect(installDebians).not.toHaveBeenCalled();
    const asRoot = machine(programs, { installDebians, isRootOnDebian: () => true });
    expect(obtainChromium(asRoot)).toBe(SYSTEMS);
    expect(asRoot.installPlaywrights).toHaveBeenCalledOnce();
  });

  it("ends in one sentence that says what to do", () => {
    expect(installedChromium(machine([]))).toBeNull();
    expect(() => obtainChromium(machine([], { isRootOnDebian: () => true }))).toThrow(
      "No Chromium was found and none could be installed: install Chromium, or set TETHERLINE_CHROMIUM to the path of one.",
    );
  });
});
