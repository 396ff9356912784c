/** The systems of units in which a reader may see quantities: metric, and US customary. */
export const SYSTEMS = ["si", "us"] as const;

export type System = (typeof SYSTEMS)[number];

/** A unit that is converted. */
export interface ConvertibleUnit {
  /** Units of one kind are converted into one another, and into no other: torque is no energy, although both are newton metres. */
  readonly kind: string;
  /** How many of the coherent SI unit of its kind it is. */
  readonly factor: number;
  /** Where its zero lies on the scale of that unit: of temperatures, in kelvin. */
  readonly zero: number;
  /** The unit by which it is shown in each system; `null` where it is of that system itself. */
  readonly shownIn: Readonly<Record<System, string | null>>;
}

// NIST SP 811 (2008), Appendix B: these are exact, and what is made of them too.
const INCH = 0.0254;
const FOOT = 0.3048;
const MILE = 5280 * FOOT;
const POUND = 0.45359237;
const POUND_FORCE = POUND * 9.80665;
const GALLON = 231 * INCH ** 3;
const BTU = 1055.05585262;
const LITRE = 1e-3;
const MINUTE = 60;
const HOUR = 3600;
/** A metre of mercury has the figure of UCUM, whose code a file gives; the conventional one is 3 in a million larger. */
const METRE_OF_MERCURY = 133_322;

/** Units of a kind by code: the factor, and by which unit of the other system it is shown. */
type Rows = Readonly<Record<string, readonly [factor: number, shown: string]>>;

/** A kind's units: metric ones, US customary ones, and those of neither with what they are shown by in both. */
interface Kind {
  readonly si: Rows;
  readonly us: Rows;
  readonly neither?: Readonly<Record<string, readonly [factor: number, si: string, us: string]>>;
}

