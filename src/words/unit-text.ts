/** How the parts of UCUM codes are written by people, where that is not the code without its brackets. */
const WRITTEN: Readonly<Record<string, string>> = {
  "1": "",
  Cel: "°C",
  "[degF]": "°F",
  deg: "°",
  Ohm: "Ω",
  um: "µm",
  "mm[Hg]": "mmHg",
  "[in_i'Hg]": "inHg",
  "[in_i]": "in",
  "[ft_i]": "ft",
  "[yd_i]": "yd",
  "[mi_i]": "mi",
  "[nmi_i]": "nmi",
  "[kn_i]": "kn",
  "[lb_av]": "lb",
  "[oz_av]": "oz",
  "[lbf_av]": "lbf",
  "[gal_us]": "gal",
  "[foz_us]": "fl oz",
  "[cft_i]": "ft³",
  "[Btu_IT]": "Btu",
  "[Btu_th]": "Btu(th)",
  "[Btu]": "Btu(th)",
};

const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";

const raised = (exponent: string): string =>
  exponent
    .replace("+", "")
    .replace("-", "⁻")
    .replaceAll(/\d/g, (digit) => RAISED[Number(digit)] ?? digit);

/** A part of a code between its dots and strokes. */
const PART = /(?:\[[^\]]*\]|[^·/[])+/g;

function partText(part: string): string {
  const [, base = part, exponent = ""] = /^(.*[^\d+-])([+-]?\d+)$/.exec(part) ?? [];
  return (WRITTEN[base] ?? base.replaceAll(/[[\]{}]/g, "")) + raised(exponent);
}

/** A UCUM code as people write it: `psi` for `[psi]`, `N·m` for `N.m`, `ft³/min`. The code for a plain number gives an empty text. */
export function unitText(unit: string): string {
  return unit.replaceAll(".", "·").replaceAll(PART, partText);
}
