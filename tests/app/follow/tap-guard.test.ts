import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { STEADY_FOR, TapGuard } from "../../../src/app/follow/tap-guard.ts";

const HIGH = 76;

/** A control of a size that a mark has, which can be put anywhere. */
function controlAt(left: number, top: number) {
  const place = { left, top };
  const element = {
    getBoundingClientRect: () => ({ ...place, right: place.left + 250, bottom: place.top + HIGH }),
  } as unknown as Element;
  return { element, put: (nextTop: number) => Object.assign(place, { top: nextTop }) };
}

function guarded() {
  let now = 10_000;
  const guard = new TapGuard(() => now);
  return {
    guard,
    pass: (time: number) => {
      now += time;
    },
  };
}

const at = (y: number) => ({ x: 100, y });

describe("[OFF1] a tap marks one step", () => {
  it("[OFF1] a tap on a control that has been there long enough counts", () => {
    const { guard, pass } = guarded();
    const { element } = controlAt(0, 100);
    guard.look([element]);
    pass(STEADY_FOR);
    expect(guard.judge(element, at(130))).toBeNull();
  });

  it.each([60, 200, 350, 699])("[OFF1] the second tap of a double tap %i ms apart marks nothing", (gap) => {
    const { guard, pass } = guarded();
    const [one, next] = [controlAt(0, 100), controlAt(0, 100)];
    guard.look([one.element]);
    pass(5_000);
    expect(guard.judge(one.element, at(130))).toBeNull();
    pass(gap);
    guard.look([next.element]);
    expect(guard.judge(next.element, at(131))).toBe("twice");
  });

  it("[OFF1] a control that came under the finger less than 700 ms ago marks nothing, and later it does", () => {
    const { guard, pass } = guarded();
    const { element, put } = controlAt(0, 400);
    guard.look([element]);
    pass(5_000);
    put(100);
    guard.look([element]);
    pass(STEADY_FOR - 1);
    expect(guard.judge(element, at(130))).toBe("moved");
    pass(1);
    expect(guard.judge(element, at(130))).toBeNull();
  });

  it("[OFF1] a control that moved and came back in between is told by where it was in the meantime", () => {
    const { guard, pass } = guarded();
    const { element, put } = controlAt(0, 100);
    guard.look([element]);
    pass(5_000);
    put(400);
    guard.look([element]);
    pass(100);
    put(100);
    guard.look([element]);
    expect(guard.judge(element, at(130))).toBe("moved");
  });

  it("[OFF1] a control that moved a little, and was under the finger all the time, marks its step", () => {
    const { guard, pass } = guarded();
    const { element, put } = controlAt(0, 100);
    guard.look([element]);
    pass(5_000);
    put(120);
    guard.look([element]);
    pass(100);
    expect(guard.judge(element, at(150))).toBeNull();
  });

  it("[OFF1] one control that was not looked at before is new", () => {
    const { guard } = guarded();
    expect(guard.judge(controlAt(0, 100).element, at(130))).toBe("moved");
  });

  it("[OFF1] another person's control, elsewhere and still, is marked at once", () => {
    const { guard, pass } = guarded();
    const [one, other] = [controlAt(0, 100), controlAt(0, 400)];
    guard.look([one.element, other.element]);
    pass(5_000);
    expect(guard.judge(one.element, at(130))).toBeNull();
    pass(150);
    expect(guard.judge(other.element, at(430))).toBeNull();
  });

  it("[OFF1] a key pressed twice does not mark the control that the focus came to", () => {
    const { guard, pass } = guarded();
    const [one, next] = [controlAt(0, 100), controlAt(0, 300)];
    guard.look([one.element]);
    pass(5_000);
    expect(guard.judge(one.element, null)).toBeNull();
    guard.look([next.element]);
    pass(120);
    expect(guard.judge(next.element, null)).toBe("moved");
    pass(STEADY_FOR);
    expect(guard.judge(next.element, null)).toBeNull();
  });

  it("[OFF1] however a control moves, no tap counts at a point that it did not cover for 700 ms", () => {
    const moves = fc.array(
      fc.record({ wait: fc.integer({ min: 0, max: 900 }), top: fc.integer({ min: 0, max: 300 }) }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(moves, fc.integer({ min: 0, max: 376 }), (steps, y) => {
        const { guard, pass } = guarded();
        const { element, put } = controlAt(0, 0);
        let time = 0;
        const history: { readonly from: number; readonly top: number }[] = [];
        for (const { wait, top } of steps) {
          put(top);
          guard.look([element]);
          history.push({ from: time, top });
          pass(wait);
          time += wait;
        }
        const counted = guard.judge(element, at(y)) === null;
        const inWindow = history.filter(
          (_, index) => (history[index + 1]?.from ?? Number.POSITIVE_INFINITY) > time - STEADY_FOR,
        );
        const covered = time >= STEADY_FOR && inWindow.every(({ top }) => y >= top && y <= top + HIGH);
        expect(counted).toBe(covered);
      }),
    );
  });
});
