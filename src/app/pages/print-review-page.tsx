import type { WalkId } from "../../core/units/index.ts";
import { WalkReview } from "../review/index.ts";

/** The printable review: the document itself, outside Ionic's pages, so that it prints whole. */
export function PrintReviewPage({ walk }: { readonly walk: string }) {
  return (
    <main>
      <WalkReview walk={walk as WalkId} onPrint={() => window.print()} />
    </main>
  );
}
