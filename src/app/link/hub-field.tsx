import { words } from "../../words/index.ts";

interface HubFieldProps {
  readonly address: string;
  readonly onChange: (address: string) => void;
  /** Called when the field is left. */
  readonly onLeave?: () => void;
}

/** The field for the address of the hub, which a native shell has to be told. */
export function HubField({ address, onChange, onLeave }: HubFieldProps) {
  return (
    <label className="field">
      <span>{words("link/hub-address")}</span>
      <input
        type="url"
        inputMode="url"
        value={address}
        maxLength={300}
        autoComplete="off"
        autoCapitalize="none"
        spellCheck={false}
        placeholder={words("link/hub-address-example")}
        onChange={(event) => onChange(event.target.value)}
        onBlur={onLeave}
      />
      <span className="hint">{words("link/hub-address-how")}</span>
    </label>
  );
}
