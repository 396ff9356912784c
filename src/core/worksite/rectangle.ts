/** A point of the drawing in px, `y` downwards. */
export interface DrawnPoint {
  readonly x: number;
  readonly y: number;
}

/** An upright rectangle of the drawing in px. */
export interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** True when two rectangles have an area in common. Rectangles that only touch have none. */
export function overlap(a: Rectangle, b: Rectangle): boolean {
  return (
    a.left < b.left + b.width &&
    b.left < a.left + a.width &&
    a.top < b.top + b.height &&
    b.top < a.top + a.height
  );
}

/** True when a rectangle lies wholly within another one. */
export function isInside(inner: Rectangle, outer: Rectangle): boolean {
  return (
    inner.left >= outer.left &&
    inner.top >= outer.top &&
    inner.left + inner.width <= outer.left + outer.width &&
    inner.top + inner.height <= outer.top + outer.height
  );
}

/** A rectangle around a point. */
export function around({ x, y }: DrawnPoint, width: number, height: number): Rectangle {
  return { left: x - width / 2, top: y - height / 2, width, height };
}

/** The point of a rectangle that is nearest to a point. */
export function nearestIn({ left, top, width, height }: Rectangle, { x, y }: DrawnPoint): DrawnPoint {
  return {
    x: Math.min(Math.max(x, left), left + width),
    y: Math.min(Math.max(y, top), top + height),
  };
}

/** A straight piece of the drawing. */
export interface Segment {
  readonly from: DrawnPoint;
  readonly to: DrawnPoint;
}

/** True when a segment runs through a rectangle (Liang and Barsky 1984). */
export function crosses({ from, to }: Segment, { left, top, width, height }: Rectangle): boolean {
  let [enters, leaves] = [0, 1];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  for (const [step, room] of [
    [-dx, from.x - left],
    [dx, left + width - from.x],
    [-dy, from.y - top],
    [dy, top + height - from.y],
  ] as const) {
    if (step === 0 && room <= 0) return false;
    if (step === 0) continue;
    const at = room / step;
    if (step < 0) enters = Math.max(enters, at);
    else leaves = Math.min(leaves, at);
  }
  return enters < leaves;
}
