import type { CrewId, PlaceId } from "../units/index.ts";
import { BEAD } from "./card-slots.ts";
import type { GroundPlace, WorksiteGround } from "./ground.ts";
import { COUNT_BOX, MARK, TYPE } from "./ground.ts";
import type { DrawnPoint, Rectangle } from "./rectangle.ts";
import { around } from "./rectangle.ts";
import type { SceneCount, SceneLine, ScenePerson, SceneView, WorksiteScene } from "./scene.ts";
import { LOOK_DASHES } from "./worksite-style.ts";

/** An element of SVG as plain data: React, a file or an image can be made of it. */
export interface DrawnNode {
  readonly tag: string;
  /** Attributes by their name in SVG. Colours come from the class names (`WORKSITE_STYLE`). */
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly children: readonly DrawnNode[];
  /** The text of a text element. */
  readonly text: string | null;
}

/** A drawing as layers, the lowest first, so that what does not change need not be drawn again. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly layers: readonly DrawnNode[];
}

type Attributes = DrawnNode["attributes"];

const node = (tag: string, attributes: Attributes, children: readonly DrawnNode[] = []): DrawnNode => ({
  tag,
  attributes,
  children,
  text: null,
});

const textAt = (text: string, { x, y }: DrawnPoint, size: number, name: string, more: Attributes = {}) => ({
  tag: "text",
  attributes: { x: px(x), y: px(y), "font-size": size, class: name, ...more },
  children: [],
  text,
});

/** Px to a hundredth, which no eye tells from the exact value. */
const px = (value: number): number => Math.round(value * 100) / 100;

const box = (name: string, { left, top, width, height }: Rectangle, more: Attributes = {}): DrawnNode =>
  node("rect", { class: name, x: px(left), y: px(top), width: px(width), height: px(height), ...more });

const classes = (...names: readonly string[]): string => names.join(" ");

const straight = (name: string, from: DrawnPoint, to: DrawnPoint): DrawnNode =>
  node("line", { class: name, x1: px(from.x), y1: px(from.y), x2: px(to.x), y2: px(to.y) });

