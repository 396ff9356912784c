import { useState } from "react";
import type { Change, ProcedureFile } from "../../core/procedure/index.ts";
import { MOST_PICTURE_BYTES, pictureTypeOf } from "../../core/procedure/index.ts";
import type { GestureName } from "../../core/write/index.ts";
import { freeIdsIn } from "../../core/write/index.ts";
import type { GivenBytes } from "../../io/browser-files/index.ts";
import { pickPictures } from "../../io/browser-files/index.ts";
import { inWords, words } from "../../words/index.ts";

interface AddPicturesProps {
  readonly file: ProcedureFile;
  readonly onChanges: (name: GestureName, changes: readonly Change[]) => void;
  /** The way to pictures; the browser's own unless given. */
  readonly pick?: (limit: number) => Promise<readonly GivenBytes[]>;
}

/** Puts pictures from files into the procedure, all that were picked as one gesture; what cannot be taken is said by file ([WRT5]). */
export function AddPictures({ file, onChanges, pick = pickPictures }: AddPicturesProps) {
  const [said, setSaid] = useState<readonly string[]>([]);
  const add = async () => {
    const lines: string[] = [];
    const ids = freeIdsIn(file, "pictures");
    let last = file.pictures?.at(-1)?.id;
    const changes = (await pick(MOST_PICTURE_BYTES)).flatMap(({ name, data, problem }): Change[] => {
      const type = data === null ? null : pictureTypeOf(data);
      if (data === null || type === null) {
        const what = problem ? inWords(problem) : words("write/no-picture");
        lines.push(words("shelf/of-file", { file: name, what }));
        return [];
      }
      const label = name.replace(/\.[^.]*$/, "");
      const id = ids.next(label, "picture");
      const place = last === undefined ? { first: true as const } : { behind: last };
      last = id;
      return [{ add: { id, label, type, data }, list: "pictures", ...place }];
    });
    setSaid(lines);
    if (changes.length > 0) onChanges("add", changes);
  };
  return (
    <>
      <button type="button" className="main-button" onClick={() => void add()}>
        {words("write/add-to-list", { list: words("write/list-pictures") })}
      </button>
      <p className="hint">{words("write/pictures-how")}</p>
      <div role="status">
        {said.map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
    </>
  );
}
