import type { ReactNode } from "react";

/** One fact of a list of them: its name, and what it is. */
export function Fact({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
