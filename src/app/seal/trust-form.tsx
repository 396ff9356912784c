import { useState } from "react";
import type { SourceVerified } from "../../core/seal/index.ts";
import { isSealKey } from "../../core/seal/index.ts";
import { words } from "../../words/index.ts";
import { sourceName } from "./source-name.ts";
import type { TrustedHubs } from "./trusted-hubs.ts";

interface TrustFormProps {
  readonly hubs: TrustedHubs;
  /** The sources of the log, of which some are hubs. */
  readonly sources: readonly SourceVerified[];
}

/** The keys of hubs that are trusted on this device: given, compared, forgotten. */
export function TrustForm({ hubs: { keys, trust, forget }, sources }: TrustFormProps) {
  const [typed, setTyped] = useState("");
  const [isBad, setIsBad] = useState(false);
  const named = sources.filter(({ source }) => source.startsWith("/hubs/"));
  const nameOf = (key: string) => {
    const hub = named.find((one) => one.key === key);
    return hub ? sourceName(hub) : null;
  };
  return (
    <section className="seal-trust" aria-labelledby="seal-trust">
      <h3 id="seal-trust">{words("seal/trust-title")}</h3>
      {keys.length === 0 && <p>{words("seal/trust-none")}</p>}
      <ul className="plain-list">
        {keys.map((key) => (
          <li key={key} className="seal-key">
            <span>
              {nameOf(key) !== null && <b>{nameOf(key)} </b>}
              <code>{key}</code>
            </span>
            <button
              type="button"
              className="plain-button"
              aria-label={words("seal/trust-forget-which", { key })}
              onClick={() => forget(key)}
            >
              {words("seal/trust-forget")}
            </button>
          </li>
        ))}
      </ul>
      {named.map((hub) =>
        hub.key === null || keys.includes(hub.key) ? null : (
          <NamedHub key={hub.source} name={sourceName(hub)} hubKey={hub.key} onTrust={trust} />
        ),
      )}
      <form
        className="seal-give"
        onSubmit={(event) => {
          event.preventDefault();
          const key = typed.trim();
          setIsBad(!isSealKey(key));
          if (!isSealKey(key)) return;
          trust(key);
          setTyped("");
        }}
      >
        <label className="field">
          <span>{words("seal/trust-field")}</span>
          <input
            value={typed}
            maxLength={60}
            autoComplete="off"
            autoCapitalize="none"
            spellCheck={false}
            onChange={(event) => {
              setTyped(event.target.value);
              setIsBad(false);
            }}
          />
        </label>
        {isBad && <p role="alert">{words("seal/trust-bad")}</p>}
        <p className="hint">{words("seal/trust-how")}</p>
        <button type="submit" className="plain-button" disabled={typed.trim() === ""}>
          {words("seal/trust-add")}
        </button>
      </form>
    </section>
  );
}

interface NamedHubProps {
  readonly name: string;
  readonly hubKey: string;
  readonly onTrust: (key: string) => void;
}

/** A hub that the log names, whose key somebody may hold against the hub's own. */
function NamedHub({ name, hubKey, onTrust }: NamedHubProps) {
  return (
    <div className="seal-named">
      <p>{words("seal/trust-in-log", { name })}</p>
      <div className="seal-key">
        <code>{hubKey}</code>
        <button type="button" className="plain-button" onClick={() => onTrust(hubKey)}>
          {words("seal/trust-same")}
        </button>
      </div>
    </div>
  );
}
