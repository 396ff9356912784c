import type { WalkId } from "../../core/units/index.ts";
import { useServices } from "../session/index.ts";
import { AskButton, CodeField, NameField } from "./asking-fields.tsx";
import { useAsking } from "./use-asking.ts";

/** Brings a walk that is kept on this device alone to the hub that serves this page; whoever has the owner's code leads it. */
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
        This walk is on this device alone. Brought to the hub at <b>{window.location.host}</b>, it can be
        followed and marked from other tablets; everything here is still kept here first.
      </p>
      <NameField asking={asking} example="for example Ground" />
      <CodeField asking={asking} label="Owner’s code of the hub" />
      <p className="hint">The hub shows it on its console when it starts.</p>
      <AskButton asking={asking} words="Share this walk" />
    </form>
  );
}
