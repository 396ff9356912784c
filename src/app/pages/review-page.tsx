import { useParams, useSearchParams } from "react-router-dom";
import type { StepId, WalkId } from "../../core/units/index.ts";
import { words } from "../../words/index.ts";
import { WalkReview } from "../review/index.ts";
import { ScreenPage } from "./screen-page.tsx";

/** The page with the review of a walk. */
export function ReviewPage() {
  const { walk = "" } = useParams();
  const [search] = useSearchParams();
  return (
    <ScreenPage
      screen="review"
      title={words("parts/review")}
      what={words("review/as-flown-against-plan")}
      isHeading={false}
      to={[
        { path: `/follow/${walk}`, name: words("parts/follow") },
        { path: `/timeline/${walk}`, name: words("parts/timeline") },
        { path: `/brief/walk/${walk}`, name: words("brief/brief") },
      ]}
    >
      <WalkReview
        walk={walk as WalkId}
        sought={search.get("step") as StepId | null}
        onPrint={() => window.location.assign(`/print-walk/${encodeURIComponent(walk)}`)}
      />
    </ScreenPage>
  );
}
