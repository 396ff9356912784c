import { useEffect, useState } from "react";
import { useServices } from "../session/index.ts";
import { procedureText } from "./procedure-text.ts";

/** The text of a procedure on the shelf; `null` until it has been loaded, and when there is none. */
export function useProcedureText(key: string): { readonly text: string | null; readonly isRead: boolean } {
  const { store } = useServices();
  const [found, setFound] = useState<{ readonly key: string; readonly text: string | null } | null>(null);
  useEffect(() => {
    let isOver = false;
    const take = (text: string | null) => {
      if (!isOver) setFound({ key, text });
    };
    procedureText(store, key).then(take, () => take(null));
    return () => {
      isOver = true;
    };
  }, [store, key]);
  const isRead = found?.key === key;
  return { text: isRead ? found.text : null, isRead };
}
