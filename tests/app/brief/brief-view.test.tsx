import { act, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { AudienceView, BriefView, Storyboard } from "../../../src/app/brief/index.ts";
import { briefingOfFile, LAMP_FILE } from "../../core/briefing/brief-course.ts";

const briefing = briefingOfFile(LAMP_FILE);
const show = (name: string) =>
  render(<BriefView briefing={briefing} kind="plan" name={name} audience="/audience/x" beside={null} />);
const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));
const slider = () => screen.getByRole("slider", { name: "Time in the walk" });

/** A local voice that keeps what it was asked to say. */
class Utterance {
  voice: unknown = null;
  lang = "";
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

describe("the screen of a briefing", () => {
  afterEach(() => vi.unstubAllGlobals());

  it("[BRF1] plays another one beside it by the same clock, to the end of the longer one", async () => {
    const longer = briefingOfFile({
      ...LAMP_FILE,
      revision: "B",
      tasks: LAMP_FILE.tasks.map((task) => ({
        ...task,
        steps: task.steps.map((step) => (step.id === "look" ? { ...step, time: "PT30M" } : step)),
      })),
    });
    const beside = { briefing: longer, kind: "plan" } as const;
    render(<BriefView briefing={briefing} kind="plan" name="two" audience="/audience/x" beside={beside} />);
    expect(screen.getAllByRole("img", { name: /^Map of the worksite/ })).toHaveLength(2);
    expect(screen.getByRole("heading", { name: "As planned, revision B" })).toBeVisible();
    expect(screen.getAllByText("Do take")).toHaveLength(2);
    expect(longer.finish).toBeGreaterThan(briefing.finish);
    expect(slider()).toHaveAttribute("max", String(longer.finish));
    fireEvent.change(slider(), { target: { value: String(briefing.finish + 60_000) } });
    expect(screen.getAllByText("The end.")).toHaveLength(1);
    expect(screen.getByText("Do look")).toBeVisible();
  });

  it("[BRF1] goes by step, by task, by chapter and to any moment, and says its time and its caption", async () => {
    show("one");
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:00:00");
    expect(screen.getByText("Do take")).toBeVisible();
    await press("Next step");
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:01:00");
    await press("Next task");
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:10:00");
    expect(screen.getByRole("button", { name: "2 Fit the lamp" })).toHaveAttribute("aria-current");
    await press("Step before");
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:02:00");
    await press("1 Fetch the lamp");
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:00:00");
    fireEvent.change(slider(), { target: { value: String(9.5 * 60_000) } });
    expect(screen.getByText(/waits for EV1 at 1\.4/)).toBeVisible();
  });

  it("[BRF1] goes by keys, except in a field that has keys of its own, and comes to an end", () => {
    show("two");
    fireEvent.keyDown(document.body, { key: "PageDown" });
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:10:00");
    fireEvent.keyDown(screen.getByLabelText("Speed"), { key: "PageDown" });
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:10:00");
    fireEvent.keyDown(document.body, { key: "PageDown" });
    expect(screen.getByText("The end.")).toBeVisible();
    fireEvent.keyDown(document.body, { key: "ArrowLeft" });
    expect(slider()).toHaveAttribute("aria-valuetext", "PET 0:22:00");
  });

  it("[BRF1] shows while it is played what it shows of the same moment when it stands there", async () => {
    vi.useFakeTimers({ toFake: ["requestAnimationFrame", "cancelAnimationFrame", "performance"] });
    try {
      const { container: played } = show("eight");
      fireEvent.click(screen.getByRole("button", { name: "Play" }));
      // At ten times the time, half a minute of pictures: five minutes of the walk, in which both are under way.
      act(() => vi.advanceTimersByTime(30_000));
      expect(screen.getByRole("button", { name: "Pause" })).toBeVisible();
      const parts = [".brief-map", ".brief-caption", ".brief-clock", ".brief-bars", ".brief-chapters"];
      const shown = () => parts.map((part) => played.querySelector(part)?.innerHTML);
      const text = () =>
        [...played.querySelectorAll(".brief-map text")].map((node) => node.textContent).join();
      expect(text()).toMatch(/\d m of line left/);
      expect(text()).not.toMatch(/\d\.\d m of line left/);
      fireEvent.keyDown(document.body, { key: "k" });
      const at = Number((slider() as HTMLInputElement).value);
      expect(at).toBe(5 * 60_000);
      const seen = shown();
      const told = slider().getAttribute("aria-valuetext");
      fireEvent.change(slider(), { target: { value: String(at + 1000) } });
      act(() => vi.advanceTimersByTime(50));
      expect(played.querySelector(".brief-map")?.innerHTML).not.toBe(seen[0]);
      fireEvent.change(slider(), { target: { value: String(at) } });
      act(() => vi.advanceTimersByTime(50));
      expect(slider()).toHaveAttribute("aria-valuetext", told);
      expect(shown()).toEqual(seen);
    } finally {
      vi.useRealTimers();
    }
  });

  it("[BRF2] has notes, what comes next, the time left and the alerts ahead beside a window for the audience", async () => {
    const open = vi.fn();
    vi.stubGlobal("open", open);
    show("three");
    expect(screen.queryByRole("complementary", { name: "For the presenter" })).toBeNull();
    await press("Window for the audience");
    expect(open.mock.calls[0]?.[0]).toBe("/audience/x");
    const panel = within(screen.getByRole("complementary", { name: "For the presenter" }));
    expect(panel.getByText("One carries, one waits.")).toBeVisible();
    expect(panel.getByText("Next, at PET 0:01:00")).toBeVisible();
    expect(panel.getByText(/^25 min of the walk, .+ of the briefing at 10×\.$/)).toBeVisible();
    expect(panel.getByText(/Keep clear/)).toBeVisible();
  });

  it("[BRF7] asks before a joint step, hides the answer on the map, and shows it when asked", async () => {
    const { container } = show("four");
    await press("Quiz");
    await press("Next task");
    expect(screen.getByText(/Before 2\.1, Do fit-it: who of EV1 and EV2 waits where/)).toBeVisible();
    expect(container.querySelector(".layer-people")).toBeNull();
    await press("Show the answer");
    expect(container.querySelector(".layer-people")).not.toBeNull();
    expect(screen.getByText("EV1 comes last, at Boom, carrying Lamp.")).toBeVisible();
    expect(screen.getByText(/^EV2 has waited .+, at Boom, carrying nothing\.$/)).toBeVisible();
  });

  it("[BRF5] speaks with a voice of the device alone, one utterance a caption, and stops when paused", async () => {
    const said: string[] = [];
    const cancel = vi.fn();
    vi.stubGlobal("SpeechSynthesisUtterance", Utterance);
    vi.stubGlobal("speechSynthesis", {
      getVoices: () => [
        { localService: false, lang: "en-GB", name: "far" },
        { localService: true, lang: "en-GB", name: "near" },
      ],
      speak: (one: Utterance) => said.push(`${(one.voice as { name: string }).name}: ${one.text}`),
      cancel,
    });
    show("five");
    await press("Spoken captions");
    expect(said).toEqual([]);
    await press("Play");
    expect(said).toEqual(["near: EV1: Do take EV2: Do ready"]);
    expect(screen.getByText("1 Fetch the lamp:")).toBeVisible();
    await press("Pause");
    expect(cancel).toHaveBeenCalled();
  });

  it("[BRF5] offers no speech where the device has no voice of its own", () => {
    show("six");
    expect(screen.getByRole("button", { name: "No voice of its own on this device" })).toBeDisabled();
  });
});

describe("the window of the audience", () => {
  beforeEach(() => vi.useRealTimers());

  it("[BRF2] is in step with the presenter, also when it comes late, and says when that one is closed", async () => {
    const presenter = show("seven");
    await press("Next task");
    const audience = render(<AudienceView briefing={briefing} kind="plan" name="seven" />);
    const clock = audience.container.querySelector(".brief-clock");
    await waitFor(() => expect(clock).toHaveTextContent("0:10:00"));
    await userEvent.click(within(presenter.container).getByRole("button", { name: "Next step" }));
    await waitFor(() => expect(clock).toHaveTextContent("0:20:00"));
    act(() => presenter.unmount());
    await waitFor(() =>
      expect(within(audience.container).getByRole("status")).toHaveTextContent(
        "The presenter’s window was closed. This stands where it was.",
      ),
    );
  });

  it("[BRF2] says that it waits while there is no presenter", () => {
    render(<AudienceView briefing={briefing} kind="plan" name="eight" />);
    expect(screen.getByRole("status")).toHaveTextContent(
      "Waiting for the presenter’s window on this device.",
    );
  });
});

describe("the storyboard on paper", () => {
  it("[BRF3] has each frame with its caption, people, lines, items, alerts and time", () => {
    render(<Storyboard briefing={briefing} kind="plan" />);
    const [, fit] = screen.getAllByRole("article");
    const shown = within(fit as HTMLElement);
    expect(shown.getByRole("heading")).toHaveTextContent("2 Fit the lamp");
    expect(shown.getByText("PET 0:10:00")).toBeVisible();
    expect(shown.getByText("Do fit-it")).toBeVisible();
    expect(shown.getAllByText("at Boom")).toHaveLength(2);
    expect(shown.getAllByRole("cell", { name: "2 m of line left" })).toHaveLength(2);
    expect(shown.getByText("Has: Lamp")).toBeVisible();
    expect(shown.getByText("NOTE 2.1")).toBeVisible();
  });
});
