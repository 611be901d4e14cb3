/**
 * Moist air as a mixture of ideal gases, by ASHRAE Handbook Fundamentals 2017, chapter 1. Everything is worked out from the vapour pressure: near and above boiling the
 * saturation humidity ratio has no meaning, a vapour pressure and a relative humidity still have one.
 */

/** Of the standard atmosphere at sea level, Pa. */
export const standardPressurePa = 101_325;
/** Gas constant, J/(mol K), and molar mass of water, kg/mol. */
export const gasConstant = 8.314462618;
export const waterKgPerMol = 0.01801528;
/** Gas constant of dry air, J/(kg K); the ratio of the molar masses of water and dry air. ASHRAE 2017, eq. 1 and 20. */
const dryAirJPerKgK = 287.042;
const massRatio = 0.621945;
export const kelvin = (celsius: number): number => celsius + 273.15;

const overIce = [-5.6745359e3, 6.3925247, -9.677843e-3, 6.2215701e-7, 2.0747825e-9, -9.484024e-13, 4.1635019] as const;
const overWater = [-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 6.5459673] as const;

/**
 * Vapour pressure at saturation in Pa, over ice below 0.01 degC and over water above.
 * Source: ASHRAE 2017, chapter 1, eq. 5 and 6. Stands for -100 to 200 degC; throws outside. Agrees with table 3 within 0.03 %.
 */
export function saturationPressure(celsius: number): number {
    if (!(celsius >= -100 && celsius <= 200)) throw new RangeError(`No saturation pressure is published at ${celsius} degC`);
    const t = kelvin(celsius);
    if (celsius <= 0.01) {
        const [a, b, c, d, e, f, g] = overIce;
        return Math.exp(a / t + b + t * (c + t * (d + t * (e + t * f))) + g * Math.log(t));
    }
    const [a, b, c, d, e, g] = overWater;
    return Math.exp(a / t + b + t * (c + t * (d + t * e)) + g * Math.log(t));
}

/** Partial pressure of the vapour in Pa. @param humidity relative, 0 to 1 */
export const vapourPressure = (celsius: number, humidity: number): number => humidity * saturationPressure(celsius);
/** Relative humidity, 0 and up; above 1 the air is wetter than it can be. */
export const relativeHumidity = (celsius: number, vapourPa: number): number => vapourPa / saturationPressure(celsius);

/** Humidity ratio in kg of vapour for each kg of dry air. Source: ASHRAE 2017, chapter 1, eq. 20. @returns nothing where there is no dry air left */
export const humidityRatio = (vapourPa: number, pressurePa = standardPressurePa): number | undefined =>
    vapourPa >= 0 && vapourPa < pressurePa ? massRatio * vapourPa / (pressurePa - vapourPa) : undefined;

/** Vapour pressure in Pa of air with a humidity ratio; the inverse of `humidityRatio`. */
export const vapourPressureOf = (ratio: number, pressurePa = standardPressurePa): number => pressurePa * ratio / (massRatio + ratio);

/**
 * Dew point in degC: the temperature at which `vapourPa` saturates, found on the equation itself by halving, within 1e-9 K.
 * @returns nothing for air without vapour, or with more than the equation covers
 */
export function dewPoint(vapourPa: number): number | undefined {
    let low = -100;
    let high = 200;
    if (!(vapourPa >= saturationPressure(low) && vapourPa <= saturationPressure(high))) return undefined;
    while (high - low > 1e-9) {
        const middle = (low + high) / 2;
        if (saturationPressure(middle) < vapourPa) low = middle; else high = middle;
    }
    return (low + high) / 2;
}

/** Enthalpy in J for each kg of dry air, zero for dry air at 0 degC. Source: ASHRAE 2017, chapter 1, eq. 30. */
export const moistAirEnthalpy = (celsius: number, ratio: number): number => 1000 * (1.006 * celsius + ratio * (2501 + 1.86 * celsius));

/** Volume in m3 for each kg of dry air. Source: ASHRAE 2017, chapter 1, eq. 26. */
export const moistAirVolume = (celsius: number, ratio: number, pressurePa = standardPressurePa): number =>
    dryAirJPerKgK * kelvin(celsius) * (1 + 1.607858 * ratio) / pressurePa;
/** Density in kg/m3 of the mixture. */
export const moistAirDensity = (celsius: number, ratio: number, pressurePa = standardPressurePa): number => (1 + ratio) / moistAirVolume(celsius, ratio, pressurePa);

/** Heat in J that turns 1 kg of water of `fromC` into steam on the stones at 100 degC: 4186 J/(kg K) and 2257 kJ/kg. */
export const heatOfSteam = (fromC: number): number => 4186 * (100 - fromC) + 2_257_000;
/** Volume in m3 that 1 kg of vapour takes alone at a temperature, as an ideal gas. */
export const steamVolume = (celsius: number, pressurePa = standardPressurePa): number => gasConstant * kelvin(celsius) / (waterKgPerMol * pressurePa);
/** Rise of the vapour pressure in Pa when `kg` of vapour spread through a closed volume, as an ideal gas. */
export const vapourPressureRise = (kg: number, volumeM3: number, celsius: number): number => kg * gasConstant * kelvin(celsius) / (waterKgPerMol * volumeM3);

/** Air at one temperature with its vapour. */
export interface AirState {
    readonly celsius: number;
    readonly vapourPa: number;
    readonly humidity: number;
    /** kg of vapour for each kg of dry air; absent where there is no dry air left. */
    readonly ratio?: number;
    /** J for each kg of dry air. */
    readonly enthalpy?: number;
    readonly dewPointC?: number;
    /** kg/m3 */
    readonly density?: number;
}

/** Everything about air of a temperature and a vapour pressure. */
export function airState(celsius: number, vapourPa: number): AirState {
    const ratio = humidityRatio(vapourPa);
    const dew = dewPoint(vapourPa);
    return {
        celsius, vapourPa, humidity: relativeHumidity(celsius, vapourPa), ...(dew !== undefined && { dewPointC: dew }),
        ...(ratio !== undefined && { ratio, enthalpy: moistAirEnthalpy(celsius, ratio), density: moistAirDensity(celsius, ratio) }),
    };
}

/** Air before and after one ladle of water on the stones. */
export interface Steam {
    readonly before: AirState;
    readonly after: AirState;
    /** Vapour in kg that would not stay vapour: the air was full before. Zero in a hot room. */
    readonly condensedKg: number;
    /** Heat in J the stones give. */
    readonly heatJ: number;
}

/**
 * One ladle: all of the water leaves the stones as steam, mixes with the air of the room at once and none of it is aired out; the temperature of the air is held. Steam of
 * 100 degC cooling to the air's temperature would raise it by about a degree, which is left out.
 */
export function ladle(kg: number, volumeM3: number, before: AirState, waterC: number): Steam {
    const rise = vapourPressureRise(kg, volumeM3, before.celsius);
    const room = saturationPressure(before.celsius) - before.vapourPa;
    const share = rise > room ? Math.max(0, room) / rise : 1;
    return { before, after: airState(before.celsius, before.vapourPa + rise * share), condensedKg: kg * (1 - share), heatJ: kg * heatOfSteam(waterC) };
}
