import { IonContent, IonPage, useIonRouter } from "@ionic/react";
import { lazy, Suspense, useMemo, useState } from "react";
import { useParams } from "react-router-dom";
import { lightFrom } from "../../core/plan/index.ts";
import { outlineOf, readProcedure } from "../../core/procedure/index.ts";
import { copyOf, keptOf, newManuscript } from "../../core/write/index.ts";
import { saveFile } from "../../io/browser-files/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { inWords, words } from "../../words/index.ts";
import { HelpButton } from "../help/index.ts";
import { useProcedureLight } from "../light/index.ts";
import { BesidePage, SidePanel } from "../panel/index.ts";
import { ScreenHead } from "../parts/index.ts";
import { useServices, useStartChoice } from "../session/index.ts";
import { revisionsOf, useRevisions } from "../shelf/index.ts";
import { freeRevision } from "../what-if/index.ts";
import { freeManuscriptKey, NewForm, useManuscript, WriteView } from "../write/index.ts";

const FragmentsPanel = lazy(async () => ({
  default: (await import("../fragments/index.ts")).FragmentsPanel,
}));

type Opened = Extract<ReturnType<typeof useManuscript>, { kind: "open" }>["open"];

/** The page on which a procedure is written: a manuscript of this device, or a new one. */
export function WritePage() {
  const { manuscript: key } = useParams();
  return (
    <IonPage>
      <IonContent>
        <main>{key === undefined ? <NewProcedure /> : <Manuscript key={key} name={key} />}</main>
      </IonContent>
    </IonPage>
  );
}

function NewProcedure() {
  const { store } = useServices();
  const router = useIonRouter();
  const [problem, setProblem] = useState<string | null>(null);
  const begin = async (title: string, [first, second, inside]: readonly [string, string, string]) => {
    const crew = [
      { call: first.trim(), station: "outside" as const },
      { call: second.trim(), station: "outside" as const },
      { call: inside.trim(), station: "inside" as const },
    ].filter(({ call }) => call !== "");
    const manuscript = newManuscript({ title, crew, task: words("write/new-task") });
    if (!manuscript) return setProblem(words("write/new-needs"));
    const key = await freeManuscriptKey(store, manuscript.file.id);
    const shelf = await store.manuscripts();
    const kept = await shelf.keepManuscript({ key, title, manuscript: keptOf(manuscript), from: null }, 0);
    if (kept.kind === "not-kept") return setProblem(inWords(troubleMessage(kept.reason)));
    router.push(`/write/${key}`, "forward", "replace");
  };
  return (
    <>
      <ScreenHead title={words("write/title")} what={words("write/new-title")}>
        <button type="button" className="plain-button" onClick={() => router.push("/")}>
          {words("parts/shelf")}
        </button>
        <HelpButton screen="write" />
      </ScreenHead>
      <div className="page-message">
        <NewForm onBegin={(title, calls) => void begin(title, calls)} />
        {problem !== null && <p role="alert">{problem}</p>}
      </div>
    </>
  );
}

function Manuscript({ name }: { readonly name: string }) {
  const opening = useManuscript(name);
  const router = useIonRouter();
  const [isPuttingIn, setPuttingIn] = useState(false);
  const text = opening.kind === "open" ? opening.open.manuscript.text : null;
  const outline = useMemo(() => {
    const procedure = isPuttingIn && text !== null ? readProcedure(text).procedure : null;
    return procedure && outlineOf(procedure);
  }, [isPuttingIn, text]);
  return (
    <>
      <ScreenHead
        title={opening.kind === "open" ? opening.open.manuscript.file.title : words("write/title")}
        what={words("write/what")}
      >
        {opening.kind === "open" && (
          <button type="button" className="plain-button" onClick={() => setPuttingIn(true)}>
            {words("fragments/title")}
          </button>
        )}
        {opening.kind === "open" && <CopyButton open={opening.open} />}
        <button type="button" className="plain-button" onClick={() => router.push("/")}>
          {words("parts/shelf")}
        </button>
        <HelpButton screen="write" />
      </ScreenHead>
      {opening.kind === "open" ? (
        <Written name={name} open={opening.open} />
      ) : (
        <p className="page-message" role="status">
          {words(
            opening.kind === "opening"
              ? "parts/opening-procedure"
              : opening.kind === "missing"
                ? "parts/no-such-procedure"
                : "write/unreadable",
          )}
        </p>
      )}
      {isPuttingIn && opening.kind === "open" && (
        <BesidePage>
          <Suspense fallback={<p role="status">{words("parts/opening")}</p>}>
            {outline ? (
              <FragmentsPanel
                file={opening.open.manuscript.file}
                outline={outline}
                onChanges={(changes) => {
                  opening.open.change("paste", changes);
                  setPuttingIn(false);
                }}
                onClose={() => setPuttingIn(false)}
              />
            ) : (
              <SidePanel title={words("fragments/title")} onClose={() => setPuttingIn(false)}>
                <p>{words("write/fragments-not-yet")}</p>
              </SidePanel>
            )}
          </Suspense>
        </BesidePage>
      )}
    </>
  );
}

/** Begins a manuscript with a copy of what is written, under an id of its own. */
function CopyButton({ open }: { readonly open: Opened }) {
  const { store } = useServices();
  const router = useIonRouter();
  const copy = async () => {
    const { file, text } = open.manuscript;
    const key = await freeManuscriptKey(store, file.id);
    const copied = copyOf({ text, id: key, title: words("write/copy-title", { title: file.title }) });
    if (!copied) return;
    const shelf = await store.manuscripts();
    const { title } = copied.file;
    await shelf.keepManuscript({ key, title, manuscript: keptOf(copied), from: null }, 0);
    router.push(`/write/${key}`);
  };
  return (
    <button type="button" className="plain-button" onClick={() => void copy()}>
      {words("write/copy-and-edit")}
    </button>
  );
}

function Written({ name, open }: { readonly name: string; readonly open: Opened }) {
  const { store, now } = useServices();
  const { file } = open.manuscript;
  const { choice, start: ownStart } = useProcedureLight(file.id);
  const start = useStartChoice(name) ?? ownStart;
  const light = useMemo(() => (choice && start !== null ? lightFrom(choice, start) : null), [choice, start]);
  const taken = useRevisions(file.id);
  const [saved, setSaved] = useState<string | null>(null);
  const isNew = !taken.has(file.revision ?? "") && taken.size === 0;
  const revision = isNew ? (file.revision ?? "A") : freeRevision(file.revision, taken);
  const save = async ({ who, why }: { readonly who: string; readonly why: string }) => {
    // Another tab may have taken the letter since it was shown.
    const there = await revisionsOf(store, file.id);
    const free = there.size === 0 ? revision : freeRevision(file.revision, there);
    const written = open.revised(free);
    if (written === null) return setSaved(words("plan/revision-not-kept"));
    const at = now();
    const added = await store.shelf.addProcedure(written, at, { by: who, why });
    // What is on the shelf is no longer being written; another edit begins it anew.
    if (added.kind === "added" || added.kind === "known")
      await (await store.manuscripts()).removeManuscript(name);
    setSaved(
      added.kind === "added" || added.kind === "known"
        ? words("write/saved", { revision: free })
        : added.kind === "not-kept"
          ? inWords(troubleMessage(added.reason))
          : words("write/save-refused"),
    );
  };
  return (
    <WriteView
      open={open}
      start={start}
      light={light}
      revision={revision}
      saved={saved}
      onSave={(said) => void save(said)}
      onSaveFile={() => void saveFile(`${file.id}.procedure.json`, open.manuscript.text)}
    />
  );
}
