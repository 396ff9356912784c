import fc from "fast-check";
import { Link } from "../../../../src/core/link/index.ts";
import type { Draft, Role } from "../../../../src/core/log/index.ts";
import { keyOf, mergeEntries, writeLines } from "../../../../src/core/log/index.ts";
import type { Instant, StepId } from "../../../../src/core/units/index.ts";
import { foldLog, stateDocument } from "../../../../src/core/walk/index.ts";
import { inWords } from "../../../../src/words/index.ts";
import { fileWith, step } from "../../../core/procedure-builder.ts";
import { SETTINGS, SmallDevice, WALK } from "./small-device.ts";
import { SmallHub } from "./small-hub.ts";
import { VirtualTime } from "./virtual-time.ts";
import type { WireState } from "./wire.ts";
import { GOOD, Wire } from "./wire.ts";

const START = Date.UTC(2031, 3, 2, 9) as Instant;
const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

const FILE = fileWith([
  step("a1", "ev1", 5, { records: [{ id: "turns", min: 6, max: 7 }] }),
  step("a2", "ev2", 3),
  step("both", ["ev1", "ev2"], 2),
]);

type Tap = "done" | "skipped" | "reopened" | "record" | "note" | "hold" | "strike";

type Happening =
  | { readonly kind: "tap"; readonly device: number; readonly tap: Tap; readonly step: number }
  | { readonly kind: "wire"; readonly device: number; readonly state: WireState }
  /** The connection between the hubs. */
  | { readonly kind: "gap"; readonly state: WireState }
  | { readonly kind: "restart"; readonly device: number; readonly off: number }
  | { readonly kind: "hub"; readonly hub: number; readonly off: number }
  /** The hub loses its store. */
  | { readonly kind: "loss"; readonly hub: number }
  | { readonly kind: "clock"; readonly device: number; readonly skew: number }
  | { readonly kind: "wake"; readonly device: number };

/** Devices and hubs, and what happens to them after one another. */
export interface Schedule {
  readonly seed: number;
  /** How far each hub's clock is off; one or two of them. */
  readonly hubs: readonly number[];
  readonly devices: readonly { readonly hub: number; readonly role: Role; readonly skew: number }[];
  readonly events: readonly { readonly after: number; readonly happening: Happening }[];
}

const skew = fc.oneof(
  { weight: 3, arbitrary: fc.integer({ min: -400, max: 400 }) },
  { weight: 2, arbitrary: fc.integer({ min: -5 * MINUTE, max: 5 * MINUTE }) },
  { weight: 1, arbitrary: fc.integer({ min: -3 * DAY, max: 3 * DAY }) },
);

const state: fc.Arbitrary<WireState> = fc.record({
  kind: fc.constantFrom("up", "up", "up", "down", "silent"),
  delay: fc.constantFrom(50, 1000, 20 * SECOND, 3 * MINUTE),
  oneIn: fc.constantFrom(0, 0, 10, 3),
});

const device = fc.nat(4);
const off = fc.integer({ min: 0, max: 5 * MINUTE });
const happening: fc.Arbitrary<Happening> = fc.oneof(
  {
    weight: 14,
    arbitrary: fc.record({
      kind: fc.constant("tap" as const),
      device,
      tap: fc.constantFrom<Tap>(
        "done",
        "done",
        "done",
        "skipped",
        "reopened",
        "record",
        "note",
        "hold",
        "strike",
      ),
      step: fc.nat(2),
    }),
  },
  { weight: 5, arbitrary: fc.record({ kind: fc.constant("wire" as const), device, state }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("gap" as const), state }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant("restart" as const), device, off }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("hub" as const), hub: fc.nat(1), off }) },
  { weight: 1, arbitrary: fc.record({ kind: fc.constant("clock" as const), device, skew }) },
  { weight: 3, arbitrary: fc.record({ kind: fc.constant("wake" as const), device }) },
);

