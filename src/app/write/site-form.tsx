import type { Change, Fields, ProcedureFile } from "../../core/procedure/index.ts";
import type { GestureName } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { headSchema } from "./field-schema.ts";
import { MemberFields } from "./schema-fields.tsx";
import type { FormContext } from "./typed-fields.tsx";

interface SiteFormProps {
  readonly file: ProcedureFile;
  readonly context: FormContext;
  readonly onChanges: (name: GestureName, changes: readonly Change[]) => void;
}

const BUT_SITE: ReadonlySet<string> = new Set(
  Object.keys(headSchema.properties ?? {}).filter((key) => key !== "site"),
);
const SITE_ALONE = { ...headSchema, required: [] };

/** Lays one of the pictures under the map, and says where it lies there in metres ([WRT5]). Nothing without a picture. */
export function SiteForm({ file, context, onChanges }: SiteFormProps) {
  const first = file.pictures?.[0];
  if (!first && !file.site) return null;
  return (
    <section className="write-member" aria-labelledby="write-site">
      <h3 id="write-site">{words("write/site")}</h3>
      <p className="hint">{words("write/site-how")}</p>
      {file.site ? (
        <MemberFields
          context={context}
          schema={SITE_ALONE}
          value={file as Fields}
          without={BUT_SITE}
          onField={(_, site) =>
            onChanges("set", [site === undefined ? { head: {}, unset: ["site"] } : { head: { site } }])
          }
        />
      ) : (
        <button
          type="button"
          className="plain-button"
          onClick={() =>
            onChanges("set", [{ head: { site: { picture: first?.id ?? "", ...aroundPlaces(file) } } }])
          }
        >
          {words("write/site-lay")}
        </button>
      )}
    </section>
  );
}

/** Metres beyond the outermost places. */
const MARGIN = 1;

/** The part of the worksite that the places take, in metres; ten by ten where none has a position. */
function aroundPlaces({ places = [] }: ProcedureFile) {
  const known = places.flatMap(({ x, y }) => (x === undefined || y === undefined ? [] : [{ x, y }]));
  const [xs, ys] = [known.map(({ x }) => x), known.map(({ y }) => y)];
  if (known.length === 0) return { left: 0, top: 10, width: 10, height: 10 };
  const [left, top] = [Math.min(...xs) - MARGIN, Math.max(...ys) + MARGIN];
  return {
    left,
    top,
    width: Math.max(...xs) + MARGIN - left,
    height: top - (Math.min(...ys) - MARGIN),
  };
}
