import type { outlookWords as english } from "../../english/screens/outlook.ts";
import type { Translated } from "../../translated.ts";

/** By when a walk is over, as so many samples of ten say, and what samples miss or break. */
export const outlookWords: Translated<typeof english> = {
  "outlook/half": "la moitié à {$finish :finish}",
  "outlook/half-margin": "la moitié à {$finish :finish}, marge {$margin :margin}",
  "outlook/half-over": "la moitié à {$finish :finish}, {$margin :length} de trop",
  "outlook/half-none": "moins de la moitié tient dans ses fenêtres",
  "outlook/nine-in-ten": "neuf sur dix à {$finish :finish}",
  "outlook/nine-in-ten-margin": "neuf sur dix à {$finish :finish}, marge {$margin :margin}",
  "outlook/nine-in-ten-over": "neuf sur dix à {$finish :finish}, {$margin :length} de trop",
  "outlook/nine-in-ten-none": "moins de neuf sur dix tiennent dans leurs fenêtres",
  "risk/title": "Ce que des tirages manquent",
  "risk/how":
    "Les durées sont tirées de distributions PERT-bêta ; les parts portent sur {$samples :integer} tirages.",
  "risk/unfit":
    "Dans {$share :chance of=harm} des tirages, une étape manque ses fenêtres : {$windows :list}, à {$steps :list}",
  "risk/of": "{$name} {$share :chance of=harm}",
  "risk/done-late": "{$step} est faite après {$by :pet} dans {$share :chance of=harm} des tirages",
  "risk/started-late":
    "{$step} commence plus de {$within :margin} après {$after} dans {$share :chance of=harm} des tirages",
};
