import { useState } from "react";
import type { Fragment } from "../../core/fragment/index.ts";
import { readFragment } from "../../core/fragment/index.ts";
import type { Change, Finding, Outline, ProcedureFile } from "../../core/procedure/index.ts";
import { pickFiles } from "../../io/browser-files/index.ts";
import { inWords, words } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import { SelectField } from "../parts/index.ts";
import { bundledFragments } from "./bundled-fragments.ts";
import { FillForm } from "./fill-form.tsx";
import { OfferList } from "./offer-list.tsx";
import "./fragments.css";

export interface FragmentsPanelProps {
  readonly file: ProcedureFile;
  readonly outline: Outline;
  /** Makes the changes; `about` says in words what they are for. */
  readonly onChanges: (changes: readonly Change[], about: string) => void;
  readonly onClose: () => void;
}

interface Unreadable {
  readonly name: string;
  readonly findings: readonly Finding[];
}

const nameOf = ({ id, revision }: Fragment) => `${id} ${revision}`;

/** Steps that are used again: one is put in with its blanks filled, or one that was put in is brought to another revision ([WRT9]). */
export function FragmentsPanel({ file, outline, onChanges, onClose }: FragmentsPanelProps) {
  const [own, setOwn] = useState<readonly Fragment[]>([]);
  const [chosen, setChosen] = useState("");
  const [unreadable, setUnreadable] = useState<readonly Unreadable[]>([]);
  const [told, setTold] = useState<readonly string[]>([]);
  const all = [
    ...own,
    ...bundledFragments.filter((one) => !own.some((other) => nameOf(other) === nameOf(one))),
  ];
  const fragment = all.find((one) => nameOf(one) === chosen) ?? null;
  const fromFile = async () => {
    const read = (await pickFiles()).map(({ name, text, problem }) => ({
      name: inWords(name),
      problem,
      ...(text === null ? { fragment: null, findings: [] } : readFragment(text)),
    }));
    const sound = read.flatMap((one) => one.fragment ?? []);
    const names = new Set(sound.map(nameOf));
    setOwn((before) => [...sound, ...before.filter((one) => !names.has(nameOf(one)))]);
    setUnreadable(read.filter((one) => one.problem === null && one.fragment === null));
    setTold(read.flatMap(({ problem }) => (problem ? [inWords(problem)] : [])));
    const [last] = sound;
    if (last) setChosen(nameOf(last));
  };
  return (
    <SidePanel title={words("fragments/title")} onClose={onClose}>
      <p className="hint">{words("fragments/how")}</p>
      <SelectField
        label={words("fragments/which")}
        value={chosen}
        onValue={setChosen}
        choices={[
          { id: "", name: words("fragments/choose") },
          ...all.map((one) => ({ id: nameOf(one), name: words("fragments/name", one) })),
        ]}
      />
      <div className="panel-acts">
        <button type="button" className="plain-button" onClick={() => void fromFile()}>
          {words("fragments/from-file")}
        </button>
      </div>
      <div role="status">
        {told.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {unreadable.map(({ name, findings }) => (
          <div key={name}>
            <p>{words("fragments/cannot-be-read", { name })}</p>
            <ul>
              {findings.map(({ pointer, message }) => (
                <li key={`${pointer} ${inWords(message)}`}>
                  {pointer !== "" && <code>{pointer}</code>} {inWords(message)}
                </li>
              ))}
            </ul>
          </div>
        ))}
      </div>
      {fragment && (
        <FillForm key={chosen} fragment={fragment} file={file} outline={outline} onChanges={onChanges} />
      )}
      <OfferList file={file} fragments={all} onChanges={onChanges} />
    </SidePanel>
  );
}
