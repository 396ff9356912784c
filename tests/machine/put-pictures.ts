import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Puts the drawings of `procedures/pictures` into the procedures that carry them, and leaves the rest of each file. */
const FOLDER = "procedures";

const drawings = new Map(
  readdirSync(join(FOLDER, "pictures")).map((file) => [
    file.replace(/\.svg$/, ""),
    readFileSync(join(FOLDER, "pictures", file)).toString("base64"),
  ]),
);

for (const file of readdirSync(FOLDER).filter((name) => name.endsWith(".procedure.json"))) {
  const path = join(FOLDER, file);
  const text = readFileSync(path, "utf8");
  const { pictures = [] } = JSON.parse(text) as { pictures?: readonly { id: string; data: string }[] };
  const renewed = pictures.reduce((written, { id, data }) => {
    const drawing = drawings.get(id);
    if (drawing === undefined) throw new Error(`${file} has a picture ${id}, and there is no such drawing`);
    return written.replaceAll(JSON.stringify(data), JSON.stringify(drawing));
  }, text);
  if (renewed !== text) writeFileSync(path, renewed);
}
