import type { ProcedureFile } from "../../src/core/procedure/index.ts";
import { FORMAT } from "../../src/core/procedure/index.ts";

type FileStep = ProcedureFile["tasks"][number]["steps"][number];

const LANES = 8;
const PLACES = 12;

/**
 * A sound procedure of so many steps in eight lanes along a rail: work, translations, joint steps, links, moves out of bags and back,
 * anchors moved along, windows, and so many decisions with two outcomes each, which gives 2 to that power scenarios.
 */
export function largeProcedure(count: number, decisions: number): ProcedureFile {
  const crew = Array.from({ length: LANES }, (_, lane) => ({
    id: `c${lane}`,
    call: `C${lane}`,
    station: "outside" as const,
    start: "p0",
    tether: { anchor: "p0", length: 20 },
  }));
  const places = Array.from({ length: PLACES }, (_, index) => ({ id: `p${index}`, refuge: index === 0 }));
  const routes = places.slice(1).map((_, index) => ({
    between: [`p${index}`, `p${index + 1}`] as [string, string],
    length: 5,
    time: "PT1M",
  }));
  const items = crew.flatMap(({ id }) => [
    { id: `bag-${id}`, start: { crew: id } },
    { id: `tool-${id}`, start: { item: `bag-${id}` } },
  ]);
  const at = new Array<number>(LANES).fill(0);
  const isOut = new Array<boolean>(LANES).fill(false);
  const every = Math.floor(count / (decisions + 1));
  const steps: FileStep[] = [];
  for (let index = 0; index < count; index += 1) {
    const lane = index % LANES;
    const id = `s${index}`;
    const by = [`c${lane}`];
    const asked = Math.floor(index / every);
    const kind = Math.floor(index / LANES) % 5;
    const step: FileStep = {
      id,
      by,
      do: "Loosen the bolt",
      time: { low: "PT20S", likely: "PT30S", high: "PT1M" },
    };
    if (decisions > 0 && index % every === 0 && asked >= 1 && asked <= decisions) {
      step.decide = { id: `d${asked}`, ask: "Does it turn?", outcomes: ["yes", "no"], expect: "yes" };
    } else if (decisions > 0 && index % every === 3 && asked >= 1 && asked <= decisions) {
      step.when = { [`d${asked}`]: "no" };
    } else if (kind === 0) {
      const here = at[lane] ?? 0;
      const next = here + 1 < PLACES ? here + 1 : here - 1;
      at[lane] = next;
      steps.push({ id, by, do: "Move along the rail", to: `p${next}`, anchor: `p${next}` });
      continue;
    } else if (kind === 1) {
      const tool = `tool-c${lane}`;
      step.moves = [{ item: tool, to: isOut[lane] ? { item: `bag-c${lane}` } : { crew: `c${lane}` } }];
      isOut[lane] = !isOut[lane];
    } else if (kind === 2 && index > 40) {
      step.after = [`s${index - 11}`];
    } else if (kind === 3 && lane === 0) {
      step.by = [`c${lane}`, `c${lane + 1}`];
    } else if (kind === 4) {
      step.within = ["light"];
    }
    steps.push(step);
  }
  const spans = Array.from({ length: 100 }, (_, index) => ({
    from: `PT${index * 90}M`,
    to: `PT${index * 90 + 60}M`,
  }));
  const tasks = Array.from({ length: Math.ceil(count / 50) }, (_, index) => ({
    id: `t${index}`,
    title: `Task ${index}`,
    steps: steps.slice(index * 50, index * 50 + 50),
  }));
  return {
    format: FORMAT,
    id: "large",
    title: "Large",
    limits: { elapsed: "P5D" },
    crew,
    places,
    routes,
    items: items.map((item) => ({ ...item, ...(item.id.startsWith("bag") ? { end: item.start } : {}) })),
    windows: [{ id: "light", kind: "listed", spans }],
    tasks,
  };
}
