/**
 * Energy spent and gas used. These only help the people who judge a walk's supplies; the flight surgeon and the flight
 * rules decide. Gas volumes are litres at 0 °C and 101.325 kPa, dry (STPD).
 */

/**
 * Weir, J. B. de V. (1949), J. Physiol. 109, 1–9: kcal for each litre of oxygen taken up and of carbon dioxide given
 * off.
 */
const KCAL_PER_LITRE_OXYGEN = 3.941;
const KCAL_PER_LITRE_CARBON_DIOXIDE = 1.106;

/** The volume of a mole of ideal gas at 0 °C and 101.325 kPa; below, the molar masses. */
const LITRES_PER_MOLE = 22.414;
const GRAMS_PER_MOLE = { oxygen: 31.998, carbonDioxide: 44.01 } as const;

/** Thermochemical kilocalorie (exact, ISO 80000-5 annex) in joules. */
const JOULES_PER_KCAL = 4184;

/** Gas taken up and given off in an hour. */
export interface GasTurnover {
  readonly oxygenLitres: number;
  readonly carbonDioxideLitres: number;
  readonly oxygenGrams: number;
  readonly carbonDioxideGrams: number;
}

/**
 * Metabolic rate in kcal over the time in which the volumes were measured, by the abbreviated formula of Weir (1949),
 * which leaves protein out: 3.941 V(O2) + 1.106 V(CO2), in litres STPD. The flight surgeon and the flight rules decide
 * what it means.
 */
export function energyOf(oxygenLitres: number, carbonDioxideLitres: number): number {
  return KCAL_PER_LITRE_OXYGEN * oxygenLitres + KCAL_PER_LITRE_CARBON_DIOXIDE * carbonDioxideLitres;
}

/**
 * Oxygen used and carbon dioxide given off in an hour at a metabolic rate in kcal/h. It solves the formula of Weir
 * (1949) for the volumes, with V(CO2) = respiratory quotient × V(O2), and takes masses as those of ideal gases. Returns
 * `null` unless the rate is zero or more and the quotient above zero. The flight surgeon and the flight rules decide
 * what it means.
 */
export function gasFor(kcalPerHour: number, respiratoryQuotient: number): GasTurnover | null {
  if (!(kcalPerHour >= 0 && respiratoryQuotient > 0)) return null;
  if (!Number.isFinite(kcalPerHour + respiratoryQuotient)) return null;
  const oxygenLitres = kcalPerHour / energyOf(1, respiratoryQuotient);
  const carbonDioxideLitres = oxygenLitres * respiratoryQuotient;
  return {
    oxygenLitres,
    carbonDioxideLitres,
    oxygenGrams: (oxygenLitres / LITRES_PER_MOLE) * GRAMS_PER_MOLE.oxygen,
    carbonDioxideGrams: (carbonDioxideLitres / LITRES_PER_MOLE) * GRAMS_PER_MOLE.carbonDioxide,
  };
}

/** Converts a metabolic rate from watts to kcal/h (thermochemical kilocalorie, 4184 J). */
export function kcalPerHourOf(watts: number): number {
  return (watts * 3600) / JOULES_PER_KCAL;
}
