import { fireEvent, render, renderHook, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { useState } from "react";
import { beforeEach, describe, expect, it } from "vitest";
import { LightAndStart, useProcedureLight } from "../../../src/app/light/index.ts";
import {
  chooseLight,
  chooseSites,
  contactSites,
  lightChoice,
  setLightOff,
} from "../../../src/app/session/index.ts";
import { bundledLight } from "../../../src/app/shelf/index.ts";
import { lightFrom, planOf } from "../../../src/core/plan/index.ts";
import type { Outline } from "../../../src/core/procedure/index.ts";
import type { Instant } from "../../../src/core/units/index.ts";
import { formatInstant, hourMinuteText } from "../../../src/core/units/index.ts";
import { outlineFrom, step } from "../../core/procedure-builder.ts";

const ORBIT =
  "1 25544U 98067A   24127.82853009  .00015698  00000+0  27310-3 0  9995\n" +
  "2 25544  51.6393 160.4574 0003580 140.6673 205.7250 15.50957674452123";
const START = Date.UTC(2024, 4, 8, 6) as Instant;
const outline = outlineFrom([step("leave", "ev1", 10), step("weld", "ev1", 20, { within: ["day"] })], {
  windows: [{ id: "day", kind: "daylight" }],
  limits: { elapsed: "PT1H" },
});

function Page({ procedure = "mine", of = outline }: { readonly procedure?: string; readonly of?: Outline }) {
  const [start, setStart] = useState(START);
  const source = useProcedureLight(procedure);
  return (
    <>
      <LightAndStart outline={of} source={source} start={start} onStart={setStart} />
      <output>{formatInstant(start)}</output>
    </>
  );
}

const shown = () => screen.getAllByRole("status").find((one) => one.tagName === "OUTPUT");
const slider = () => screen.getByRole("slider", { name: "Start, minute by minute" });
const finishAt = (start: Instant) => {
  const { timeline } = planOf(outline, { start, light: lightFrom({ orbit: ORBIT }, start) });
  return hourMinuteText(timeline?.course.finish ?? (0 as never), "up");
};

beforeEach(() => {
  localStorage.clear();
  chooseLight(null);
  chooseSites([]);
  setLightOff(BUNDLED, false);
});

const BUNDLED = "osier-ranging-head";

describe("the orbit that comes with a procedure", () => {
  it("[LGT2] is there at once, says where it comes from, and can be taken off and taken again", async () => {
    const { result, rerender } = renderHook(({ key }) => useProcedureLight(key), {
      initialProps: { key: BUNDLED },
    });
    await waitFor(() => expect(result.current.isBundled).toBe(true));
    expect(result.current.start).toBe(Date.UTC(2031, 3, 2, 9));
    const light =
      result.current.choice && lightFrom(result.current.choice, Date.UTC(2031, 3, 2, 9) as Instant);
    expect(light?.spans?.darkness.length).toBeGreaterThan(10);
    render(<Page procedure={BUNDLED} />);
    expect(await screen.findByText(/This orbit comes with the procedure/)).toBeVisible();
    expect(screen.getByText(/OSIER PLATFORM/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Take it off" }));
    expect(screen.getByText(/Day and night are not known/)).toBeVisible();
    // It stays off when the page is opened anew.
    rerender({ key: "mine" });
    rerender({ key: BUNDLED });
    await waitFor(() => expect(result.current.takeBundled).not.toBeNull());
    expect(result.current).toMatchObject({ choice: null, start: null, takeOff: null });
    await userEvent.click(
      screen.getByRole("button", { name: "Use the orbit that comes with the procedure" }),
    );
    expect(screen.getByText(/OSIER PLATFORM/)).toBeVisible();
  });

  it("[LGT2] comes after what the reader chose, and other procedures have none", async () => {
    chooseLight({ orbit: ORBIT });
    render(<Page procedure={BUNDLED} />);
    expect(await screen.findByRole("button", { name: /^Use the orbit that comes/ })).toBeVisible();
    expect(screen.getByText(/TLE of object 25544/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Forget it" }));
    expect(screen.getByText(/OSIER PLATFORM/)).toBeVisible();
    await expect(bundledLight("osier-pool-rehearsal")).resolves.toBeNull();
  });
});

describe("light and start", () => {
  it("[LGT2] says that day and night are not known until something is chosen", () => {
    render(<Page />);
    expect(screen.getByText(/Day and night are not known/)).toBeVisible();
    expect(screen.queryByRole("heading", { name: "When to go out" })).toBeNull();
    expect(screen.queryByRole("button", { name: "Forget it" })).toBeNull();
  });

  it("[LGT1] [LGT4] says what the light rests on, and how old it is", () => {
    chooseLight({ orbit: ORBIT });
    render(<Page />);
    expect(
      screen.getByText(
        /TLE of object 25544, .*1\.4 days before the start; SGP4, conical shadow of a sphere of 6378\.137 km/,
      ),
    ).toBeVisible();
  });

  it("[LGT2] every start of the day has the finish of its plan, told in words", () => {
    chooseLight({ orbit: ORBIT });
    render(<Page />);
    expect(slider()).toHaveAttribute("max", "1439");
    expect(slider()).toHaveValue(String(6 * 60));
    expect(slider()).toHaveAttribute(
      "aria-valuetext",
      expect.stringContaining(`finish at PET ${finishAt(START)}`),
    );
    expect(screen.getByText(/Every step fits its windows in > 99 % of samples/)).toBeVisible();
    expect(screen.getByText(/^day: \d+ (min|s) margin, at step 1\.2$/)).toBeVisible();
    fireEvent.change(slider(), { target: { value: "400" } });
    const moved = (START + 40 * 60_000) as Instant;
    expect(shown()).toHaveTextContent(formatInstant(moved));
    expect(slider()).toHaveAttribute(
      "aria-valuetext",
      expect.stringContaining(`finish at PET ${finishAt(moved)}`),
    );
  });

  it("[LGT2] the best start of the day is offered and can be taken", async () => {
    chooseLight({ orbit: ORBIT });
    render(<Page />);
    const best = screen.getByText(/^The shortest walk of this day/);
    expect(best).toHaveTextContent("finish at PET 0:30, no waiting for windows, 30 min margin");
    await userEvent.click(screen.getByRole("button", { name: "Take it" }));
    const taken = shown()?.textContent ?? "";
    expect(best).toHaveTextContent(taken.slice(0, 16).replace("T", " "));
    expect(finishAt(Date.parse(taken) as Instant)).toBe("0:30");
  });

  it("[PLN5] [LGT2] draws the chance by start beside the finish, and says what it is", async () => {
    chooseLight({ orbit: ORBIT });
    const { container } = render(<Page />);
    const path = () => container.querySelector(".start-scan-chance")?.getAttribute("d") ?? "";
    await waitFor(() => expect(path()).toMatch(/^M/));
    // One for every quarter of an hour of the day.
    expect(path().split("L")).toHaveLength(96);
    expect(
      screen.getByText(/dotted line is the chance .* within the limit, by 200 samples for every 15 minutes/),
    ).toBeVisible();
  }, 30_000);

  it("[LGT2] compares starts without an orbit where windows are given as instants, and leads to their day", async () => {
    const passes = outlineFrom([step("call", "ev1", 5, { within: ["pass"] })], {
      windows: [
        {
          id: "pass",
          label: "Pass",
          kind: "listed",
          spans: [{ from: "2024-05-11T10:00:00Z", to: "2024-05-11T10:20:00Z" }],
        },
      ],
    });
    render(<Page of={passes} />);
    expect(screen.getByText("With no start of this day does every step fit its windows.")).toBeVisible();
    expect(screen.getByText(/Pass first opens on 2024-05-11 10:00 UTC/)).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Go to that day" }));
    expect(slider()).toHaveAttribute("aria-valuetext", expect.stringContaining("finish at PET 0:05"));
    expect(screen.queryByText(/With no start of this day/)).toBeNull();
    expect(screen.getByText(/chance that every step fits its windows, by/)).toBeVisible();
  });

  it("[LGT2] says when comparing starts makes no sense", () => {
    const { rerender } = render(<Page of={outlineFrom([step("a", "ev1", 5)])} />);
    expect(screen.getByText(/the plan is the same whenever the walk begins/)).toBeVisible();
    rerender(<Page />);
    expect(screen.getByText(/Steps lie in day and night, which are not known/)).toBeVisible();
    chooseLight({ orbit: ORBIT });
    const ring = outlineFrom([step("a", "ev1", 1, { after: ["b"], within: ["day"] }), step("b", "ev1", 1)], {
      windows: [{ id: "day", kind: "daylight" }],
    });
    rerender(<Page of={ring} />);
    expect(screen.getByText(/cannot be planned as it stands, so starts cannot be compared/)).toBeVisible();
  });

  it("[LGT2] a start may be typed, in UTC; what is no instant is left out", () => {
    render(<Page />);
    const field = screen.getByLabelText("Start (PET 0), UTC");
    expect(field).toHaveValue("2024-05-08T06:00");
    fireEvent.change(field, { target: { value: "2024-05-09T07:30" } });
    expect(shown()).toHaveTextContent("2024-05-09T07:30:00.000Z");
    fireEvent.change(field, { target: { value: "" } });
    expect(shown()).toHaveTextContent("2024-05-09T07:30:00.000Z");
  });

  it("[LGT2] a site on the surface is kept on the device, and forgotten when asked", async () => {
    render(<Page />);
    const use = () => screen.getByRole("button", { name: "Use sunrise and sunset here", hidden: true });
    expect(use()).toBeDisabled();
    fireEvent.change(screen.getByLabelText("Latitude, ° north"), { target: { value: "95" } });
    fireEvent.change(screen.getByLabelText("Longitude, ° east"), { target: { value: "8.5" } });
    expect(use()).toBeDisabled();
    fireEvent.change(screen.getByLabelText("Latitude, ° north"), { target: { value: "47.4" } });
    fireEvent.click(use());
    expect(screen.getByText(/^Sunrise and sunset of the site at 47\.4°, 8\.5°/)).toBeVisible();
    expect(lightChoice.current()).toEqual({ site: { latitude: 47.4, longitude: 8.5, height: 0 } });
    expect(localStorage.getItem("tetherline.light")).toContain("47.4");
    expect(screen.getByRole("heading", { name: "When to go out" })).toBeVisible();
    await userEvent.click(screen.getByRole("button", { name: "Forget it" }));
    expect(screen.getByText(/Day and night are not known/)).toBeVisible();
    expect(localStorage.getItem("tetherline.light")).toBeNull();
  });

  it("[LGT3] ground sites for contact are kept with their mask, said, and taken off", async () => {
    chooseLight({ orbit: ORBIT });
    const calls = outlineFrom([step("call", "ev1", 5, { within: ["contact"] })], {
      windows: [{ id: "contact", label: "Contact", kind: "listed", spans: [{ from: "PT0M", to: "PT9M" }] }],
    });
    render(<Page of={calls} />);
    const fields = within(screen.getByText("Ground sites for contact").closest("details") as HTMLElement);
    const add = () => fields.getByRole("button", { name: "Add the site", hidden: true });
    fireEvent.change(fields.getByLabelText("Latitude, ° north"), { target: { value: "48.1" } });
    expect(add()).toBeDisabled();
    fireEvent.change(fields.getByLabelText("Longitude, ° east"), { target: { value: "11.6" } });
    fireEvent.click(add());
    expect(
      screen.getByText(/^Contact: the passes over 48\.1°, 11\.6°, 0 m, above a mask of 5°/),
    ).toBeVisible();
    expect(contactSites.current()).toEqual([{ latitude: 48.1, longitude: 11.6, height: 0, mask: 5 }]);
    fireEvent.click(fields.getByRole("button", { name: "Take this site off", hidden: true }));
    expect(screen.queryByText(/^Contact: the passes over/)).toBeNull();
    expect(localStorage.getItem("tetherline.sites")).toBeNull();
  });

  it("[LGT1] a kept orbit that is refused gives no light, and nothing breaks", () => {
    chooseLight({ orbit: "spoiled" });
    render(<Page />);
    expect(screen.getByText(/Day and night are not known/)).toBeVisible();
    expect(screen.queryByRole("heading", { name: "When to go out" })).toBeNull();
  });
});