/** Without `loses`, what hubs have confirmed they keep. */
export const schedules = (loses: boolean): fc.Arbitrary<Schedule> =>
  fc.record({
    seed: fc.integer({ min: 1, max: 2 ** 31 - 1 }),
    hubs: fc.array(fc.integer({ min: -20 * SECOND, max: 20 * SECOND }), { minLength: 1, maxLength: 2 }),
    devices: fc.array(
      fc.record({
        hub: fc.nat(1),
        role: fc.constantFrom<Role>("marker", "marker", "lead", "watcher"),
        skew,
      }),
      { minLength: 2, maxLength: 5 },
    ),
    events: fc.array(
      fc.record({
        after: fc.oneof(fc.integer({ min: 0, max: 3 * SECOND }), fc.integer({ min: 0, max: 5 * MINUTE })),
        happening: loses
          ? fc.oneof(
              { weight: 20, arbitrary: happening },
              { weight: 1, arbitrary: fc.record({ kind: fc.constant("loss" as const), hub: fc.nat(1) }) },
            )
          : happening,
      }),
      { minLength: 4, maxLength: 24 },
    ),
  });

/** What everybody ended with. */
export interface Ending {
  /** False when they did not come to an end in time. */
  readonly isSettled: boolean;
  readonly time: number;
  /** Per device: the entries in their order, as JSON Lines. */
  readonly logs: readonly string[];
  /** Per device: the state document of the screen that was open all along. */
  readonly screens: readonly string[];
  /** The state document of a hub's log folded in one go. */
  readonly state: string;
  /** Per hub: the entries in their order, as JSON Lines. */
  readonly hubs: readonly string[];
  /** How often each tap is in the log, by its mark. */
  readonly taps: ReadonlyMap<string, number>;
  readonly conflictsBetweenHubs: number;
  readonly aside: number;
}

/** Plays a schedule, then has all connections good and everything running until nothing is left to be sent or read. */
export async function played(schedule: Schedule): Promise<Ending> {
  const time = new VirtualTime(START, chance(schedule.seed));
  const hubs = schedule.hubs.map((skewed, index) => new SmallHub(`hub-${index}`, time, skewed));
  const hubOf = (index: number) => hubs[index % hubs.length] as SmallHub;
  const devices = schedule.devices.map(({ hub, role, skew: skewed }, index) => {
    const wire = new Wire(hubOf(hub), time);
    const own = index === 0 ? "lead" : role;
    return new SmallDevice(`/devices/d${index}`, own, { skew: skewed, wire, time });
  });
  const deviceOf = (index: number) => devices[index % devices.length] as SmallDevice;
  const roleOf = (index: number) => {
    const at = index % devices.length;
    return at === 0 ? "lead" : (schedule.devices[at]?.role ?? "watcher");
  };
  const gap = hubs[1] && hubs[0] ? new Gap(hubs[1], hubs[0], time) : null;
  const made: string[] = [];
  const tapped = async (at: SmallDevice, draft: Omit<Draft, "at" | "actor">) => {
    const actor = `tap-${made.length}`;
    made.push(actor);
    await at.enter({ ...draft, at: at.now, actor } as Draft);
  };

  // The first opens the walk while it is alone.
  const first = deviceOf(0);
  await tapped(first, { name: "walk.opened", data: { procedure: FILE, mode: "live" } });
  await tapped(first, { name: "clock.started", data: {} });
  for (const one of devices) await one.join(one.wire.hub.name);
  gap?.start();

  for (const { after, happening: event } of schedule.events) {
    if (after > 0) await time.pass(after);
    switch (event.kind) {
      case "tap": {
        const at = deviceOf(event.device);
        if (roleOf(event.device) === "watcher") break;
        const draft = await draftOf(event.tap, event.step, at);
        if (draft) await tapped(at, draft);
        break;
      }
      case "wire":
        deviceOf(event.device).wire.set(event.state);
        break;
      case "gap":
        gap?.wire.set(event.state);
        break;
      case "restart": {
        const at = deviceOf(event.device);
        at.stop();
        time.after(event.off, () => at.start());
        break;
      }
      case "hub": {
        const at = hubOf(event.hub);
        at.stop();
        if (at === hubs[1]) gap?.stop();
        time.after(event.off, () => {
          at.start();
          if (at === hubs[1]) gap?.start();
        });
        break;
      }
      case "loss": {
        const at = hubOf(event.hub);
        if (at === hubs[1]) gap?.stop();
        at.loseAll();
        if (at === hubs[1]) gap?.start();
        break;
      }
      case "clock":
        deviceOf(event.device).skew = event.skew;
        break;
      case "wake":
        deviceOf(event.device).wake();
    }
    // A screen looks now and then, so that it also meets editions on the way.
    await deviceOf(event.kind === "tap" ? event.step : 0).look();
  }

  // A closed walk is not forecast, which takes longer than all the rest; some are left open.
  if (schedule.seed % 8 > 0) await tapped(first, { name: "walk.closed", data: { end: "complete" } });
  for (const one of devices) one.wire.set(GOOD);
  gap?.wire.set(GOOD);
  await time.pass(6 * MINUTE);
  let isSettled = false;
  for (let round = 0; round < 120 && !isSettled; round += 1) {
    await time.pass(30 * SECOND);
    isSettled = await isQuiet(devices, hubs, gap);
  }

  const logs: string[] = [];
  const screens: string[] = [];
  let aside = 0;
  const end = (START + DAY) as Instant;
  for (const one of devices) {
    const { entries } = await one.store.read(WALK, 0);
    logs.push(writeLines(mergeEntries(entries).ordered));
    screens.push(JSON.stringify(stateDocument(await one.look(), end, inWords)));
    aside += (await one.store.links.aside(WALK)).length;
  }
  const taps = new Map(made.map((mark) => [mark, 0]));
  for (const { entry } of hubs[0]?.log ?? []) {
    const mark = entry.wire.actor ?? "";
    taps.set(mark, (taps.get(mark) ?? 0) + 1);
  }
  for (const one of devices) one.stop();
  gap?.stop();
  await time.pass(MINUTE);
  return {
    isSettled,
    time: time.now,
    logs,
    screens,
    state: JSON.stringify(stateDocument(foldLog(hubs[0]?.log.map(({ entry }) => entry) ?? []), end, inWords)),
    hubs: hubs.map(({ log }) => writeLines(mergeEntries(log.map(({ entry }) => entry)).ordered)),
    taps,
    conflictsBetweenHubs: hubs.reduce((sum, hub) => sum + hub.conflictsBetweenHubs, 0),
    aside,
  };
}

