import { inWords, words } from "../../words/index.ts";
import { BraidSample } from "../braid/index.ts";
import { SidePanel } from "../panel/index.ts";
import { useShowPage } from "../session/index.ts";
import type { HelpScreen } from "./help-contents.ts";
import { HELP } from "./help-sections.ts";

export interface HelpPageProps {
  readonly screen: HelpScreen;
  readonly onClose: () => void;
}

/** The page of help of a screen, in a panel. It is a chunk of its own, with the words it needs. */
export function HelpPage({ screen, onClose }: HelpPageProps) {
  const { title, sections } = HELP[screen];
  const show = useShowPage();
  return (
    <SidePanel title={inWords(title)} onClose={onClose}>
      {sections.map((section) => (
        <section key={section.title.key}>
          <h3>{inWords(section.title)}</h3>
          <ul className="plain-list">
            {section.lines.map(({ text, mark }) => (
              <li key={text.key} className="help-line">
                {mark !== null && <BraidSample name={mark} />}
                <p>{inWords(text)}</p>
              </li>
            ))}
          </ul>
        </section>
      ))}
      {screen !== "marks" && (
        <button
          type="button"
          className="plain-button"
          onClick={() => {
            onClose();
            show("/marks");
          }}
        >
          {words("marks/title")}
        </button>
      )}
    </SidePanel>
  );
}
