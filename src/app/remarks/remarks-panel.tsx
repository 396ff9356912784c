import { useState } from "react";
import type { Outline } from "../../core/procedure/index.ts";
import type { Remark, RemarkKind } from "../../core/remarks/index.ts";
import { REMARK_FORMAT } from "../../core/remarks/index.ts";
import { formatInstant } from "../../core/units/index.ts";
import { newRemarkId } from "../../io/device/index.ts";
import { troubleMessage } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { SelectField } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { AgreementList } from "./agreement-list.tsx";
import { CommentList } from "./comment-list.tsx";
import { RemarkFiles } from "./remark-files.tsx";
import { storedSpeaker, storeSpeaker } from "./speaker.ts";
import type { RemarksHere } from "./use-remarks.ts";
import "./remarks.css";

interface RemarksPanelProps {
  readonly outline: Outline;
  readonly here: RemarksHere;
  readonly onClose: () => void;
}

/** What readers remark of a procedure, and where they do ([WRT10]). It can stand beside any page that has the text of the procedure. */
export function RemarksPanel({ outline, here, onClose }: RemarksPanelProps) {
  const { store, now } = useServices();
  const [speaker, setSpeaker] = useState(storedSpeaker);
  const [step, setStep] = useState("");
  const [says, setSays] = useState("");
  const [trouble, setTrouble] = useState<string | null>(null);
  const by = { name: speaker.name.trim(), role: speaker.role.trim() };
  const isKnown = by.name !== "" && by.role !== "";
  const { procedure } = outline;
  const add = async (kind: RemarkKind, more: Partial<Pick<Remark, "step" | "says" | "to">>) => {
    const remark: Remark = {
      format: REMARK_FORMAT,
      id: newRemarkId(),
      procedure: procedure.id,
      revision: procedure.revision ?? null,
      text: here.digest,
      step: null,
      by,
      at: formatInstant(now()),
      kind,
      says: "",
      to: null,
      ...more,
    };
    const added = await store.remarks.addRemarks([remark]);
    setTrouble(
      added.kind === "not-kept" ? words("remarks/not-kept", { why: troubleMessage(added.reason) }) : null,
    );
    return added.kind === "kept";
  };
  const speak = (next: typeof speaker) => {
    setSpeaker(next);
    storeSpeaker(next);
  };
  const about = step === "" ? null : step;
  return (
    <SidePanel title={words("remarks/title")} onClose={onClose}>
      <p className="remarks-advises">{words("remarks/advises")}</p>
      <div role="status">{trouble !== null && <p>{trouble}</p>}</div>
      <label className="field">
        <span>{words("remarks/who")}</span>
        <input
          value={speaker.name}
          autoComplete="name"
          maxLength={200}
          onChange={(event) => speak({ ...speaker, name: event.target.value })}
        />
      </label>
      <label className="field">
        <span>{words("remarks/role")}</span>
        <input
          value={speaker.role}
          autoComplete="organization-title"
          maxLength={200}
          onChange={(event) => speak({ ...speaker, role: event.target.value })}
        />
      </label>
      {!isKnown && <p className="hint">{words("remarks/needs-who")}</p>}
      <SelectField
        label={words("remarks/about")}
        value={step}
        onValue={setStep}
        choices={[
          { id: "", name: words("remarks/whole") },
          ...outline.steps.map(({ step: one, number }) => ({
            id: one.id as string,
            name: words("remarks/step", { number, action: one.do }),
          })),
        ]}
      />
      <label className="field">
        <span>{words("remarks/comment")}</span>
        <textarea rows={3} value={says} maxLength={4000} onChange={(event) => setSays(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="plain-button"
          disabled={!isKnown || says.trim() === ""}
          onClick={() =>
            void add("comment", { step: about, says: says.trim() }).then((isKept) => {
              // What was typed stays until it is kept.
              if (isKept) setSays("");
            })
          }
        >
          {words("remarks/add")}
        </button>
        <button
          type="button"
          className="plain-button"
          disabled={!isKnown || here.digest === null}
          onClick={() => void add("agreed", { step: about })}
        >
          {words("remarks/agree")}
        </button>
      </div>
      <p className="hint">{words(here.digest === null ? "remarks/no-digest" : "remarks/agree-how")}</p>
      <CommentList
        outline={outline}
        comments={here.folded.comments}
        mayAnswer={isKnown}
        onResolve={({ id }) => void add("resolved", { to: id })}
        onReopen={(resolvings) => {
          // Each of them has to be taken back: two devices may have resolved the comment at once.
          for (const { id } of resolvings) void add("reopened", { to: id });
        }}
      />
      <AgreementList
        outline={outline}
        agreements={here.folded.agreements}
        by={by}
        onWithdraw={({ id, step: of }) => void add("withdrawn", { to: id, step: of })}
      />
      {here.folded.idle.length > 0 && (
        <p className="hint">{words("remarks/idle", { count: here.folded.idle.length })}</p>
      )}
      {here.folded.conflicting.length > 0 && (
        <p className="hint">{words("remarks/conflicting", { count: here.folded.conflicting.length })}</p>
      )}
      <RemarkFiles procedure={procedure.id} all={here.all} />
    </SidePanel>
  );
}
