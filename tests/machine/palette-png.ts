import { crc32, deflateSync } from "node:zlib";
import type { Page } from "@playwright/test";

/** The colours a palette can hold (PNG, W3C: bit depth 8). */
const MOST_COLOURS = 256;

/** A picture as a PNG of 256 colours, a quarter of the size: its most frequent colours, every other one drawn as the nearest of them. The page decodes it. */
export async function palettePng(page: Page, png: Buffer): Promise<Buffer> {
  const { width, height, pixels } = await decoded(page, png);
  const counts = new Map<number, number>();
  for (const colour of pixels) counts.set(colour, (counts.get(colour) ?? 0) + 1);
  const palette = [...counts.keys()]
    .sort((a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0))
    .slice(0, MOST_COLOURS);
  const indices = new Map(palette.map((colour, index) => [colour, index]));
  const indexOf = (colour: number) => {
    const known = indices.get(colour);
    if (known !== undefined) return known;
    const nearest = palette.reduce((best, one) =>
      distance(one, colour) < distance(best, colour) ? one : best,
    );
    const index = indices.get(nearest) ?? 0;
    indices.set(colour, index);
    return index;
  };
  const rows = Buffer.alloc(height * (width + 1));
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      rows[y * (width + 1) + 1 + x] = indexOf(pixels[y * width + x] ?? 0);
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", header),
    chunk("PLTE", Buffer.from(palette.flatMap((colour) => parts(colour)))),
    chunk("IDAT", deflateSync(rows, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

const parts = (colour: number): [number, number, number] => [
  (colour >> 16) & 255,
  (colour >> 8) & 255,
  colour & 255,
];

function distance(a: number, b: number): number {
  const [from, to] = [parts(a), parts(b)];
  return (from[0] - to[0]) ** 2 + (from[1] - to[1]) ** 2 + (from[2] - to[2]) ** 2;
}

function chunk(type: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

interface Decoded {
  readonly width: number;
  readonly height: number;
  /** 0xRRGGBB, row by row. */
  readonly pixels: Uint32Array;
}

async function decoded(page: Page, png: Buffer): Promise<Decoded> {
  const { width, height, base64 } = await page.evaluate(async (source) => {
    const bytes = Uint8Array.from(atob(source), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const canvas = new OffscreenCanvas(picture.width, picture.height);
    const context = canvas.getContext("2d");
    if (!context) throw new Error("no canvas to decode on");
    context.drawImage(picture, 0, 0);
    const { data } = context.getImageData(0, 0, picture.width, picture.height);
    let text = "";
    for (let at = 0; at < data.length; at += 32768)
      text += String.fromCharCode(...data.subarray(at, at + 32768));
    return { width: picture.width, height: picture.height, base64: btoa(text) };
  }, png.toString("base64"));
  const raw = Buffer.from(base64, "base64");
  const pixels = new Uint32Array(width * height);
  for (let at = 0; at < pixels.length; at += 1) pixels[at] = raw.readUInt32BE(at * 4) >>> 8;
  return { width, height, pixels };
}