const pathOf = (points: readonly DrawnPoint[]): string =>
  points.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${px(x)} ${px(y)}`).join("");

const dashed = (look: number): Attributes => {
  const dash = LOOK_DASHES[look - 1];
  return dash ? { "stroke-dasharray": dash } : {};
};

const grounds = new WeakMap<WorksiteGround, readonly DrawnNode[]>();

/** What of a ground is always drawn: its ways, and its places with their names. */
function stillLayers(ground: WorksiteGround): readonly DrawnNode[] {
  const still = grounds.get(ground) ?? groundLayers(ground);
  grounds.set(ground, still);
  return still;
}

/** The drawing of a ground with nobody on it, for whoever lays places out; those that are chosen have a ring round them. */
export function groundDrawing(ground: WorksiteGround, chosen: readonly PlaceId[]): Drawing {
  const { width, height } = ground.frame;
  const rings = ground.views.flatMap(({ places }) =>
    places
      .filter(({ place }) => chosen.includes(place))
      .map(({ at }) => node("circle", { class: "chosen-place", cx: px(at.x), cy: px(at.y), r: 2 * MARK })),
  );
  return {
    width,
    height,
    layers: [
      node("g", { class: "layer-sky" }, [box("ground", { left: 0, top: 0, width, height })]),
      ...stillLayers(ground),
      node("g", { class: "layer-chosen" }, rings),
    ],
  };
}

/** The drawing of a scene. The layers of its ground are the same objects for every moment on that ground. */
export function drawingOf(scene: WorksiteScene): Drawing {
  const { ground, moment } = scene;
  const { frame } = ground;
  const night = moment.isDark === true ? " at-night" : moment.isDark === false ? " by-day" : "";
  const [under, names] = stillLayers(ground);
  const whole = { left: 0, top: 0, width: frame.width, height: frame.height };
  const layers = [
    node("g", { class: `layer-sky${night}` }, [box("ground", whole)]),
    under,
    node("g", { class: "layer-lines" }, scene.views.flatMap(lineNodes)),
    names,
    node(
      "g",
      { class: "layer-people" },
      scene.views.map((view) => node("g", {}, peopleNodes(view))),
    ),
    node("g", { class: "layer-foot" }, footNodes(scene)),
  ];
  return {
    width: frame.width,
    height: frame.height,
    layers: layers.filter((layer) => layer !== undefined),
  };
}

/** A drawing with the lines and people of another moment on the same ground under it, as what was planned. */
export function withGhost(drawing: Drawing, planned: WorksiteScene): Drawing {
  const ghost = node("g", { class: classes("layer-ghost", "ghost") }, [
    ...planned.views.flatMap(lineNodes),
    ...planned.views.flatMap(({ people }) =>
      people.map(({ at, look }) =>
        node("circle", { class: classes("line", `look-${look}`), cx: px(at.x), cy: px(at.y), r: BEAD + 3 }),
      ),
    ),
  ]);
  return { ...drawing, layers: drawing.layers.toSpliced(2, 0, ghost) };
}

function groundLayers({ views, picture }: WorksiteGround): readonly DrawnNode[] {
  const under = views.flatMap(({ view, part, ways, caption }) => [
    ...(caption === null
      ? []
      : [textAt(caption, { x: part.left + 12, y: part.top + 18 }, TYPE.foot, "foot")]),
    ...(view === "side"
      ? [straight("part-edge", { x: part.left, y: part.top }, { x: part.left + part.width, y: part.top })]
      : []),
    ...ways.map(({ from, to }) => straight("way", from, to)),
    ...ways.map(({ from, to }) => straight("way-inner", from, to)),
  ]);
  const below = picture
    ? [
        node("image", {
          href: picture.source,
          x: px(picture.box.left),
          y: px(picture.box.top),
          width: px(picture.box.width),
          height: px(picture.box.height),
          preserveAspectRatio: "none",
        }),
      ]
    : [];
  return [
    node("g", { class: "layer-ways" }, [...below, ...under]),
    node(
      "g",
      { class: "layer-places" },
      views.flatMap(({ places }) => places.flatMap(placeNodes)),
    ),
  ];
}

function placeNodes({ at, refuge, label }: GroundPlace): readonly DrawnNode[] {
  const isNumber = label.kind === "number";
  const { left, top, width, height } = label.box;
  const lines = label.lines.map((text, index) =>
    textAt(
      text,
      isNumber
        ? { x: left + width / 2, y: top + height / 2 + 5 }
        : { x: left + 2, y: top + (index + 1) * TYPE.line - 4 },
      TYPE.label,
      isNumber ? "label-number-text" : "label",
      isNumber ? { "text-anchor": "middle" } : {},
    ),
  );
  return [
    ...(label.lead ? [straight("lead", at, label.lead)] : []),
    ...(isNumber ? [box("label-number", { left, top, width, height }, { rx: 10 })] : []),
    node("circle", { class: "place", cx: px(at.x), cy: px(at.y), r: MARK - 3 }),
    ...(refuge ? [box("refuge", around(at, 2 * MARK, 2 * MARK), { rx: 3 })] : []),
    ...lines,
  ];
}

function lineNodes({ lines, home, shared }: SceneView): readonly DrawnNode[] {
  return [
    ...(home.length > 1 ? [node("path", { class: "home", d: pathOf(home) })] : []),
    ...lines.flatMap(lineNode),
    ...shared.map(({ x, y }) =>
      node("path", { class: "shared", d: `M${px(x)} ${px(y - 9)}l9 9l-9 9l-9 -9z` }),
    ),
  ];
}

function lineNode({ points, look, isSlack, isTooShort }: SceneLine): readonly DrawnNode[] {
  if (points.length < 2) return [];
  const name = classes("line", `look-${look}`, ...(isTooShort ? ["line-short"] : []));
  return [node("path", { class: name, d: isSlack ? slackPath(points) : pathOf(points), ...dashed(look) })];
}

/** How long a wave of a slack line is, and how far it swings, in px. */
const WAVE = { length: 26, swing: 5 } as const;

/** A line that hangs loose: it swings from side to side along its way. */
function slackPath(points: readonly DrawnPoint[]): string {
  return points
    .map((point, index) => {
      const before = points[index - 1];
      if (!before) return `M${px(point.x)} ${px(point.y)}`;
      const length = Math.hypot(point.x - before.x, point.y - before.y);
      const waves = Math.max(1, Math.round(length / WAVE.length));
      const [dx, dy] = [(point.x - before.x) / waves, (point.y - before.y) / waves];
      const [nx, ny] = length > 0 ? [(-dy * waves) / length, (dx * waves) / length] : [0, 0];
      return Array.from({ length: waves }, (_, wave) => {
        const swing = (wave % 2 === 0 ? 2 : -2) * WAVE.swing;
        const start = { x: before.x + dx * wave, y: before.y + dy * wave };
        const end = { x: start.x + dx, y: start.y + dy };
        const bend = { x: start.x + dx / 2 + nx * swing, y: start.y + dy / 2 + ny * swing };
        return `Q${px(bend.x)} ${px(bend.y)} ${px(end.x)} ${px(end.y)}`;
      }).join("");
    })
    .join("");
}

function peopleNodes({ people, counts }: SceneView): readonly DrawnNode[] {
  return [countsNode(counts), node("g", {}, people.map(leadNode)), node("g", {}, people.map(personNode))];
}

/** What is drawn as seen from a bead moves with it; only a card that goes to another slot moves against it, in a stage of its own. */
const movedTo = ({ x, y }: DrawnPoint) => `translate(${px(x)} ${px(y)})`;

const seenFrom = (at: DrawnPoint, { x, y }: DrawnPoint): DrawnPoint => ({ x: x - at.x, y: y - at.y });

function leadNode({ crew, at, lead }: ScenePerson): DrawnNode {
  const d = pathOf([{ x: 0, y: 0 }, seenFrom(at, lead)]);
  return node("path", { class: classes("lead", "card-lead"), transform: movedTo(at), d, "data-crew": crew });
}

const drawnCounts = new WeakMap<readonly SceneCount[], DrawnNode>();

/** The counts of a view, the same object while they are the same. */
function countsNode(counts: readonly SceneCount[]): DrawnNode {
  const drawn = drawnCounts.get(counts) ?? node("g", {}, counts.flatMap(countNodes));
  drawnCounts.set(counts, drawn);
  return drawn;
}

function countNodes({ items, at }: SceneCount): readonly DrawnNode[] {
  const middle = { x: at.x, y: at.y + MARK + 2 + COUNT_BOX.height / 2 };
  return [
    box("count", around(middle, COUNT_BOX.width, COUNT_BOX.height)),
    textAt(String(items.length), { x: middle.x, y: middle.y + 5 }, TYPE.foot, "count-text", {
      "text-anchor": "middle",
    }),
  ];
}

function personNode({ crew, look, doing, at, box: place, card }: ScenePerson): DrawnNode {
  const { left, top, width, height } = place;
  const ends = [
    { x: 6, y: 4 },
    { x: 6, y: height - 4 },
  ];
  const slot = node("g", { class: "card-slot", transform: movedTo(seenFrom(at, { x: left, y: top })) }, [
    box("card", { left: 0, top: 0, width, height }, { rx: 4 }),
    node("path", {
      class: classes("card-strand", `look-${look}`),
      d: doing === "waits" ? slackPath(ends) : pathOf(ends),
      ...dashed(look),
    }),
    ...card.lines.map(({ text, manner }, index) =>
      textAt(
        text,
        { x: 14, y: (index + 1) * TYPE.line - 1 },
        manner === "call" ? TYPE.call : TYPE.foot,
        `card-${manner}`,
      ),
    ),
  ]);
  return node(
    "g",
    {
      class: classes("person", `person-${doing}`),
      transform: movedTo(at),
      "data-crew": crew satisfies CrewId,
    },
    [node("circle", { class: classes("bead", `look-${look}`), r: BEAD }), slot],
  );
}

function footNodes({ ground, light }: WorksiteScene): readonly DrawnNode[] {
  const { frame, ruler, remark } = ground;
  const line = frame.height - 10;
  const nodes: DrawnNode[] = [];
  if (ruler) {
    const end = 12 + ruler.width;
    nodes.push(
      node("path", { class: "ruler", d: `M12 ${line - 6}v6H${px(end)}v-6` }),
      textAt(ruler.text, { x: end + 8, y: line }, TYPE.foot, "foot"),
    );
  }
  if (remark !== null) nodes.push(textAt(remark, { x: 12, y: line }, TYPE.foot, "foot"));
  if (light !== null)
    nodes.push(textAt(light, { x: frame.width - 12, y: line }, TYPE.foot, "foot", { "text-anchor": "end" }));
  return nodes;
}
