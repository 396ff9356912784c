import { words } from "../../words/index.ts";
import { chooseTheme, type ThemeChoice, themeChoices, useThemeChoice } from "../theme/index.ts";

/** A field for choosing the colours of the screen. */
export function ThemeField() {
  const choice = useThemeChoice();
  return (
    <label className="field">
      <span>{words("parts/colours")}</span>
      <select value={choice} onChange={(event) => chooseTheme(event.target.value as ThemeChoice)}>
        {themeChoices.map((theme) => (
          <option key={theme} value={theme}>
            {words(`parts/theme-${theme}`)}
          </option>
        ))}
      </select>
    </label>
  );
}
