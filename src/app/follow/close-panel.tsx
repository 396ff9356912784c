import { useState } from "react";
import { valueLabel } from "../../core/procedure/index.ts";
import type { CloseGate } from "../../core/walk/index.ts";
import { closeGateOf } from "../../core/walk/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { locationWords } from "../parts/index.ts";
import type { WalkPanelProps } from "./walk-panel-props.ts";

const ENDS = ["complete", "terminated", "aborted"] as const;

/** The most names of one kind that stand in the list; the rest are counted. */
const MOST = 8;

/**
 * Asks how the walk ended, and asks for confirmation before it is closed. First it says by name what stands between the
 * walk and a good end ([OFF5]): complete is offered only when nobody is outside, and another end needs its reason.
 */
export function ClosePanel({
  state,
  actions,
  onClose,
  onClosed,
}: WalkPanelProps & { readonly onClosed: () => void }) {
  const [end, setEnd] = useState<(typeof ENDS)[number] | null>(null);
  const [reason, setReason] = useState("");
  const gate = closeGateOf(state);
  const ends = ENDS.filter((choice) => choice !== "complete" || gate.mayBeComplete);
  const needsReason = end !== null && end !== "complete" && reason.trim() === "";
  const close = async () => {
    if (end === null) return;
    await actions.close(end, reason.trim());
    onClosed();
  };
  return (
    <SidePanel title={words("panel/how-it-ended-question")} onClose={onClose}>
      <GateList gate={gate} state={state} />
      <fieldset className="choices">
        <legend className="heard-only">{words("panel/how-it-ended")}</legend>
        {ends.map((choice) => (
          <label key={choice} className="choice">
            <input type="radio" name="end" checked={end === choice} onChange={() => setEnd(choice)} />
            <span>
              <b>{words(`panel/end-${choice}`)}</b> {words(`panel/end-${choice}-means`)}
            </span>
          </label>
        ))}
      </fieldset>
      <label className="field">
        <span>
          {words(end === null || end === "complete" ? "panel/reason-or-remark" : "panel/reason-needed")}
        </span>
        <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
      </label>
      <div className="panel-acts">
        <button
          type="button"
          className="done-button"
          disabled={end === null || needsReason}
          onClick={() => void close()}
        >
          <span className="done-word">
            {end === null ? words("panel/choose-end") : words(`panel/close-${end}`)}
          </span>
        </button>
      </div>
    </SidePanel>
  );
}

/** What stands between the walk and a good end, by name; says so when nothing does. */
function GateList({ gate, state }: { readonly gate: CloseGate; readonly state: WalkPanelProps["state"] }) {
  const { outline } = state.ledger.inForce;
  const place = (id: string | null) =>
    id === null
      ? words("parts/item-nowhere")
      : (outline.procedure.places.find((one) => one.id === id)?.label ?? id);
  const groups = [
    {
      title: words("panel/gate-outside"),
      lines: gate.outside.map(({ crew, place: at }) =>
        words("panel/gate-crew", { crew: outline.crewMember(crew)?.call ?? crew, place: place(at) }),
      ),
    },
    {
      title: words("panel/gate-undone"),
      lines: gate.undone.map((id) => {
        const entry = outline.step(id);
        return words("panel/gate-step", { number: entry?.number ?? id, step: entry?.step.do ?? id });
      }),
    },
    {
      title: words("panel/gate-items"),
      lines: gate.items.map(({ item, is }) =>
        words("panel/gate-item", { item: item.label ?? item.id, where: locationWords(outline, is) }),
      ),
    },
    {
      title: words("panel/gate-states"),
      lines: gate.states.map(({ state: of, is, mustBe }) =>
        words("panel/gate-state", {
          state: of.label ?? of.id,
          is: valueLabel(outline, is),
          value: valueLabel(outline, mustBe),
        }),
      ),
    },
    { title: words("panel/outstanding"), lines: gate.outstanding.map(({ text }) => inWords(text)) },
  ].filter(({ lines }) => lines.length > 0);
  if (groups.length === 0) return <p>{words("panel/gate-clear")}</p>;
  return (
    <>
      {!gate.mayBeComplete && <p className="gate-note">{words("panel/gate-not-complete")}</p>}
      {groups.map(({ title, lines }) => (
        <section key={title}>
          <h3>{words("panel/gate-count", { title, count: lines.length })}</h3>
          <ul className="plain-list">
            {lines.slice(0, MOST).map((line) => (
              <li key={line}>{line}</li>
            ))}
            {lines.length > MOST && <li>{words("panel/gate-more", { count: lines.length - MOST })}</li>}
          </ul>
        </section>
      ))}
    </>
  );
}
