/**
 * The prefixes and unit atoms of the Unified Code for Units of Measure (UCUM 2.2, case sensitive; unitsofmeasure.org).
 * Metric atoms may have a prefix.
 */
const PREFIXES = "Y Z E P T G M k h da d c m u n p f a z y Ki Mi Gi Ti".split(" ");

const METRIC =
  "m s g rad K C cd mol sr Hz N Pa J W A V F Ohm S Wb Cel T H lm lx Bq Gy Sv l L ar t bar u eV pc [c] [h] [k] [eps_0] [mu_0] [e] [m_e] [m_p] [G] [g] [ly] gf Ky Gal dyn erg P Bi St Mx G Oe Gb sb Lmb ph Ci R RAD REM cal_[15] cal_[20] cal_m cal_IT cal_th cal tex m[H2O] m[Hg] eq osm g% kat U [iU] [IU] Np B B[SPL] B[V] B[mV] B[uV] B[10.nV] B[W] B[kW] st mho bit By Bd".split(
    " ",
  );

const OTHERS =
  "10* 10^ [pi] % [ppth] [ppm] [ppb] [pptr] gon deg ' '' min h d a_t a_j a_g a wk mo_s mo_j mo_g mo AU atm [lbf_av] [in_i] [ft_i] [yd_i] [mi_i] [fth_i] [nmi_i] [kn_i] [sin_i] [sft_i] [syd_i] [cin_i] [cft_i] [cyd_i] [bf_i] [cr_i] [mil_i] [cml_i] [hd_i] [ft_us] [yd_us] [in_us] [rd_us] [ch_us] [lk_us] [rch_us] [rlk_us] [fth_us] [fur_us] [mi_us] [acr_us] [srd_us] [smi_us] [sct] [twp] [mil_us] [in_br] [ft_br] [rd_br] [ch_br] [lk_br] [fth_br] [pc_br] [yd_br] [mi_br] [nmi_br] [kn_br] [acr_br] [gal_us] [bbl_us] [qt_us] [pt_us] [gil_us] [foz_us] [fdr_us] [min_us] [crd_us] [bu_us] [gal_wi] [pk_us] [dqt_us] [dpt_us] [tbs_us] [tsp_us] [cup_us] [foz_m] [cup_m] [tsp_m] [tbs_m] [gal_br] [pk_br] [bu_br] [qt_br] [pt_br] [gil_br] [foz_br] [fdr_br] [min_br] [gr] [lb_av] [oz_av] [dr_av] [scwt_av] [lcwt_av] [ston_av] [lton_av] [stone_av] [pwt_tr] [oz_tr] [lb_tr] [sc_ap] [dr_ap] [oz_ap] [lb_ap] [oz_m] [lne] [pnt] [pca] [pnt_pr] [pca_pr] [pied] [pouce] [ligne] [didot] [cicero] [degF] [degR] [degRe] [Cal] [Btu_39] [Btu_59] [Btu_60] [Btu_m] [Btu_IT] [Btu_th] [Btu] [HP] [den] [in_i'H2O] [in_i'Hg] [PRU] [wood'U] [diop] [p'diop] %[slope] [mesh_i] [Ch] [drp] [hnsf'U] [MET] [hp'_X] [hp'_C] [hp'_M] [hp'_Q] [hp_X] [hp_C] [hp_M] [hp_Q] [kp_X] [kp_C] [kp_M] [kp_Q] [pH] [S] [HPF] [LPF] [arb'U] [USP'U] [GPL'U] [MPL'U] [APL'U] [beth'U] [anti'Xa'U] [todd'U] [dye'U] [smgy'U] [bdsk'U] [ka'U] [knk'U] [mclg'U] [tb'U] [CCID_50] [TCID_50] [EID_50] [PFU] [FFU] [CFU] [IR] [BAU] [AU] [Amb'a'1'U] [PNU] [Lf] [D'ag'U] [FEU] [ELU] [EU] Ao b att [psi] circ sph [car_m] [car_Au] [smoot] [m/s2/Hz^(1/2)] bit_s".split(
    " ",
  );

const SIMPLE_UNITS: ReadonlySet<string> = new Set([
  ...METRIC,
  ...OTHERS,
  ...METRIC.flatMap((atom) => PREFIXES.map((prefix) => prefix + atom)),
]);

