import { readdirSync, readFileSync } from "node:fs";

/** The procedures that come with the program, by name. */
export function bundledFiles(): readonly (readonly [name: string, file: unknown])[] {
  return readdirSync("procedures")
    .filter((name) => name.endsWith(".procedure.json"))
    .map((name) => [name, JSON.parse(readFileSync(`procedures/${name}`, "utf8")) as unknown] as const);
}
