import type { Place, Procedure } from "../procedure/index.ts";
import type { PlaceId } from "../units/index.ts";
import type { SitePoint, WorksiteLayout } from "./layout.ts";
import { layoutOf } from "./layout.ts";
import type { DrawnPoint, Rectangle } from "./rectangle.ts";

/** The room that a drawing of the worksite is given, and how much of it the worksite fills. */
export interface FrameSize {
  /** In px; what is drawn is never smaller than this. */
  readonly width: number;
  readonly height: number;
  /** 1 shows the whole worksite in the room; 2 draws it twice as large. */
  readonly zoom: number;
}

/** How the worksite is put on paper: seen from above, and below that from the side where heights differ. */
export interface WorksiteFrame {
  readonly layout: WorksiteLayout;
  /** Px for a metre, the same both ways and in both views. */
  readonly scale: number;
  readonly width: number;
  readonly height: number;
  /** The part in which the worksite is seen from above. */
  readonly plan: Rectangle;
  /** The part in which it is seen from the side, `x` against `z`; `null` where all places are of one height. */
  readonly side: Rectangle | null;
  toPlan(point: SitePoint): DrawnPoint;
  /** The metres that a point in the view from above stands for. */
  fromPlan(point: DrawnPoint): Pick<SitePoint, "x" | "y">;
  /** `null` without a side view. */
  toSide(point: SitePoint): DrawnPoint | null;
}

/** Room around the places for their labels, in px. */
const ROOM = { across: 76, above: 46, below: 40, side: 36, foot: 28 } as const;
/** Px for a metre where all places lie at one point. */
const SCALE_OF_A_POINT = 20;
/** The least that the places themselves are drawn in, in px. */
const LEAST = { width: 200, height: 110 } as const;

/** The part of a site in metres. */
interface Extent {
  readonly least: SitePoint;
  readonly most: SitePoint;
}

function extentOf({ places }: WorksiteLayout, site: Procedure["site"]): Extent {
  const all: SitePoint[] = [...places.values()];
  if (site) {
    const { left, top, width, height } = site;
    const z = all[0]?.z ?? 0;
    all.push({ x: left, y: top, z }, { x: left + width, y: top - height, z });
  }
  const bound = (pick: (numbers: number[]) => number): SitePoint => ({
    x: pick(all.map(({ x }) => x)),
    y: pick(all.map(({ y }) => y)),
    z: pick(all.map(({ z }) => z)),
  });
  if (all.length === 0) return { least: { x: 0, y: 0, z: 0 }, most: { x: 0, y: 0, z: 0 } };
  return {
    least: bound((numbers) => numbers.reduce((a, b) => Math.min(a, b))),
    most: bound((numbers) => numbers.reduce((a, b) => Math.max(a, b))),
  };
}

/** Puts the places of a procedure on paper: from above with `x` to the right and `y` up, from the side with `z` up. */
export function frameOf(procedure: Procedure, size: FrameSize): WorksiteFrame {
  const layout = layoutOf(procedure);
  const { least, most } = extentOf(layout, procedure.site);
  const [dx, dy] = [most.x - least.x, most.y - least.y];
  const dz = layout.hasHeight ? most.z - least.z : 0;
  const across = Math.min(ROOM.across, Math.max(LEAST.width, size.width) * 0.16);
  const sideRoom = layout.hasHeight ? 2 * ROOM.side : 0;
  const free = {
    width: Math.max(LEAST.width, size.width) - 2 * across,
    height: Math.max(LEAST.height, size.height - ROOM.above - ROOM.below - sideRoom - ROOM.foot),
  };
  const fitting = Math.min(
    dx > 0 ? free.width / dx : Number.POSITIVE_INFINITY,
    dy + dz > 0 ? free.height / (dy + dz) : Number.POSITIVE_INFINITY,
  );
  const scale = (Number.isFinite(fitting) ? fitting : SCALE_OF_A_POINT) * size.zoom;
  const width = Math.max(size.width, dx * scale + 2 * across);
  const sideHeight = layout.hasHeight ? dz * scale + sideRoom : 0;
  const planHeight = Math.max(size.height - sideHeight - ROOM.foot, dy * scale + ROOM.above + ROOM.below);
  const left = (width - dx * scale) / 2;
  const top = (planHeight - ROOM.above - ROOM.below - dy * scale) / 2 + ROOM.above;
  const sideBottom = planHeight + sideHeight - ROOM.side;
  return {
    layout,
    scale,
    width,
    height: planHeight + sideHeight + ROOM.foot,
    plan: { left: 0, top: 0, width, height: planHeight },
    side: layout.hasHeight ? { left: 0, top: planHeight, width, height: sideHeight } : null,
    toPlan: ({ x, y }) => ({ x: left + (x - least.x) * scale, y: top + (most.y - y) * scale }),
    fromPlan: ({ x, y }) => ({ x: (x - left) / scale + least.x, y: most.y - (y - top) / scale }),
    toSide: ({ x, z }) =>
      layout.hasHeight ? { x: left + (x - least.x) * scale, y: sideBottom - (z - least.z) * scale } : null,
  };
}

/** The position of a place in metres. */
export function pointOf({ layout }: Pick<WorksiteFrame, "layout">, place: PlaceId): SitePoint {
  return layout.places.get(place) ?? { x: 0, y: 0, z: 0 };
}

/** What a place is called. */
export const placeName = ({ id, label }: Place): string => label ?? id;
