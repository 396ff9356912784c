import { useMemo } from "react";
import type { Course } from "../../core/course/index.ts";
import type { WorksiteGround } from "../../core/worksite/index.ts";
import { drawingOf, WORKSITE_STYLE } from "../../core/worksite/index.ts";
import type { ShownPet } from "../worksite/index.ts";
import { MovingLayers, useShownScene } from "../worksite/index.ts";

/** The layers that a question hides: they are its answer. */
const ANSWER = /layer-(people|lines)/;

interface SitePictureProps {
  readonly ground: WorksiteGround;
  readonly course: Course;
  readonly shown: ShownPet;
  /** What the picture is, for a screen reader. */
  readonly name: string;
  /** True while people, lines and items are not shown. */
  readonly isAsked?: boolean;
  /** True while it moves: its figures are told in whole metres then. */
  readonly isPlaying?: boolean;
}

/** The worksite at the PET that is shown of a course, as large as there is room. */
export function SitePicture({
  ground,
  course,
  shown,
  name,
  isAsked = false,
  isPlaying = false,
}: SitePictureProps) {
  const scene = useShownScene({ ground, course, shown, detail: "full", isWhole: isPlaying });
  const drawing = useMemo(() => {
    const layers = () => drawingOf(scene.scene()).layers;
    const unanswered = () => layers().filter(({ attributes }) => !ANSWER.test(String(attributes["class"])));
    return { subscribe: scene.subscribe, layers: isAsked ? unanswered : layers };
  }, [scene, isAsked]);
  const { width, height } = ground.frame;
  return (
    <svg className="worksite brief-map" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={name}>
      <style>{WORKSITE_STYLE}</style>
      <MovingLayers drawing={drawing} />
    </svg>
  );
}
