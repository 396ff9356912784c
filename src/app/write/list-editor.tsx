import { lazy, Suspense, useMemo, useState } from "react";
import { rollOf } from "../../core/changes/index.ts";
import type { Change, Fields, ListName, ProcedureFile } from "../../core/procedure/index.ts";
import { pictureSource } from "../../core/procedure/index.ts";
import type { GestureName } from "../../core/write/index.ts";
import { freeIdsIn } from "../../core/write/index.ts";
import { words } from "../../words/index.ts";
import { SelectField } from "../parts/index.ts";
import { AddPictures } from "./add-pictures.tsx";
import { choicesIn, firstValue, headSchema, listNamedBy, memberSchema } from "./field-schema.ts";
import { PlaceMap } from "./place-map.tsx";
import { MemberFields } from "./schema-fields.tsx";
import { SiteForm } from "./site-form.tsx";
import { fieldChanges } from "./step-details.tsx";
import type { FormContext } from "./typed-fields.tsx";

const LanguageTexts = lazy(async () => ({ default: (await import("./language-texts.tsx")).LanguageTexts }));

/** The lists that have forms of their own, the head of the file first ([WRT5]). */
const LISTS = [
  "head",
  "crew",
  "places",
  "routes",
  "items",
  "windows",
  "supplies",
  "watches",
  "states",
  "contingencies",
  "pictures",
  "words",
] as const;

type EditedList = (typeof LISTS)[number];

/** What stands at the head of the file and in no list. */
const OF_HEAD = ["title", "summary", "setting", "limits", "language"] as const;
const NOT_OF_HEAD: ReadonlySet<string> = new Set(
  Object.keys(headSchema.properties ?? {}).filter((key) => !(OF_HEAD as readonly string[]).includes(key)),
);

/** What is written elsewhere: the tasks of a contingency in the table, the letters of a picture nowhere. */
const ELSEWHERE: Readonly<Partial<Record<ListName, ReadonlySet<string>>>> = {
  contingencies: new Set(["tasks"]),
  pictures: new Set(["data", "type"]),
};
const NOTHING: ReadonlySet<string> = new Set();

interface ListEditorProps {
  readonly file: ProcedureFile;
  readonly onChanges: (name: GestureName, changes: readonly Change[]) => void;
}

/** The lists of a procedure with a form for each member; every edit is one gesture ([WRT5]). */
export function ListEditor({ file, onChanges }: ListEditorProps) {
  const [list, setList] = useState<EditedList>("crew");
  const context = useMemo(
    (): FormContext => ({ list, choicesOf: (of) => ({ choices: choicesIn(file, of), possible: null }) }),
    [file, list],
  );
  return (
    <section className="write-lists" aria-labelledby="write-lists">
      <h2 id="write-lists">{words("write/lists")}</h2>
      <SelectField
        label={words("write/which-list")}
        choices={LISTS.map((id) => ({ id, name: words(`write/list-${id}`) }))}
        value={list}
        onValue={setList}
      />
      {list === "head" ? (
        <div className="write-member">
          <MemberFields
            context={context}
            schema={headSchema}
            value={file as Fields}
            without={NOT_OF_HEAD}
            onField={(key, value) =>
              onChanges("set", [
                value === undefined ? { head: {}, unset: [key] } : { head: { [key]: value } },
              ])
            }
          />
        </div>
      ) : list === "words" ? (
        <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
          <LanguageTexts file={file} onChanges={onChanges} />
        </Suspense>
      ) : (
        <Members key={list} file={file} list={list} context={context} onChanges={onChanges} />
      )}
    </section>
  );
}

interface MembersProps extends ListEditorProps {
  readonly list: Exclude<EditedList, "head" | "words">;
  readonly context: FormContext;
}

