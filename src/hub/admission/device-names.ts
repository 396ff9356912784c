import { z } from "zod";
import { jsonOf } from "../../core/log/index.ts";
import type { WalkId } from "../../core/units/index.ts";
import type { Keep } from "../engine/index.ts";
import { keySchema } from "./device-key.ts";
import { DEVICE_NAMES, deviceNameKey } from "./kept-keys.ts";
import { deviceSchema, walkSchema } from "./member.ts";

const nameSchema = z.object({
  walk: walkSchema,
  device: deviceSchema,
  key: keySchema.nullable(),
  epoch: z.string(),
});

/** A device that this hub admitted to a walk at any time. */
export interface DeviceName {
  readonly walk: WalkId;
  readonly device: string;
  /** The one key that may have this name; `null` when it was joined without one. */
  readonly key: string | null;
  /** The epoch of the store in which the device was heard last. */
  readonly epoch: string;
}

function readName(text: string | null): DeviceName | null {
  return (text !== null && nameSchema.safeParse(jsonOf(text)).data) || null;
}

/**
 * Which source belongs to which key, by walk: a copy of what is kept that follows changes by every hub on the same engine.
 * A name outlasts its member and is never given to another key.
 */
export class DeviceNames {
  readonly #keep: Keep;
  readonly #names = new Map<string, DeviceName>();
  #stopWatching: () => void = () => {};

  private constructor(keep: Keep) {
    this.#keep = keep;
  }

  static async open(keep: Keep): Promise<DeviceNames> {
    const names = new DeviceNames(keep);
    names.#stopWatching = keep.watch(DEVICE_NAMES, (key, value) => names.#apply(key, readName(value)));
    for (const [key, value] of await keep.list(DEVICE_NAMES)) names.#apply(key, readName(value));
    return names;
  }

  /** As far as this hub has heard; `null` for a device that was never admitted here. */
  get(walk: WalkId, device: string): DeviceName | null {
    return this.#names.get(deviceNameKey(walk, device)) ?? null;
  }

  /** What is kept of a name, past the copy, which may be a moment behind another hub. */
  async ask(walk: WalkId, device: string): Promise<DeviceName | null> {
    const key = deviceNameKey(walk, device);
    const name = readName(await this.#keep.get(key));
    this.#apply(key, name);
    return name;
  }

  /** Keeps a name; false when it has another key already, which keeps it. */
  async put(name: DeviceName): Promise<boolean> {
    const key = deviceNameKey(name.walk, name.device);
    const text = JSON.stringify(name);
    if (!(await this.#keep.create(key, text))) {
      const there = await this.ask(name.walk, name.device);
      if (there && there.key !== null && there.key !== name.key) return false;
      if (!there || there.key !== name.key || there.epoch !== name.epoch) await this.#keep.put(key, text);
    }
    this.#apply(key, name);
    return true;
  }

  close(): void {
    this.#stopWatching();
  }

  #apply(key: string, name: DeviceName | null): void {
    if (name) this.#names.set(key, name);
    else this.#names.delete(key);
  }
}
