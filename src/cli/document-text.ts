import { forMachines } from "../words/index.ts";

/** A document for other programs as JSON. What it words is told as written, whatever `--units` asks for. */
export function documentText(make: () => object | null): string {
  return forMachines(() => `${JSON.stringify(make(), null, 2)}\n`);
}
