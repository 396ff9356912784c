import type { RefObject } from "react";
import { useCallback, useLayoutEffect, useMemo, useRef, useState } from "react";
import type { Procedure } from "../../core/procedure/index.ts";
import type { DrawnPoint, WorksiteGround } from "../../core/worksite/index.ts";
import { groundOf } from "../../core/worksite/index.ts";
import { inWords } from "../../words/index.ts";
import type { MapRoom, MapView } from "./map-view.ts";
import { keepingInPlace, WHOLE, withinRoom, withinZoom } from "./map-view.ts";
import type { Gesture } from "./use-map-gestures.ts";

/** The size assumed where there is no layout, as in tests, in px. */
const UNMEASURED: MapRoom = { width: 700, height: 460 };

interface MapFrame {
  readonly ground: WorksiteGround;
  readonly view: MapView;
  readonly room: MapRoom;
  readonly settle: (gesture: Gesture) => void;
  /** Draws the map larger by some times, around the middle of the room. */
  readonly enlarge: (times: number) => void;
  readonly pan: (dx: number, dy: number) => void;
  readonly showWhole: () => void;
}

/** The room of the map as it is measured, the ground drawn for it, and what of it is seen. */
export function useMapFrame(element: RefObject<HTMLElement | null>, procedure: Procedure): MapFrame {
  const room = useRoom(element);
  const [view, setView] = useState<MapView>(WHOLE);
  const grounds = useRef(new WeakMap<Procedure, Map<string, WorksiteGround>>());
  const groundAt = useCallback(
    (zoom: number): WorksiteGround => {
      const kept = grounds.current.get(procedure) ?? new Map<string, WorksiteGround>();
      grounds.current.set(procedure, kept);
      const key = `${room.width} ${room.height} ${zoom.toFixed(4)}`;
      const ground = kept.get(key) ?? groundOf(procedure, { ...room, zoom }, inWords);
      // A pinch passes many sizes; only the last few are worth keeping.
      if (kept.size > 6) kept.clear();
      kept.set(key, ground);
      return ground;
    },
    [procedure, room],
  );
  const ground = useMemo(() => groundAt(view.zoom), [groundAt, view.zoom]);
  const change = (around: DrawnPoint, times: number, dx: number, dy: number) => {
    const zoom = withinZoom(view.zoom * times);
    const after = groundAt(zoom).frame;
    const kept = zoom === view.zoom ? view : keepingInPlace(view, ground.frame, after, around, zoom);
    setView(withinRoom({ zoom, x: kept.x + dx, y: kept.y + dy }, after, room));
  };
  const middle = { x: room.width / 2, y: room.height / 2 };
  return {
    ground,
    view: withinRoom(view, ground.frame, room),
    room,
    settle: ({ around, times, dx, dy }) => change(around, times, dx, dy),
    enlarge: (times) => change(middle, times, 0, 0),
    pan: (dx, dy) => change(middle, 1, dx, dy),
    showWhole: () => setView(WHOLE),
  };
}

function useRoom(element: RefObject<HTMLElement | null>): MapRoom {
  const [room, setRoom] = useState<MapRoom>(UNMEASURED);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = () => {
      const [width, height] = [target.clientWidth, target.clientHeight];
      setRoom((before) => {
        const next = { width: width || UNMEASURED.width, height: height || UNMEASURED.height };
        return before.width === next.width && before.height === next.height ? before : next;
      });
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, [element]);
  return room;
}
