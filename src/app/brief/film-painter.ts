import type { Briefing, BriefingKind, Speed } from "../../core/briefing/index.ts";
import { captionGrain, captionPlayedAt } from "../../core/briefing/index.ts";
import type { Duration } from "../../core/units/index.ts";
import type { WorksiteGround, WorksiteScene } from "../../core/worksite/index.ts";
import { drawingOf, groundOf, momentOf, slidingFrom, worksiteScene } from "../../core/worksite/index.ts";
import { inWords, words } from "../../words/index.ts";
import { LayerPictures, styleForPictures, themeValue } from "./svg-picture.ts";

/** The size of a film, in px. Encoders want even sides. */
export const FILM_SIZE = { width: 1280, height: 720 } as const;

const EDGE = 24;
const HEAD = 64;
const CAPTION = 190;
const MAP = { width: FILM_SIZE.width - 2 * EDGE, height: FILM_SIZE.height - HEAD - CAPTION, zoom: 1 };
const LINE = 34;
/** How much of its way to another slot a card goes from picture to picture. */
const SLIDES = 0.5;
const MOST_LINES = 4;

/** A size of type in px, in the face of the page. */
const type = (weight: 400 | 700, size: number) => [weight, `${size}px`, themeValue("--face")].join(" ");

/** What a film is painted of. */
export interface FilmSubject {
  readonly briefing: Briefing;
  readonly kind: BriefingKind;
  readonly speed: Speed;
}

/** Paints the pictures of a film: title and clock, the map, and the caption below it ([BRF6]). */
export class FilmPainter {
  readonly canvas: HTMLCanvasElement;
  readonly #context: CanvasRenderingContext2D;
  readonly #subject: FilmSubject;
  readonly #ground: WorksiteGround;
  readonly #layers: LayerPictures;
  /** What the picture before shows. */
  #scene: WorksiteScene | null = null;

  private constructor(subject: FilmSubject, context: CanvasRenderingContext2D, style: string) {
    this.canvas = context.canvas;
    this.#context = context;
    this.#subject = subject;
    this.#layers = new LayerPictures(style);
    this.#ground = groundOf(subject.briefing.course.outline.procedure, MAP, inWords);
  }

  /** A painter, once the faces are loaded; `null` where the browser has no canvas to paint on. */
  static async open(subject: FilmSubject): Promise<FilmPainter | null> {
    const canvas = document.createElement("canvas");
    canvas.width = FILM_SIZE.width;
    canvas.height = FILM_SIZE.height;
    const context = canvas.getContext("2d", { alpha: false });
    if (!context) return null;
    const [style] = await Promise.all([
      styleForPictures(),
      document.fonts.load(type(400, 24)),
      document.fonts.load(type(700, 24)),
    ]);
    return new FilmPainter(subject, context, style);
  }

  /** Paints the moment at a PET, which follows the one that was painted before. */
  async paint(pet: Duration): Promise<void> {
    const { briefing } = this.#subject;
    const moment = momentOf(briefing.course, pet);
    const next = worksiteScene(this.#ground, moment, { say: inWords, detail: "full" }, this.#scene);
    this.#scene = slidingFrom(this.#scene, next, SLIDES);
    const { width, height, layers } = drawingOf(this.#scene);
    const pictures = await Promise.all(
      layers.map((layer, place) => this.#layers.of(place, layer, { width, height })),
    );
    const context = this.#context;
    context.fillStyle = themeValue("--paper");
    context.fillRect(0, 0, FILM_SIZE.width, FILM_SIZE.height);
    this.#head(pet);
    const scale = Math.min(MAP.width / width, MAP.height / height);
    const left = EDGE + (MAP.width - width * scale) / 2;
    for (const picture of pictures) context.drawImage(picture, left, HEAD, width * scale, height * scale);
    this.#caption(pet);
    context.fillStyle = themeValue("--soft");
    context.font = type(400, 16);
    context.fillText(words("brief/advises"), EDGE, FILM_SIZE.height - 16);
  }

  #head(pet: Duration): void {
    const { briefing, kind } = this.#subject;
    const context = this.#context;
    context.textBaseline = "middle";
    context.fillStyle = themeValue("--ink");
    context.font = type(700, 36);
    const clock = words("brief/clock", { pet });
    context.textAlign = "right";
    context.fillText(clock, FILM_SIZE.width - EDGE, HEAD / 2);
    const room = FILM_SIZE.width - 3 * EDGE - context.measureText(clock).width;
    context.textAlign = "left";
    context.font = type(400, 22);
    const told = words(`brief/of-${kind}`);
    const toldWidth = context.measureText(told).width;
    context.font = type(700, 28);
    const [title = ""] = this.#broken(briefing.course.outline.procedure.title, room - toldWidth - EDGE, 1);
    context.fillText(title, EDGE, HEAD / 2);
    const after = EDGE + context.measureText(title).width + EDGE;
    context.font = type(400, 22);
    context.fillStyle = themeValue("--soft");
    context.fillText(told, after, HEAD / 2 + 2);
  }

  #caption(pet: Duration): void {
    const { briefing, speed } = this.#subject;
    const context = this.#context;
    const lines = captionPlayedAt(briefing, pet, captionGrain(speed)).map(({ kind, said }) => ({
      kind,
      text: inWords(said),
    }));
    context.font = type(400, 26);
    const room = FILM_SIZE.width - 2 * EDGE;
    // Each line keeps at least one row of its own, so that nobody is left out where there are many.
    const rows = lines.flatMap(({ kind, text }) =>
      this.#broken(text, room, lines.length > 2 ? 1 : 2).map((row) => ({ kind, row })),
    );
    const shown = rows.length > MOST_LINES ? rows.slice(0, MOST_LINES - 1) : rows;
    let y = FILM_SIZE.height - CAPTION + LINE;
    for (const { kind, row } of shown) {
      context.fillStyle = themeValue(kind === "waits" ? "--soft" : "--ink");
      context.fillText(row, EDGE, y);
      y += LINE;
    }
    if (shown.length < rows.length) {
      context.fillStyle = themeValue("--soft");
      context.fillText(words("brief/film-more", { count: rows.length - shown.length }), EDGE, y);
    }
  }

  /** A text in at most so many rows as wide as there is room; the last one is cut off with an ellipsis. */
  #broken(text: string, room: number, most: number): readonly string[] {
    const context = this.#context;
    const fits = (row: string) => context.measureText(row).width <= room;
    const rows: string[] = [];
    let row = "";
    for (const word of text.split(/\s+/)) {
      const longer = row === "" ? word : `${row} ${word}`;
      if (fits(longer) || row === "") row = longer;
      else {
        rows.push(row);
        row = word;
      }
    }
    rows.push(row);
    if (rows.length <= most && rows.every(fits)) return rows;
    const kept = rows.slice(0, most);
    let last = kept.pop() ?? "";
    while (last !== "" && !fits(`${last}…`)) last = [...last].slice(0, -1).join("");
    return [...kept, `${last}…`];
  }
}
