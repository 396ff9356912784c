import type { Say } from "../../words/index.ts";
import { message } from "../../words/index.ts";
import { pictureSource } from "../procedure/index.ts";
import { NO_TIME } from "../units/index.ts";
import type { Drawing, DrawnNode, WorksiteGround } from "../worksite/index.ts";
import { drawingOf, groundOf, momentOf, nodeText, worksiteScene } from "../worksite/index.ts";
import type { Briefing } from "./briefing.ts";
import { FILE_STYLE } from "./file-style.ts";
import { Markup, markup } from "./markup.ts";
import { personFacts } from "./person-facts.ts";
import { SPEEDS } from "./playback.ts";
import { playerData } from "./player-data.ts";
import { PLAYER_HASH, PLAYER_SCRIPT } from "./player-script.ts";
import type { Frame } from "./storyboard-of.ts";
import { frameTime, frameTitle, storyboardOf } from "./storyboard-of.ts";
import { stripOf } from "./strip-drawing.ts";

/** What a briefing shows: what is planned, what was played, or what happened. */
export type BriefingKind = "plan" | "rehearsal" | "flown";

/** The size of the map in px; it is drawn as wide as the page. */
const MAP = { width: 760, height: 460, zoom: 1 } as const;

/**
 * A briefing as one HTML file ([BRF4]): the storyboard as it stands, and a player that takes its place where scripts run. Its
 * policy forbids every request. The same briefing and language give the same text, byte for byte.
 */
export function briefingFile(briefing: Briefing, kind: BriefingKind, say: Say): string {
  const { course, finish } = briefing;
  const { procedure } = course.outline;
  const ground = groundOf(procedure, MAP, say);
  const frames = storyboardOf(briefing);
  const drawings = frames.map(({ moment }) => drawn(ground, moment, say));
  const first = drawings[0] ?? drawn(ground, momentOf(course, NO_TIME), say);
  const other = drawn(ground, momentOf(course, finish), say);
  const still = new Set(
    first.layers.flatMap((layer, place) => (other.layers[place] === layer ? [place] : [])),
  );
  const data = playerData(briefing, ground, still, say);
  const articles = frames.map((frame, index) => {
    const shownIn = picturesBefore(frames, index);
    return frameOf(briefing, frame, { drawing: drawings[index] ?? first, still, shownIn, say });
  });
  return markup`<!doctype html>
<html lang="${say(message("brief/language"))}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'; script-src '${new Markup(PLAYER_HASH)}'; base-uri 'none'; form-action 'none'">
<meta name="referrer" content="no-referrer">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${procedure.title} · ${say(message("brief/title"))}</title>
<style>${new Markup(FILE_STYLE)}</style>
</head>
<body>
${stillDrawing(first, still)}
${headOf(briefing, kind, say)}
${playerOf(briefing, first, still, say)}
<main aria-label="${say(message("brief/storyboard"))}">
${articles}
</main>
<script type="application/json" id="data">${jsonText(data)}</script>
<script>${new Markup(PLAYER_SCRIPT)}</script>
</body>
</html>
`.text;
}

const drawn = (ground: WorksiteGround, moment: Frame["moment"], say: Say): Drawing =>
  drawingOf(worksiteScene(ground, moment, { say, detail: "full" }));

/** JSON that no parser of HTML takes for markup. */
const jsonText = (data: unknown): Markup => new Markup(JSON.stringify(data).replaceAll("<", "\\u003c"));

const nodeOf = (node: DrawnNode): Markup => new Markup(nodeText(node));

/** The layers that are the same in every picture, drawn once; the pictures refer to them. */
function stillDrawing({ layers }: Drawing, still: ReadonlySet<number>): Markup {
  const kept = layers.flatMap((layer, place) =>
    still.has(place) ? [markup`<g id="still-${place}">${nodeOf(layer)}</g>`] : [],
  );
  return markup`<svg class="worksite still" width="0" height="0" aria-hidden="true"><defs>${kept}</defs></svg>`;
}

/** A picture of the worksite; `id` is what the player calls it by. */
function pictureOfSite(
  { width, height, layers }: Drawing,
  still: ReadonlySet<number>,
  { id, label }: { readonly id: string | null; readonly label: string },
): Markup {
  const drawing = layers.map((layer, place) =>
    still.has(place) ? markup`<use href="#still-${place}"/>` : nodeOf(layer),
  );
  const named = id === null ? null : markup` id="${id}"`;
  // The player takes the layers one by one, so that nothing stands between them.
  const whole = new Markup(drawing.map(({ text }) => text).join(""));
  return markup`<svg class="worksite"${named} viewBox="0 0 ${Math.ceil(width)} ${Math.ceil(height)}" role="img" aria-label="${label}">${whole}</svg>`;
}

