import type { LanguageTag } from "../../words/index.ts";

/** Where the two weights of a face are. */
interface Faces {
  readonly regular: string;
  readonly bold: string;
}

/** As the tokens of the theme call the face of the script in use, behind the Latin one. */
const FAMILY = "script-in-use";

/** The faces of languages whose script the app's Latin face has not got. */
const FACES: Partial<Record<LanguageTag, () => Promise<Faces>>> = {
  ja: async () => (await import("./japanese-faces.ts")).faces,
  "ar-u-nu-latn": async () => (await import("./arabic-faces.ts")).faces,
};

/** Draws the script of a language with a face of our own, once it is loaded; until then, and where it cannot be, with the device's. */
export async function drawWithFaces(tag: LanguageTag): Promise<void> {
  const load = FACES[tag];
  if (!load) return;
  try {
    const { regular, bold } = await load();
    for (const [weight, url] of [
      ["400", regular],
      ["700", bold],
    ] as const)
      document.fonts.add(await new FontFace(FAMILY, `url("${url}")`, { weight }).load());
  } catch {
    // Every device has a face of its own for these scripts; the words are the same in it.
  }
}
