import "@ionic/react/css/core.css";
import "@ionic/react/css/normalize.css";
import "@ionic/react/css/structure.css";
import "./fonts.css";
import "./tokens.css";
import "./base.css";
import "./ionic.css";

export { chooseTheme, startTheme, type ThemeChoice, themeChoices } from "./theme-choice.ts";
export { useThemeChoice } from "./use-theme-choice.ts";
