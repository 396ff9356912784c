import { lazy, type ReactNode, Suspense } from "react";
import { words } from "../../words/index.ts";
import { MissingPart } from "../parts/index.ts";
import type { ExtractViewProps } from "./extract-view.tsx";
import type { SealSectionProps } from "./seal-section.tsx";
import type { WalkCodeProps } from "./walk-code.tsx";

const Section = lazy(async () => ({ default: (await import("./seal-section.tsx")).SealSection }));
const Extract = lazy(async () => ({ default: (await import("./extract-view.tsx")).ExtractView }));
const Code = lazy(async () => ({ default: (await import("./walk-code.tsx")).WalkCode }));

/** Whether the log of a walk is as it was entered, loaded when it is first shown. */
export function LazySealSection(props: SealSectionProps) {
  return (
    <Later>
      <Section {...props} />
    </Later>
  );
}

/** The voice code of a walk that goes on, loaded when it is first shown. */
export function LazyWalkCode(props: WalkCodeProps) {
  return (
    <Later>
      <Code {...props} />
    </Later>
  );
}

/** The file of an extract, loaded when it is first shown. */
export function LazyExtractView(props: ExtractViewProps) {
  return (
    <Later>
      <Extract {...props} />
    </Later>
  );
}

function Later({ children }: { readonly children: ReactNode }) {
  return (
    <MissingPart said={words("seal/missing")}>
      <Suspense fallback={<p role="status">{words("seal/loading")}</p>}>{children}</Suspense>
    </MissingPart>
  );
}
