import { inWords } from "../../words/index.ts";
import { SidePanel } from "../panel/index.ts";
import type { HelpScreen } from "./help-contents.ts";
import { HelpMark } from "./help-mark.tsx";
import { HELP } from "./help-sections.ts";

export interface HelpPageProps {
  readonly screen: HelpScreen;
  readonly onClose: () => void;
}

/** The page of help of a screen, in a panel. It is a chunk of its own, with the words it needs. */
export function HelpPage({ screen, onClose }: HelpPageProps) {
  const { title, sections } = HELP[screen];
  return (
    <SidePanel title={inWords(title)} onClose={onClose}>
      {sections.map((section) => (
        <section key={section.title.key}>
          <h3>{inWords(section.title)}</h3>
          <ul className="plain-list">
            {section.lines.map(({ text, mark }) => (
              <li key={text.key} className="help-line">
                {mark !== null && <HelpMark name={mark} />}
                <p>{inWords(text)}</p>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </SidePanel>
  );
}