function Members({ file, list, context, onChanges }: MembersProps) {
  const schema = memberSchema(list);
  const members = [...rollOf(file as Fields, list).members.values()];
  const [problem, setProblem] = useState<string | null>(null);
  const add = () => {
    const made = newMember(file, list, context);
    if (made === null)
      return setProblem(words(list === "routes" ? "write/needs-places" : "write/needs-crew"));
    setProblem(null);
    const last = members.at(-1);
    onChanges("add", [{ add: made, list, ...(last ? { behind: last.id } : { first: true as const }) }]);
  };
  return (
    <>
      {list === "places" && <PlaceMap file={file} onChanges={onChanges} />}
      {members.length === 0 && <p className="hint">{words("write/none-yet")}</p>}
      {members.map(({ id, member }, index) => (
        <details key={id} className="write-member" open={members.length < 4 || index === members.length - 1}>
          <summary>{memberName(file, list, id, member)}</summary>
          {list === "pictures" && (
            <img
              className="write-picture"
              src={pictureSource(member as unknown as Parameters<typeof pictureSource>[0])}
              alt=""
            />
          )}
          <MemberFields
            context={context}
            schema={schema}
            value={member}
            without={ELSEWHERE[list] ?? NOTHING}
            onField={(key, value) =>
              onChanges(key === "id" ? "rename" : "set", memberChanges(list, id, member, key, value))
            }
          />
          <button
            type="button"
            className="plain-button"
            onClick={() => onChanges("drop", [{ drop: id, list }])}
          >
            {words("write/take-out-field", { field: memberName(file, list, id, member) })}
          </button>
        </details>
      ))}
      {problem !== null && <p role="alert">{problem}</p>}
      {list === "pictures" ? (
        <>
          <AddPictures file={file} onChanges={onChanges} />
          <SiteForm file={file} context={context} onChanges={onChanges} />
        </>
      ) : (
        <button type="button" className="main-button" onClick={add}>
          {words("write/add-to-list", { list: words(`write/list-${list}`) })}
        </button>
      )}
    </>
  );
}

/** The changes of a field; one that makes the id of a route or a supply gives it another id. */
function memberChanges(
  list: ListName,
  id: string,
  member: Fields,
  key: string,
  value: unknown,
): readonly Change[] {
  if (list === "routes" && key === "between" && Array.isArray(value))
    return [{ rename: id, list, to: value.join(" ") }];
  if (list === "supplies" && (key === "crew" || key === "id"))
    return [
      {
        rename: id,
        list,
        to: `${String(key === "crew" ? value : member["crew"])} ${String(key === "id" ? value : member["id"])}`,
      },
    ];
  return fieldChanges(list, id, key, value);
}

function memberName(file: ProcedureFile, list: ListName, id: string, member: Fields): string {
  if (list === "routes") {
    const names = new Map(choicesIn(file, "places").map((one) => [one.id, one.name]));
    return id
      .split(" ")
      .map((end) => names.get(end) ?? end)
      .join(" – ");
  }
  return String(member["call"] ?? member["label"] ?? member["title"] ?? member["do"] ?? id);
}

/** A new member with the least that it needs; `null` where there is nothing yet that it could name. */
function newMember(
  file: ProcedureFile,
  list: Exclude<EditedList, "head" | "words">,
  context: FormContext,
): Fields | null {
  const named = (path: readonly string[]) => {
    const of = listNamedBy(list, path);
    return of && context.choicesOf(of, path).choices;
  };
  const { places = [], routes = [], supplies = [] } = file;
  if (list === "routes") {
    const isJoined = (a: string, b: string) =>
      routes.some(({ between }) => between.includes(a) && between.includes(b));
    for (const [at, from] of places.entries())
      for (const to of places.slice(at + 1))
        if (!isJoined(from.id, to.id)) return { between: [from.id, to.id], length: 1, time: "PT1M" };
    return null;
  }
  const made = firstValue(memberSchema(list), [], named) as Fields;
  if (list === "supplies") {
    const free = file.crew.find(({ id }) => !supplies.some((one) => one.crew === id && one.id === "oxygen"));
    return free ? { ...made, crew: free.id, id: "oxygen", full: 100, redline: 10, perHour: 10 } : null;
  }
  const label = words(`write/new-${list}`);
  const id = freeIdsIn(file, list).next(label, list);
  if (list === "crew") return { ...made, id, call: `${label} ${file.crew.length + 1}` };
  if (list === "contingencies") return { ...made, id, title: label, tasks: [firstTask(file)] };
  if (list === "watches") return { ...made, id, do: label, every: "PT30M" };
  if (list === "states") return { id, label, values: ["closed", "open"], start: "closed" };
  if (list === "items")
    return { ...made, id, label, start: places[0] ? { place: places[0].id } : { crew: file.crew[0]?.id } };
  return { ...made, id, label };
}

/** Contingencies begin with a task, so that steps have somewhere to stand. */
const firstTask = (file: ProcedureFile): Fields => {
  const title = words("write/new-task");
  return { id: freeIdsIn(file, "tasks").next(title, "task"), title, steps: [] };
};
