import { benchEntry } from "./hub-entries.ts";
import type { Side } from "./hub-sides.ts";
import { machineNow, WireConnection } from "./hub-wire.ts";

/** How appending is measured. */
export interface AppendsPlan {
  /** Entries of one POST. */
  readonly batch: number;
  /** Devices that post at the same time, each again as soon as it was answered. */
  readonly devices: number;
  /** Each side in turn, so often; once more before, to warm up. */
  readonly rounds: number;
  /** Length of a turn, in ms. */
  readonly turn: number;
}

interface Writer {
  readonly connection: WireConnection;
  readonly device: string;
  readonly token: string;
  made: number;
}

/** Entries confirmed a second, of each side, over all rounds. */
export async function measureAppends(
  sides: readonly Side[],
  plan: AppendsPlan,
): Promise<ReadonlyMap<Side, number>> {
  const walk = `bench-appends-${plan.batch}`;
  const writers = new Map<Side, readonly Writer[]>();
  for (const side of sides) writers.set(side, await writersOf(side, walk, plan.devices));
  const confirmed = new Map<Side, number>(sides.map((side) => [side, 0]));
  const took = new Map<Side, number>(sides.map((side) => [side, 0]));
  for (let round = 0; round <= plan.rounds; round += 1) {
    for (const [turn] of sides.entries()) {
      const side = sides[(turn + round) % sides.length];
      if (!side) continue;
      const began = machineNow();
      const counts = await Promise.all(
        (writers.get(side) ?? []).map((writer) => write(side, walk, writer, plan, began + plan.turn)),
      );
      if (round === 0) continue;
      confirmed.set(
        side,
        counts.reduce((sum, count) => sum + count, confirmed.get(side) ?? 0),
      );
      took.set(side, (took.get(side) ?? 0) + machineNow() - began);
    }
  }
  for (const { connection } of [...writers.values()].flat()) connection.close();
  return new Map(
    sides.map((side) => [side, ((confirmed.get(side) ?? 0) / (took.get(side) ?? Number.NaN)) * 1000]),
  );
}

function writersOf(side: Side, walk: string, count: number): Promise<readonly Writer[]> {
  return Promise.all(
    Array.from({ length: count }, async (_, index) => {
      const device = `/devices/writer-${index + 1}`;
      const [connection, token] = [await WireConnection.open(side.port), await side.join(walk, device)];
      return { connection, device, token, made: 0 };
    }),
  );
}

/** Posts until the end; how many entries were confirmed. */
async function write(
  side: Side,
  walk: string,
  writer: Writer,
  { batch }: AppendsPlan,
  end: number,
): Promise<number> {
  let confirmed = 0;
  while (machineNow() < end) {
    const entries = Array.from({ length: batch }, (_, index) =>
      benchEntry(walk, writer.device, writer.made + index + 1),
    );
    writer.made += batch;
    const { status, body } = await writer.connection.post(
      side.path(walk),
      writer.token,
      JSON.stringify(entries),
    );
    const accepted = body.split('"accepted"').length - 1;
    if (status !== 200 || accepted !== batch) throw new Error(`${side.name}: ${status} ${body}`);
    confirmed += accepted;
  }
  return confirmed;
}
