import type { ReactNode } from "react";

/** One entry of a list of facts: a name and its value. */
export function Fact({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