/** What people write for a unit, in lower case, with its UCUM code. */
const WRITTEN_FOR: Readonly<Record<string, string>> = {
  "°c": "Cel",
  degc: "Cel",
  celsius: "Cel",
  "°f": "[degF]",
  degf: "[degF]",
  "°": "deg",
  degrees: "deg",
  sec: "s",
  secs: "s",
  seconds: "s",
  mins: "min",
  minutes: "min",
  hr: "h",
  hrs: "h",
  hours: "h",
  rpm: "/min",
  psi: "[psi]",
  ft: "[ft_i]",
  feet: "[ft_i]",
  in: "[in_i]",
  inch: "[in_i]",
  lb: "[lb_av]",
  lbs: "[lb_av]",
  lbf: "[lbf_av]",
  mmhg: "mm[Hg]",
  btu: "[Btu]",
  mph: "[mi_i]/h",
  knots: "[kn_i]",
  ppm: "[ppm]",
  percent: "%",
  pct: "%",
  nm: "N.m",
  n·m: "N.m",
  "n*m": "N.m",
  ah: "A.h",
  mah: "mA.h",
  wh: "W.h",
  kwh: "kW.h",
  µm: "um",
  litre: "L",
  liter: "L",
  litres: "L",
  liters: "L",
  turns: "1",
  turn: "1",
  ω: "Ohm",
};

const COMPONENT = /^(\d+|.*?)(?:\{[\x20-\x7a\x7c\x7e-\uffff]*\})?$/u;
const SEPARATOR = /[./]/;

/** The parts between the `.` and `/` of a code that stand outside brackets, braces and parentheses; `null` when these do not match. */
function componentsOf(term: string): string[] | null {
  const parts = [""];
  const open: string[] = [];
  const closing: Readonly<Record<string, string>> = { "[": "]", "{": "}", "(": ")" };
  for (const letter of term) {
    const within = open.at(-1);
    if (letter === within) open.pop();
    else if (within !== "]" && within !== "}" && closing[letter]) open.push(closing[letter]);
    else if (within === undefined && /[\])}]/.test(letter)) return null;
    if (open.length === 0 && SEPARATOR.test(letter)) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return open.length === 0 ? parts : null;
}

/** True for a valid UCUM code, such as `kPa`, `N.m`, `/min` or `mm[Hg]` ([PRO19]). */
export function isUnitCode(code: string): boolean {
  const term = code.startsWith("/") ? code.slice(1) : code;
  return componentsOf(term)?.every(isComponent) ?? false;
}

function isComponent(component: string): boolean {
  if (component === "") return false;
  if (component.startsWith("(") && component.endsWith(")")) return isUnitCode(component.slice(1, -1));
  const [, unit = ""] = COMPONENT.exec(component) ?? [];
  if (unit === "") return component.startsWith("{");
  if (/^\d+$/.test(unit) || SIMPLE_UNITS.has(unit)) return true;
  const [, base = ""] = /^(.*?)[+-]?\d+$/.exec(unit) ?? [];
  return SIMPLE_UNITS.has(base);
}

/** The valid code that was probably meant by one that is not valid; `null` when none is near enough. */
export function nearestUnitCode(code: string): string | null {
  const known = WRITTEN_FOR[code.toLowerCase()];
  if (known !== undefined) return known;
  const parts = code.split(/([./])/);
  const meant = parts.map((part) =>
    part === "" || SEPARATOR.test(part) || isUnitCode(part) ? part : meantBy(part),
  );
  if (meant.includes(null)) return null;
  const whole = meant.join("");
  return whole !== code && isUnitCode(whole) ? whole : null;
}

function meantBy(part: string): string | null {
  const [, base = part, exponent = ""] = /^(.*?)([+-]?\d+)?$/.exec(part) ?? [];
  const known = WRITTEN_FOR[base.toLowerCase()];
  if (known !== undefined) return known + exponent;
  const alike = [...SIMPLE_UNITS].filter((unit) => unit.toLowerCase() === base.toLowerCase());
  // Of units that differ in capitals only, such as mPa and MPa, the most common in a procedure comes first.
  const [first] = alike.sort((a, b) => rank(a) - rank(b));
  return first === undefined ? null : first + exponent;
}

const COMMON = [
  "kPa",
  "m",
  "mm",
  "cm",
  "km",
  "s",
  "g",
  "kg",
  "N",
  "V",
  "A",
  "W",
  "Hz",
  "L",
  "mL",
  "mol",
  "J",
];
const rank = (unit: string) => (COMMON.includes(unit) ? COMMON.indexOf(unit) : COMMON.length);