function headOf({ course, start, finish }: Briefing, kind: BriefingKind, say: Say): Markup {
  const { id, title, revision, summary } = course.outline.procedure;
  const facts = [
    say(message(`brief/of-${kind}`)),
    id,
    ...(revision === undefined ? [] : [say(message("parts/revision", { revision }))]),
    ...(start === null ? [] : [say(message("brief/pet-zero", { at: start }))]),
    say(message(kind === "plan" ? "brief/finish" : "brief/last-step", { at: finish })),
  ];
  return markup`<header>
<h1 dir="auto">${title}</h1>
<p>${facts.map((fact) => markup`<span class="fact" dir="auto">${fact}</span>`)}</p>
${summary === undefined ? null : markup`<p dir="auto">${summary}</p>`}
<p class="advice">${say(message("brief/advises"))}</p>
</header>`;
}

function playerOf(briefing: Briefing, first: Drawing, still: ReadonlySet<number>, say: Say): Markup {
  const strip = stripOf(briefing);
  const button = (id: "task-back" | "step-back" | "step-on" | "task-on") =>
    markup`<button type="button" id="${id}">${say(message(`brief/${id}`))}</button>`;
  const [play, pause] = [say(message("brief/play")), say(message("brief/pause"))];
  const speeds = SPEEDS.map((speed) => {
    const selected = speed === 10 ? new Markup(" selected") : null;
    return markup`<option value="${speed}"${selected}>${say(message("brief/times", { speed }))}</option>`;
  });
  return markup`<section id="player" aria-label="${say(message("brief/player"))}" hidden>
${pictureOfSite(first, still, { id: "map", label: say(message("brief/map")) })}
<div id="caption" aria-live="polite"></div>
<div class="controls"><b id="clock">0:00:00</b>
${button("task-back")}
${button("step-back")}
<button type="button" id="play" data-play="${play}" data-pause="${pause}">${play}</button>
${button("step-on")}
${button("task-on")}
<label>${say(message("brief/speed"))} <select id="speed">${speeds}</select></label>
</div>
<input id="scrubber" type="range" min="0" max="1" step="1000" value="0" aria-label="${say(message("brief/scrubber"))}">
<svg class="strip" viewBox="0 0 ${strip.width} ${strip.height}" aria-hidden="true">${strip.nodes.map(nodeOf)}
<line id="now" class="strip-now" data-from="${strip.from}" data-to="${strip.to}" x1="${strip.from}" x2="${strip.from}" y1="0" y2="${strip.height}"/></svg>
<nav id="chapters" aria-label="${say(message("brief/chapters"))}"></nav>
</section>`;
}

/** The pictures that frames before one show, with the number of the frame. */
function picturesBefore(frames: readonly Frame[], index: number): ReadonlyMap<string, number> {
  const shown = new Map<string, number>();
  for (const { pictures, number } of frames.slice(0, index))
    for (const picture of pictures) if (!shown.has(picture)) shown.set(picture, number);
  return shown;
}

interface FrameDrawing {
  readonly drawing: Drawing;
  readonly still: ReadonlySet<number>;
  readonly shownIn: ReadonlyMap<string, number>;
  readonly say: Say;
}

const COLUMNS = ["who", "where", "does", "line", "has"] as const;

function frameOf(briefing: Briefing, frame: Frame, { drawing, still, shownIn, say }: FrameDrawing): Markup {
  const { pet, moment, alerts, caption, pictures } = frame;
  const people = moment.people.map((person) => {
    const { call, look, where, does, line, has } = personFacts(briefing.course, person);
    const cells = [where && say(where), say(does), line && say(line), has.join(", ")];
    const row = cells.map((cell) => markup`<td dir="auto">${cell}</td>`);
    return markup`<tr><th scope="row" class="look-${look}" dir="auto">${call}</th>${row}</tr>`;
  });
  const columns = COLUMNS.map((name) => markup`<th scope="col">${say(message(`brief/column-${name}`))}</th>`);
  const warned = alerts.map(
    ({ number, alert: { level, text } }) =>
      markup`<p class="alert ${level}"><b>${say(message(`parts/alert-${level}`))} ${number}</b> <bdi>${text}</bdi></p>`,
  );
  const label = say(message("brief/map-at", { pet }));
  return markup`<article class="frame">
<h2 dir="auto">${say(frameTitle(frame))}</h2>
<p class="pet">${say(frameTime(briefing, frame))}</p>
<div class="seen">${pictureOfSite(drawing, still, { id: null, label })}</div>
<div class="told"><div class="caption">${caption.map((line) => markup`<p dir="auto">${say(line.said)}</p>`)}</div>
<table><thead><tr>${columns}</tr></thead><tbody>${people}</tbody></table></div>
${warned.length === 0 ? null : markup`<div class="alerts">${warned}</div>`}
${pictures.map((id) => pictureOf(briefing, id, shownIn.get(id) ?? null, say))}
</article>`;
}

/** A picture of a step, once in the file; elsewhere the number of the frame that has it. */
function pictureOf({ course }: Briefing, id: string, shownIn: number | null, say: Say): Markup {
  const picture = course.outline.procedure.pictures.find((one) => one.id === id);
  if (!picture) return markup``;
  const label = picture.label ?? picture.id;
  if (shownIn !== null)
    return markup`<p dir="auto">${say(message("brief/picture-before", { label, frame: shownIn }))}</p>`;
  return markup`<figure><img src="${pictureSource(picture)}" alt="${label}"><figcaption dir="auto">${label}</figcaption></figure>`;
}
