import type { Verification } from "../../core/seal/index.ts";
import { codedText, spelled } from "../../core/seal/index.ts";
import { inWords, words } from "../../words/index.ts";
import { Fact } from "../parts/index.ts";
import { QrCode } from "../qr-code/index.ts";
import { sourceName } from "./source-name.ts";

type Coded = Pick<Verification, "walk" | "entries" | "root" | "order" | "code" | "sources">;

interface VoiceCodeProps {
  readonly coded: Coded;
  /** What the code is of; unless given, the entries here. */
  readonly of?: string;
}

/**
 * The voice code of a log with the words of its letters, root and order, the keys of its hubs, which on paper are held against a log later, and the former as a QR
 * code ([SEL6]).
 */
export function VoiceCode({ coded, of }: VoiceCodeProps) {
  const { walk, entries, root, order, code, sources } = coded;
  const said = spelled(code);
  return (
    <div className="voice-code">
      <div className="voice-code-words">
        <p>{of ?? words("seal/code-of", { entries })}</p>
        <ol className="voice-code-groups">
          {code.split("-").map((group, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: two groups of a code may be the same.
            <li key={index}>
              <b>{group}</b>
              <span>{said[index]?.map(inWords).join(" ")}</span>
            </li>
          ))}
        </ol>
        <p className="hint">{words("seal/code-how")}</p>
        <dl className="facts voice-code-hashes">
          <Fact name={words("seal/code-root")}>
            <code>{root}</code>
          </Fact>
          <Fact name={words("seal/code-order")}>
            <code>{order}</code>
          </Fact>
          {sources.map((one) =>
            one.key !== null && one.source.startsWith("/hubs/") ? (
              <Fact key={one.source} name={words("seal/hub-key", { name: sourceName(one) })}>
                <code>{one.key}</code>
              </Fact>
            ) : null,
          )}
        </dl>
      </div>
      <QrCode text={codedText(walk, { entries, root, order })} label={words("seal/code-qr")} />
    </div>
  );
}