/** The link between two hubs: the lower one is the one that calls. */
class Gap {
  readonly wire: Wire;
  readonly lower: SmallHub;
  readonly upper: SmallHub;
  readonly #time: VirtualTime;
  #link: Link | null = null;

  constructor(lower: SmallHub, upper: SmallHub, time: VirtualTime) {
    this.lower = lower;
    this.upper = upper;
    this.#time = time;
    this.wire = new Wire(upper, time);
  }

  start(): void {
    this.#link ??= new Link({
      near: this.lower.nearSide(this.upper.name),
      far: this.wire.farSide(this.lower.name, "relay"),
      time: this.#time.of(() => 0),
      settings: SETTINGS,
    });
    this.#link.start();
  }

  stop(): void {
    void this.#link?.stop();
    this.#link = null;
  }

  unsent(): Promise<number> {
    return this.lower.nearSide(this.upper.name).unsent();
  }
}

async function isQuiet(
  devices: readonly SmallDevice[],
  hubs: readonly SmallHub[],
  gap: Gap | null,
): Promise<boolean> {
  if (gap && (await gap.unsent()) > 0) return false;
  const counts = new Set(hubs.map(({ log }) => log.length));
  for (const { store, wire } of devices) {
    if ((await store.links.unsent(WALK)) > 0) return false;
    if ((await store.links.get(WALK))?.cursor?.offset !== wire.hub.head) return false;
    counts.add((await store.read(WALK, 0)).entries.length);
  }
  return counts.size === 1;
}

async function draftOf(
  tap: Tap,
  index: number,
  at: SmallDevice,
): Promise<Omit<Draft, "at" | "actor"> | null> {
  const id = ["a1", "a2", "both"][index] as StepId;
  switch (tap) {
    case "done":
      return { name: "step.done", data: { step: id, outOfOrder: true } };
    case "skipped":
    case "reopened":
      return { name: `step.${tap}`, data: { step: id, reason: "" } };
    case "record":
      return { name: "record.taken", data: { step: id, record: "turns" as never, value: 7 } };
    case "note":
      return { name: "note.made", data: { text: "Seen." } };
    case "hold":
      return { name: "hold.called", data: {} };
    case "strike": {
      const own = (await at.store.read(WALK, 0)).entries.filter(({ wire }) => wire.source === at.source);
      const target = own.find((entry) => keyOf(entry) !== "" && entry.wire.type !== "tetherline.walk.opened");
      return target ? { name: "entry.struck", data: { source: at.source, id: target.wire.id } } : null;
    }
  }
}

/** Repeatable chance (mulberry32). */
function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
