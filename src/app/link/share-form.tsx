import type { WalkId } from "../../core/units/index.ts";
import { message, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { AskButton, CodeField, NameField } from "./asking-fields.tsx";
import { useAsking } from "./use-asking.ts";

/**
 * Brings a walk that is kept only on this device to the hub that serves this page. Anyone with the owner's code may
 * lead it.
 */
export function ShareForm({ walk }: { readonly walk: WalkId }) {
  const { links } = useServices();
  const asking = useAsking("", (ownerCode, name) => links.share({ walk, ownerCode, name }));
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void asking.submit();
      }}
    >
      <p className="share-words">
        <Worded message={message("link/share-how", { host: window.location.host })} />
      </p>
      <NameField asking={asking} example={words("link/share-example")} />
      <CodeField asking={asking} label={words("link/owner-code")} />
      <p className="hint">{words("link/owner-code-where")}</p>
      <AskButton asking={asking} label={words("link/share")} />
    </form>
  );
}
