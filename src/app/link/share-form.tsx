import type { WalkId } from "../../core/units/index.ts";
import { message, words } from "../../words/index.ts";
import { Worded } from "../parts/index.ts";
import { useServices } from "../session/index.ts";
import { AskButton, CodeField, NameField } from "./asking-fields.tsx";
import { HubField } from "./hub-field.tsx";
import { useAsking } from "./use-asking.ts";
import { useHubAddress } from "./use-hub-address.ts";

/**
 * Brings a walk that is kept only on this device to a hub, the one that serves this page where one does. Anyone with the owner's code may
 * lead it.
 */
export function ShareForm({ walk }: { readonly walk: WalkId }) {
  const { links } = useServices();
  const hub = useHubAddress();
  const asking = useAsking("", (ownerCode, name) =>
    hub.asking((at) => links.share({ ...at, walk, ownerCode, name })),
  );
  const host = links.home === null ? null : new URL(links.home).host;
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void asking.submit();
      }}
    >
      <p className="share-words">
        <Worded
          message={host === null ? message("link/share-how-anywhere") : message("link/share-how", { host })}
        />
      </p>
      {hub.isNeeded && <HubField address={hub.address} onChange={hub.setAddress} />}
      <NameField asking={asking} example={words("link/share-example")} />
      <CodeField asking={asking} label={words("link/owner-code")} />
      <p className="hint">{words("link/owner-code-where")}</p>
      <AskButton asking={asking} label={words("link/share")} />
    </form>
  );
}
