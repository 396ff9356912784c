import { useEffect, useState } from "react";
import type { ManuscriptRow } from "../../io/store/index.ts";
import { words } from "../../words/index.ts";
import { useServices } from "../session/index.ts";

/** The manuscripts of this device, to go on with or to throw away; nothing where there are none. */
export function DraftList({ onWrite }: { readonly onWrite: (key: string) => void }) {
  const { store } = useServices();
  const [rows, setRows] = useState<readonly ManuscriptRow[]>([]);
  useEffect(() => {
    let isOver = false;
    let end = () => {};
    const open = async () => {
      const shelf = await store.manuscripts();
      const lookUp = async () => {
        const found = await shelf.manuscripts();
        if (!isOver) setRows(found);
      };
      if (isOver) return;
      end = shelf.watchManuscripts(() => void lookUp());
      await lookUp();
    };
    // Where they cannot be read, nothing of them is known: the page that writes says so.
    open().catch(() => {});
    return () => {
      isOver = true;
      end();
    };
  }, [store]);
  if (rows.length === 0) return null;
  return (
    <ul className="shelf-list" aria-label={words("shelf/being-written")}>
      {rows.map(({ key, title, keptAt }) => (
        <li key={key} className="shelf-item">
          <div className="shelf-words">
            <h3>{title}</h3>
            <p className="hint">{words("shelf/written-at", { at: keptAt })}</p>
          </div>
          <div className="shelf-acts">
            <button type="button" className="main-button" onClick={() => onWrite(key)}>
              {words("shelf/go-on-writing")}
            </button>
            <button
              type="button"
              className="plain-button"
              onClick={() => void store.manuscripts().then((shelf) => shelf.removeManuscript(key))}
            >
              {words("shelf/throw-away")}
            </button>
          </div>
        </li>
      ))}
    </ul>
  );
}
