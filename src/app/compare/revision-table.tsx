import { words } from "../../words/index.ts";
import type { ShelfRevision } from "../shelf/index.ts";
import "./compare.css";

/** The revisions of one procedure on the shelf, each with who, when and why ([WRT7]). */
export function RevisionTable({ revisions }: { readonly revisions: readonly ShelfRevision[] }) {
  if (revisions.length === 0) return null;
  return (
    <section aria-labelledby="compare-revisions" className="compare-revisions">
      <h2 id="compare-revisions">{words("compare/revisions")}</h2>
      <table className="effect-table">
        <thead>
          <tr>
            <th scope="col">{words("compare/revision-column")}</th>
            <th scope="col">{words("compare/when-column")}</th>
            <th scope="col">{words("compare/who-column")}</th>
            <th scope="col">{words("compare/why-column")}</th>
          </tr>
        </thead>
        <tbody>
          {revisions.map(({ key, revision, at, saved }) => (
            <tr key={key}>
              <th scope="row">{revision ?? "–"}</th>
              <td>{at === null ? words("compare/bundled") : words("compare/at", { at })}</td>
              <td>{saved?.by ?? words("compare/not-said")}</td>
              <td>{saved?.why ?? words("compare/not-said")}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {revisions.length === 1 && <p className="hint">{words("compare/one-only")}</p>}
    </section>
  );
}
