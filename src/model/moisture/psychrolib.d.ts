/** The functions of PsychroLib 2.5 that this room uses; temperatures in °C, pressures in Pa, ratios in kg/kg, humidity 0 to 1. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Saturation pressure of water vapour, Pa: over ice below 0.01 °C, over water above. */
    GetSatVapPres(temperature: number): number;
    GetHumRatioFromVapPres(vapourPressure: number, pressure: number): number;
    GetVapPresFromHumRatio(humidityRatio: number, pressure: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}
