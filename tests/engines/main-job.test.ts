import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { ORBIT_WALK } from "../browser/orbit-walk.ts";
import { type StartedHub, startHubProcess } from "../browser/started-hub.ts";
import { engines } from "./engines.ts";
import { DONE, isMarked, markDone, SHORT_TRIAL } from "./short-trial.ts";
import { Tablet } from "./tablet.ts";

const MINUTES = 60_000;
let hub: StartedHub;

beforeAll(async () => {
  hub = await startHubProcess(4700, "--name", "Test hub");
}, MINUTES);

afterAll(() => hub?.stop());

describe.each(engines)("$name", (engine) => {
  const title = (what: string) => (engine.missing === null ? what : `${what} (skipped: ${engine.missing})`);
  let tablet: Tablet;

  beforeAll(async () => {
    if (engine.missing === null) tablet = await Tablet.open(engine);
  }, MINUTES);

  afterAll(() => tablet?.close());

  describe.skipIf(engine.missing !== null)(title("has the main job done"), () => {
    it("opens, and keeps itself for the time without a network", { timeout: 3 * MINUTES }, async () => {
      await tablet.goto(hub.address);
      await tablet.sees("h1", "Tetherline");
      await tablet.run("navigator.serviceWorker.ready.then(() => true)");
      await tablet.picture("shelf");
    });

    it("says that a value is out of its limits", { timeout: 3 * MINUTES }, async () => {
      await tablet.choose(SHORT_TRIAL);
      await tablet.tap({ role: "button", name: "Follow Short trial" });
      await tablet.tap({ role: "button", name: "Start the clock" });
      await tablet.write({ role: "textbox", name: /Suit pressure/ }, "27.5\n");
      await tablet.sees('[data-row="ev1-check"]', "outside the limits");
      await markDone(tablet, "ev1-check");
      await isMarked(tablet, "ev1-check");
      await tablet.sees('[data-row="ev1-check"]', "Suit pressure is outside its limits");
      await tablet.picture("value");
    });

    it("follows twenty steps, takes one back, and comes back without the hub", {
      timeout: 6 * MINUTES,
    }, async () => {
      await tablet.goto(hub.address);
      await tablet.tap({ role: "button", name: `Follow ${ORBIT_WALK}` });
      await tablet.tap({ role: "button", name: "Start the clock" });
      for (let count = 1; count <= 20; count += 1) {
        await tablet.tapFirst(".done-button:not([aria-disabled])");
        await tablet.counts(`li${DONE}`, count);
      }
      await tablet.tap({ role: "button", name: "Undo" });
      await tablet.counts(`li${DONE}`, 19);
      await tablet.picture("follow");
      await hub.kill();
      await tablet.reload();
      await tablet.counts(`li${DONE}`, 19);
      await tablet.picture("offline");
      await hub.start();
    });

    it("closes the walk and shows its review", { timeout: 3 * MINUTES }, async () => {
      await tablet.tap({ role: "button", name: "More" });
      await tablet.tap({ role: "button", name: "Close walk", within: "[role=dialog]" });
      await tablet.tap({ role: "radio", name: /^terminated/i });
      await tablet.write({ role: "textbox", name: "Reason" }, "Enough for today");
      await tablet.tap({ role: "button", name: "Close the walk: terminated" });
      await tablet.sees("h1", ORBIT_WALK);
      await tablet.sees("main, ion-content", "Enough for today");
      expect(await tablet.run<string>("location.pathname")).toMatch(/^\/review\//);
      await tablet.picture("review");
    });

    it("plays a briefing", { timeout: 3 * MINUTES }, async () => {
      await tablet.goto(`${hub.address}/plan/example-osier-ranging-head`);
      await tablet.tap({ role: "button", name: "Briefing" });
      await tablet.sees(".brief-caption", "Switch both suits to battery power");
      await tablet.counts(".layer-people", 1);
      await tablet.tap({ role: "button", name: "Play" });
      await tablet.tap({ role: "button", name: "Pause" });
      expect(await tablet.run("document.querySelector('.brief-clock').textContent")).not.toBe("0:00:00");
      await tablet.picture("briefing");
    });

    it("lays the procedure out for paper", { timeout: 3 * MINUTES }, async () => {
      await tablet.goto(`${hub.address}/print/example-osier-ranging-head`);
      await tablet.sees(".print-do", "Switch both suits to battery power");
      await tablet.picture("print");
    });

    const printing = engine.prints ? "prints it" : "prints it (skipped: its driver knows no printing)";
    it.skipIf(!engine.prints)(printing, { timeout: 3 * MINUTES }, async () => {
      const paper = await tablet.paper();
      expect(paper.subarray(0, 5).toString("latin1")).toBe("%PDF-");
    });
  });
});
