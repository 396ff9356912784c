import type { Cause, Finding, Outline } from "../procedure/index.ts";
import type { StepId } from "../units/index.ts";

const CUSTODY = /^custody\//;
const NEED = /^(?:state\/(?:not-set|unset|between)|place\/way-closed)$/;
const ASTRAY = "place/not-there";

/** The most findings that are looked at as causes of others. In a file with more, the rest stand for themselves. */
const MOST_CAUSES = 300;

/**
 * Returns the findings with the one that each follows from ([CHK1]). What is wrong with an item, a place or a state
 * stays wrong in the steps behind, so that the first finding of it is the cause of the others.
 */
export function withCauses(outline: Outline, findings: readonly Finding[]): Finding[] {
  const indexOf = (id: StepId | undefined) => (id === undefined ? -1 : (outline.step(id)?.index ?? -1));
  // Each finding that was looked at so far, with the one that it stands under: itself where it follows from none.
  const roots = new Map<Finding, Cause>();
  const inOrder = findings
    .map((one, position) => ({ one, position }))
    .sort((a, b) => firstStep(indexOf, a.one) - firstStep(indexOf, b.one) || a.position - b.position);
  const causes = new Map<Finding, Cause>();
  for (const { one } of inOrder) {
    const known = [...roots.keys()].find((earlier) => isCause(outline, earlier, one));
    const cause = one.follows ?? (known && roots.get(known));
    if (cause) causes.set(one, { code: cause.code, pointer: cause.pointer });
    if (roots.size < MOST_CAUSES) roots.set(one, cause ?? one);
  }
  return findings.map((one) => ({ ...one, follows: causes.get(one) ?? null }));
}

/** True for a finding about the end of the walk: what is left outside, or is not where or as it should be then. */
export const isAboutTheEnd = ({ code }: Pick<Finding, "code">): boolean => /left-outside|its-end$/.test(code);

/** Where a finding stands among the steps; one about no step, or about the end of the walk, comes last. */
function firstStep(indexOf: (id: StepId | undefined) => number, one: Finding): number {
  const { code, steps } = one;
  // Two steps that get in each other's way do so when the later one comes.
  const index = indexOf(code === "order/race" ? steps.at(-1) : steps[0]);
  return isAboutTheEnd(one) || index < 0 ? Number.POSITIVE_INFINITY : index;
}

function isCause(outline: Outline, root: Finding, one: Finding): boolean {
  const shares = root.things.some((thing) => one.things.includes(thing));
  if (root.code === ASTRAY) return isWhileAstray(outline, root, one);
  const isOfItem = one.things.includes(root.things[0] ?? "");
  if (CUSTODY.test(one.code)) return isOfItem && (CUSTODY.test(root.code) || root.code === "order/race");
  // A performer who was forgotten keeps no order either.
  if (one.code === "order/race" && root.code === "custody/receiver-absent")
    return isOfItem && sharesStep(root, one);
  // What opens a way stands too late: whoever does it has gone on by then.
  if (root.code === "place/way-closed" && one.code === ASTRAY) return sharesStep(root, one);
  if (root.code === "state/race") return one.code.startsWith("state/") && shares && sharesStep(root, one);
  if (NEED.test(root.code) && NEED.test(one.code)) {
    const [state, other] = [one.things.at(-1), root.things.at(-1)];
    return state === other && sharesStep(root, one);
  }
  return false;
}

const sharesStep = (a: Finding, b: Finding) => a.steps.some((step) => b.steps.includes(step));

/**
 * True for a finding on where a crew member is, or on what that crew member moves, before it goes somewhere else: it is
 * looked for where the step that is wrong has put it.
 */
function isWhileAstray(outline: Outline, root: Finding, one: Finding): boolean {
  if (!CUSTODY.test(one.code) && one.code !== ASTRAY && !one.code.startsWith("tether/")) return false;
  const from = outline.step(root.steps[0] ?? "")?.index;
  const until = outline.step(one.steps[0] ?? "");
  if (from === undefined || !until || until.index < from) return false;
  const crew = outline.crew.find(({ id }) => id === root.things[0])?.id;
  if (crew === undefined || !until.step.by.includes(crew)) return false;
  for (let index = from; index < until.index; index += 1) {
    const step = outline.steps[index]?.step;
    if (step?.to !== undefined && step.by.includes(crew)) return false;
  }
  return true;
}

/** The findings in the order in which they are listed: errors first, and under each one what follows from it. */
export function inListOrder(findings: readonly Finding[]): Finding[] {
  const levels = { error: 0, caution: 1, advice: 2 } as const;
  const isOf = (cause: Finding) => (one: Finding) =>
    one.follows?.code === cause.code && one.follows.pointer === cause.pointer;
  const placed = new Set<Finding>();
  const listed: Finding[] = [];
  const place = (one: Finding) => {
    if (placed.has(one)) return;
    placed.add(one);
    listed.push(one);
    for (const follower of findings.filter(isOf(one))) place(follower);
  };
  for (const one of [...findings].sort((a, b) => levels[a.level] - levels[b.level])) {
    if (one.follows === null) place(one);
  }
  // Two that name each other, or a cause that was left out, must not take a finding off the list.
  for (const one of findings) place(one);
  return listed;
}
