import { publicKey, withCheckpoint, withNext } from "../core/seal/sealed-log.ts";
import { bundledText, procedureFile } from "./written-walk.ts";

type Wire = Record<string, unknown>;

const keyOf = (byte: number) => new Uint8Array(32).fill(byte);

const HUB = "/hubs/vehicle";
const DEVICES = [
  { source: "/devices/inside", name: "Inside tablet", role: "lead", key: keyOf(31) },
  { source: "/devices/mast", name: "Mast tablet", role: "marker", key: keyOf(32) },
  { source: "/devices/ground", name: "Ground tablet", role: "marker", key: keyOf(33) },
] as const;

/** The walk of {@link sealedWalk}. */
export const SEALED_WALK = "sealed-walk";

/** The key of the hub that the walk was linked with. */
export const VEHICLE_KEY = publicKey(keyOf(30));

/** The sealed log of a walk that three devices entered, closed and all under a checkpoint, as lines of its wire form. */
export function sealedWalk(notes = 3): Wire[] {
  const file = procedureFile(bundledText("osier-bring-in"));
  const [inside, mast, ground] = DEVICES;
  const base = [{ subject: SEALED_WALK, hlc: "001932886800000-0000" }];
  let log: Wire[] = withNext(
    base,
    inside.source,
    "walk.opened",
    { procedure: file, mode: "live" },
    inside.key,
  );
  log = withNext(log.slice(1), HUB, "hub.named", { name: "Vehicle" }, keyOf(30));
  for (const { source, name, role, key } of DEVICES) {
    log = withNext(log, HUB, "device.admitted", { source, name, role, key: publicKey(key) }, keyOf(30));
  }
  log = withNext(log, inside.source, "clock.started", {}, inside.key);
  for (let note = 1; note <= notes; note += 1) {
    log = withNext(log, mast.source, "note.made", { text: `Mast, note ${note}` }, mast.key);
    log = withNext(log, ground.source, "note.made", { text: `Ground, note ${note}` }, ground.key);
  }
  log = withNext(log, inside.source, "walk.closed", { end: "terminated", reason: "Enough." }, inside.key);
  return withCheckpoint(log, HUB, keyOf(30));
}

/** A log as a file has it. */
export const linesOf = (log: readonly Wire[]): string =>
  log.map((wire) => `${JSON.stringify(wire)}\n`).join("");
