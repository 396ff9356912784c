import type { WalkId } from "../../core/units/index.ts";
import { WalkReview } from "../review/index.ts";

/** The printable page of a review. The document is outside Ionic's pages, so that it prints in full. */
export function PrintReviewPage({ walk }: { readonly walk: string }) {
  return (
    <main className="print-walk">
      <WalkReview walk={walk as WalkId} sought={null} onPrint={() => window.print()} />
    </main>
  );
}
