import type { DrawnPoint, Rectangle } from "./rectangle.ts";
import { nearestIn } from "./rectangle.ts";
import type { ScenePerson, SceneView, WorksiteScene } from "./scene.ts";

/** So near to where it is to stand a card stands there, in px. */
const THERE = 1;

/**
 * The scene with its cards on the way from where they stand in the one before: each has gone `share` of the way that is left, as
 * seen from its bead ([MAP7]). For pictures that are made one by one; a screen lets its cards slide by itself.
 */
export function slidingFrom(
  before: WorksiteScene | null,
  scene: WorksiteScene,
  share: number,
): WorksiteScene {
  if (!before) return scene;
  return {
    ...scene,
    views: scene.views.map((view) => {
      const was = before.views.find((one) => one.ground.view === view.ground.view);
      return was ? { ...view, people: view.people.map((person) => slid(was, person, share)) } : view;
    }),
  };
}

function slid({ people }: SceneView, person: ScenePerson, share: number): ScenePerson {
  const was = people.find(({ crew }) => crew === person.crew);
  if (!was) return person;
  const [from, to] = [middleFrom(was), middleFrom(person)];
  const left = { x: (from.x - to.x) * (1 - share), y: (from.y - to.y) * (1 - share) };
  if (Math.hypot(left.x, left.y) < THERE) return person;
  const box = { ...person.box, left: person.box.left + left.x, top: person.box.top + left.y };
  return { ...person, box, lead: nearestIn(box, person.at) };
}

/** The middle of a card as seen from its bead. */
function middleFrom({ at, box }: { readonly at: DrawnPoint; readonly box: Rectangle }): DrawnPoint {
  return { x: box.left + box.width / 2 - at.x, y: box.top + box.height / 2 - at.y };
}
