import { chooseTheme, type ThemeChoice, themeChoices, useThemeChoice } from "../theme/index.ts";

const WORDS: Readonly<Record<ThemeChoice, string>> = {
  auto: "as the device is set",
  day: "day",
  night: "night",
  dim: "dim, for a dark room",
};

/** Chooses the colours of the screen. */
export function ThemeField() {
  const choice = useThemeChoice();
  return (
    <label className="field">
      <span>Colours</span>
      <select value={choice} onChange={(event) => chooseTheme(event.target.value as ThemeChoice)}>
        {themeChoices.map((theme) => (
          <option key={theme} value={theme}>
            {WORDS[theme]}
          </option>
        ))}
      </select>
    </label>
  );
}
