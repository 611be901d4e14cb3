/** What the referee is asked for; the package has no types of its own. Pa, degC, J/kg, shares. */
declare module 'psychrolib' {
    const psychrolib: {
        readonly SI: number;
        SetUnitSystem(system: number): void;
        GetSatVapPres(celsius: number): number;
        GetHumRatioFromVapPres(vapourPa: number, pressurePa: number): number;
        GetTDewPointFromVapPres(celsius: number, vapourPa: number): number;
        GetMoistAirEnthalpy(celsius: number, ratio: number): number;
        GetMoistAirVolume(celsius: number, ratio: number, pressurePa: number): number;
        GetMoistAirDensity(celsius: number, ratio: number, pressurePa: number): number;
    };
    export default psychrolib;
}
