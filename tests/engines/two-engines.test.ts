import { afterAll, beforeAll, describe, it } from "vitest";
import { type StartedHub, startHubProcess } from "../browser/started-hub.ts";
import type { Engine } from "./engine.ts";
import { engines } from "./engines.ts";
import { DONE, isMarked, markDone, SHORT_TRIAL } from "./short-trial.ts";
import { Tablet } from "./tablet.ts";

const MINUTES = 60_000;

let hub: StartedHub;

beforeAll(async () => {
  hub = await startHubProcess(4740, "--name", "Test hub");
}, MINUTES);

afterAll(() => hub?.stop());

/** Each engine leads once, and each takes part once. */
const pairs = engines.map((lead, index) => [lead, engines[(index + 1) % engines.length] as Engine] as const);

describe.each(pairs)("$0.name and $1.name", (lead, other) => {
  const missing = lead.missing ?? other.missing;
  const title = "[HUB] agree on one walk of a hub";

  it.skipIf(missing !== null)(
    missing === null ? title : `${title} (skipped: ${missing})`,
    { timeout: 6 * MINUTES },
    async () => {
      const [inside, ground] = [await Tablet.open(lead), await Tablet.open(other)];
      try {
        await inside.goto(hub.address);
        await inside.choose(SHORT_TRIAL);
        await inside.tap({ role: "button", name: "Follow Short trial" });
        await openLinkPanel(inside);
        await inside.write({ role: "textbox", name: "Who uses this tablet" }, "Inside");
        await inside.write({ role: "textbox", name: "Owner’s code of the hub" }, hub.ownerCode);
        await inside.tap({ role: "button", name: "Share this walk" });
        await inside.tap({ role: "radio", name: /^Marker/ });
        await inside.tap({ role: "button", name: "Make a code" });
        await inside.counts(".invitation-code", 1);
        const code = await inside.run<string>("document.querySelector('.invitation-code').textContent");
        await inside.tap({ role: "button", name: "Back", within: "[role=dialog]" });
        await ground.goto(hub.address);
        await ground.tap({ role: "button", name: "Join a walk" });
        await ground.write({ role: "textbox", name: "Code (nine letters and digits)" }, code);
        await ground.write({ role: "textbox", name: "Who uses this tablet" }, "Ground");
        await ground.tap({ role: "button", name: "Join the walk" });
        await inside.tap({ role: "button", name: "Start the clock" });
        await markDone(ground, "ev2-check");
        await isMarked(inside, "ev2-check");
        await markDone(inside, "ev1-check");
        await isMarked(ground, "ev1-check");
        await ground.tap({ role: "button", name: "Undo" });
        for (const tablet of [inside, ground]) await tablet.counts(`[data-row="ev2-check"]${DONE}`, 0);
        await inside.picture(`lead-with-${other.name.toLowerCase()}`);
      } finally {
        await inside.close();
        await ground.close();
      }
    },
  );
});

async function openLinkPanel(tablet: Tablet): Promise<void> {
  await tablet.tap({ role: "button", name: "More" });
  await tablet.tap({ role: "button", name: "Link and followers" });
}
