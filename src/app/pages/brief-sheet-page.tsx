import { useState } from "react";
import type { WalkId } from "../../core/units/index.ts";
import type { Briefed } from "../brief/index.ts";
import { AudienceView, Storyboard, useBriefedPlan, useBriefedWalk } from "../brief/index.ts";
import { startInQuery } from "../session/index.ts";

interface BriefSheetPageProps {
  /** The procedure or, for the kinds that end in `-walk`, the walk. */
  readonly id: string;
  readonly as: "storyboard" | "storyboard-walk" | "audience" | "audience-walk";
}

/** The storyboard of a briefing and its window for the audience, which are outside Ionic's pages and fill a page of their own. */
export function BriefSheetPage({ id, as }: BriefSheetPageProps) {
  return as === "storyboard-walk" || as === "audience-walk" ? (
    <WalkSheet id={id} isAudience={as === "audience-walk"} />
  ) : (
    <PlanSheet id={id} isAudience={as === "audience"} />
  );
}

interface SheetProps {
  readonly id: string;
  readonly isAudience: boolean;
}

function PlanSheet({ id, isAudience }: SheetProps) {
  const [start] = useState(() => startInQuery(window.location.search));
  return <Sheet briefed={useBriefedPlan(id, start)} name={`plan:${id}`} isAudience={isAudience} />;
}

function WalkSheet({ id, isAudience }: SheetProps) {
  return <Sheet briefed={useBriefedWalk(id as WalkId)} name={`walk:${id}`} isAudience={isAudience} />;
}

function Sheet({
  briefed: { briefing, kind, told },
  name,
  isAudience,
}: {
  readonly briefed: Briefed;
  readonly name: string;
  readonly isAudience: boolean;
}) {
  if (!briefing) {
    return (
      <main className="page-message" role="status">
        <p>{told}</p>
      </main>
    );
  }
  return isAudience ? (
    <AudienceView briefing={briefing} kind={kind} name={name} />
  ) : (
    <Storyboard briefing={briefing} kind={kind} />
  );
}