const KINDS: Readonly<Record<string, Kind>> = {
  pressure: {
    si: {
      Pa: [1, "[psi]"],
      hPa: [100, "[psi]"],
      kPa: [1000, "[psi]"],
      MPa: [1e6, "[psi]"],
      mbar: [100, "[psi]"],
      bar: [1e5, "[psi]"],
    },
    us: {
      "[psi]": [POUND_FORCE / INCH ** 2, "kPa"],
      "[in_i'Hg]": [METRE_OF_MERCURY * INCH, "kPa"],
    },
    neither: {
      atm: [101_325, "kPa", "[psi]"],
      "mm[Hg]": [METRE_OF_MERCURY / 1000, "kPa", "[psi]"],
    },
  },
  length: {
    si: {
      mm: [1e-3, "[in_i]"],
      cm: [1e-2, "[in_i]"],
      m: [1, "[ft_i]"],
      km: [1000, "[mi_i]"],
    },
    us: {
      "[in_i]": [INCH, "mm"],
      "[ft_i]": [FOOT, "m"],
      "[mi_i]": [MILE, "km"],
    },
  },
  speed: {
    si: {
      "mm/s": [1e-3, "[in_i]/s"],
      "cm/s": [1e-2, "[in_i]/s"],
      "m/s": [1, "[ft_i]/s"],
      "m/min": [1 / MINUTE, "[ft_i]/min"],
      "km/h": [1000 / HOUR, "[mi_i]/h"],
    },
    us: {
      "[in_i]/s": [INCH, "cm/s"],
      "[ft_i]/s": [FOOT, "m/s"],
      "[ft_i]/min": [FOOT / MINUTE, "m/min"],
      "[mi_i]/h": [MILE / HOUR, "km/h"],
    },
  },
  mass: {
    si: { g: [1e-3, "[oz_av]"], kg: [1, "[lb_av]"] },
    us: { "[oz_av]": [POUND / 16, "g"], "[lb_av]": [POUND, "kg"] },
  },
  "mass by time": {
    si: {
      "g/min": [1e-3 / MINUTE, "[oz_av]/min"],
      "g/h": [1e-3 / HOUR, "[oz_av]/h"],
      "kg/h": [1 / HOUR, "[lb_av]/h"],
    },
    us: {
      "[oz_av]/min": [POUND / 16 / MINUTE, "g/min"],
      "[oz_av]/h": [POUND / 16 / HOUR, "g/h"],
      "[lb_av]/h": [POUND / HOUR, "kg/h"],
    },
  },
  force: {
    si: { N: [1, "[lbf_av]"], kN: [1000, "[lbf_av]"] },
    us: { "[lbf_av]": [POUND_FORCE, "N"] },
  },
  torque: {
    si: { "N.cm": [1e-2, "[in_i].[lbf_av]"], "N.m": [1, "[ft_i].[lbf_av]"] },
    us: {
      "[in_i].[lbf_av]": [INCH * POUND_FORCE, "N.m"],
      "[lbf_av].[in_i]": [INCH * POUND_FORCE, "N.m"],
      "[ft_i].[lbf_av]": [FOOT * POUND_FORCE, "N.m"],
      "[lbf_av].[ft_i]": [FOOT * POUND_FORCE, "N.m"],
    },
  },
  volume: {
    si: {
      mL: [1e-6, "[foz_us]"],
      ml: [1e-6, "[foz_us]"],
      L: [LITRE, "[gal_us]"],
      l: [LITRE, "[gal_us]"],
      m3: [1, "[cft_i]"],
    },
    us: {
      "[foz_us]": [GALLON / 128, "mL"],
      "[gal_us]": [GALLON, "L"],
      "[cft_i]": [FOOT ** 3, "m3"],
      "[ft_i]3": [FOOT ** 3, "m3"],
    },
  },
  "volume by time": {
    si: {
      "mL/min": [1e-6 / MINUTE, "[foz_us]/min"],
      "L/min": [LITRE / MINUTE, "[cft_i]/min"],
      "l/min": [LITRE / MINUTE, "[cft_i]/min"],
    },
    us: {
      "[foz_us]/min": [GALLON / 128 / MINUTE, "mL/min"],
      "[gal_us]/min": [GALLON / MINUTE, "L/min"],
      "[cft_i]/min": [FOOT ** 3 / MINUTE, "L/min"],
      "[ft_i]3/min": [FOOT ** 3 / MINUTE, "L/min"],
    },
  },
  power: {
    si: { W: [1, "[Btu_IT]/h"], kW: [1000, "[Btu_IT]/h"] },
    us: {
      "[Btu_IT]/h": [BTU / HOUR, "W"],
      "[Btu_th]/h": [1054.35 / HOUR, "W"],
      "[Btu]/h": [1054.35 / HOUR, "W"],
    },
  },
  energy: {
    si: {
      J: [1, "[Btu_IT]"],
      kJ: [1000, "[Btu_IT]"],
      MJ: [1e6, "[Btu_IT]"],
      "W.h": [HOUR, "[Btu_IT]"],
      "kW.h": [1000 * HOUR, "[Btu_IT]"],
    },
    // The plain one is the thermochemical one.
    us: { "[Btu_IT]": [BTU, "kJ"], "[Btu_th]": [1054.35, "kJ"], "[Btu]": [1054.35, "kJ"] },
  },
  temperature: {
    si: { Cel: [1, "[degF]"], K: [1, "[degF]"] },
    us: { "[degF]": [5 / 9, "Cel"] },
  },
};

const ZEROS: Readonly<Record<string, number>> = { Cel: 273.15, "[degF]": (459.67 * 5) / 9 };

/** Every unit that is converted, by its UCUM code, and no other. */
export const CONVERTIBLE_UNITS: ReadonlyMap<string, ConvertibleUnit> = new Map(
  Object.entries(KINDS).flatMap(([kind, { si, us, neither = {} }]) => {
    const unit = (code: string, factor: number, shownIn: ConvertibleUnit["shownIn"]) =>
      [code, { kind, factor, zero: ZEROS[code] ?? 0, shownIn }] as const;
    return [
      ...Object.entries(si).map(([code, [factor, shown]]) => unit(code, factor, { si: null, us: shown })),
      ...Object.entries(us).map(([code, [factor, shown]]) => unit(code, factor, { si: shown, us: null })),
      ...Object.entries(neither).map(([code, [factor, ...shown]]) =>
        unit(code, factor, { si: shown[0], us: shown[1] }),
      ),
    ];
  }),
);
