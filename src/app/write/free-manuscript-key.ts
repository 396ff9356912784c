import type { DeviceStore } from "../../io/store/index.ts";

/** A key that neither a manuscript nor a procedure of this device has: the id, else with a number behind it. */
export async function freeManuscriptKey(store: DeviceStore, id: string): Promise<string> {
  const [manuscripts, kept] = await Promise.all([
    store.manuscripts().then((shelf) => shelf.manuscripts()),
    store.shelf.procedures(),
  ]);
  const taken = new Set([...manuscripts, ...kept].map(({ key }) => key));
  let key = `${id}-draft`;
  for (let number = 2; taken.has(key); number += 1) key = `${id}-draft-${number}`;
  return key;
}
