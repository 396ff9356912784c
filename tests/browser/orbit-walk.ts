/** The orbit walk that comes with the app. */
export const ORBIT_WALK = "Ranging head exchange and fin shunt";
