import regular from "@fontsource/b612/files/b612-latin-400-normal.woff2?url";
import bold from "@fontsource/b612/files/b612-latin-700-normal.woff2?url";
import type { DrawnNode } from "../../core/worksite/index.ts";
import { svgText, WORKSITE_STYLE } from "../../core/worksite/index.ts";

/** The style that an image of the worksite needs to look as on the page, of which an image sees nothing: its colours and its face. */
export async function styleForPictures(): Promise<string> {
  const [light, heavy] = await Promise.all([regular, bold].map(faceOf));
  const names = new Set(WORKSITE_STYLE.match(/--[a-z0-9-]+/g));
  const colours = [...names]
    .filter((name) => name !== "--face")
    .map((name) => `${name}:${themeValue(name)};`);
  return [
    face(400, light ?? ""),
    face(700, heavy ?? ""),
    `svg{--face:"Film",${themeValue("--face")};${colours.join("")}}`,
    WORKSITE_STYLE,
  ].join("");
}

/** A value of the theme that the page is shown in: a colour or the face. */
export function themeValue(name: string): string {
  return getComputedStyle(document.documentElement).getPropertyValue(name).trim();
}

const face = (weight: number, source: string) =>
  `@font-face{font-family:"Film";font-weight:${weight};src:url(${source}) format("woff2")}`;

/** A face as a data address. An image may fetch nothing. */
async function faceOf(address: string): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(address)).arrayBuffer());
  return `data:font/woff2;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""))}`;
}

/** Makes pictures of layers of a drawing. A layer that looks as it did before is not made anew. */
export class LayerPictures {
  readonly #style: string;
  readonly #kept = new Map<number, { readonly text: string; readonly picture: HTMLImageElement }>();

  /** `style` is put into each picture. */
  constructor(style: string) {
    this.#style = style;
  }

  /** The picture of the layer in place `place` of a drawing of this size. Rejects when the browser cannot make it. */
  async of(
    place: number,
    layer: DrawnNode,
    { width, height }: { readonly width: number; readonly height: number },
  ): Promise<HTMLImageElement> {
    const text = svgText({ width, height, layers: [layer] }, this.#style);
    const kept = this.#kept.get(place);
    if (kept?.text === text) return kept.picture;
    const address = URL.createObjectURL(new Blob([text], { type: "image/svg+xml" }));
    try {
      const picture = new Image();
      picture.src = address;
      await picture.decode();
      this.#kept.set(place, { text, picture });
      return picture;
    } finally {
      URL.revokeObjectURL(address);
    }
  }
}
