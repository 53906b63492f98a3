import { accept, type Complaint, type Result, refuse } from '../units/complaint.ts';
import { say } from '../units/phrase.ts';
import { quote } from '../units/quote.ts';
import { shortValue } from '../units/shortValue.ts';

/** Air that wood is in equilibrium with. */
export interface Air {
  /** Temperature in degrees Celsius. */
  readonly celsius: number;
  /** Relative humidity in percent, 0 to 100. */
  readonly humidity: number;
}

export const celsiusOfFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

export const fahrenheitOfCelsius = (celsius: number): number => (celsius * 9) / 5 + 32;

/**
 * Where the published table has a value for every humidity: 30 F to 210 F, the last row below the boiling point, and
 * 5 % to 95 % (Wood Handbook, FPL-GTR-190, Table 4-2; its range is written down from memory).
 */
const COLDEST = -1.1;
const HOTTEST = 98.9;
const DRIEST_AIR = 5;
const DAMPEST_AIR = 95;

/** Above this moisture content wood is green: the walls of its cells are full, and it no longer swells. */
const GREEN = 30;

/** Whether a figure lies in a published range, judged to the tenth, as the tables print it and as we show it. */
export const isWithin = (figure: number, least: number, most: number): boolean => {
  const tenths = Math.round(figure * 10);
  return tenths >= least * 10 && tenths <= most * 10;
};

/**
 * Equilibrium moisture content of wood in air.
 * Wood Handbook (FPL-GTR-190), equation 4-5, for −1.1 to 98.9 degrees C and 5 % to 95 % relative humidity.
 * @returns percent of the dry wood's weight, or a complaint with an empty place for each figure outside that range
 * @example
 * ```ts
 * const moisture = equilibriumMoisture({ celsius: 21.1, humidity: 45 });
 * if (moisture.ok) console.log(moisture.value.toFixed(1)); // 8.5
 * ```
 */
export const equilibriumMoisture = (air: Air): Result<number> => {
  const complaints = [
    ...(isWithin(air.celsius, COLDEST, HOTTEST) ? [] : [noTemperature(air.celsius)]),
    ...(isWithin(air.humidity, DRIEST_AIR, DAMPEST_AIR) ? [] : [noHumidity(air.humidity)]),
  ];
  return complaints.length > 0 ? refuse(...complaints) : accept(equation45(air.celsius, air.humidity / 100));
};

/** Equation 4-5: t in degrees C, h as a fraction; the letters are the handbook's. */
const equation45 = (t: number, h: number): number => {
  const w = 349 + 1.29 * t + 0.0135 * t * t;
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
  const kh = k * h;
  return (1800 / w) * (kh / (1 - kh) + (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh));
};

const NUMBER = String.raw`\d{1,6}(?:[.,]\d+)?|[.,]\d+`;
const AIR = new RegExp(
  String.raw`^(?<sign>[-−+]?)\s*(?<degrees>${NUMBER})\s*°?\s*(?<scale>[CF])\s*/\s*(?<humidity>${NUMBER})\s*%$`,
  'iu',
);
const MOISTURE = new RegExp(String.raw`^(?<moisture>${NUMBER})\s*%$`);

/**
 * Reads conditions as a moisture content: the air as `21C/45%` or `70F/45%`, or what a moisture meter says as `8%`.
 * Spaces, a degree sign, small letters and a decimal comma are welcome.
 * @returns moisture content in percent, 0 to 30, or complaints with an empty place
 * @example
 * ```ts
 * const metered = parseMoisture('8,5 %');
 * if (metered.ok) console.log(metered.value); // 8.5
 * ```
 */
export const parseMoisture = (text: string): Result<number> => {
  const plain = shortValue(text);
  const air = AIR.exec(plain)?.groups;
  if (air !== undefined) {
    const degrees = (air.sign === '-' || air.sign === '−' ? -1 : 1) * numberOf(air.degrees);
    return equilibriumMoisture({
      celsius: air.scale?.toUpperCase() === 'F' ? celsiusOfFahrenheit(degrees) : degrees,
      humidity: numberOf(air.humidity),
    });
  }
  const moisture = MOISTURE.exec(plain)?.groups;
  if (moisture === undefined) return noConditions(text);
  const percent = numberOf(moisture.moisture);
  return percent <= GREEN ? accept(percent) : tooWet(percent);
};

const numberOf = (text: string | undefined): number => Number(text?.replace(',', '.'));

/** A percentage for reading, to the tenth that the published tables give: `8.5 %`. */
export const formatPercent = (percent: number): string => `${Number(percent.toFixed(1))} %`;

const formatTemperature = (celsius: number): string =>
  `${Number(celsius.toFixed(1))} °C (${Number(fahrenheitOfCelsius(celsius).toFixed(1))} °F)`;

const noTemperature = (celsius: number): Complaint => ({
  at: [],
  says: say`${formatTemperature(celsius)} is outside the published table; a temperature must be ${formatTemperature(COLDEST)} to ${formatTemperature(HOTTEST)}`,
  hint: say`21C/45%`,
});

const noHumidity = (humidity: number): Complaint => ({
  at: [],
  says: say`a relative humidity of ${formatPercent(humidity)} is outside the published table; it must be ${DRIEST_AIR} % to ${DAMPEST_AIR} %`,
  hint: say`21C/45%`,
});

const tooWet = (percent: number): Result<never> =>
  refuse({
    at: [],
    says: say`wood of ${percent} % moisture content is still green; it must be 0 % to ${GREEN} %, and a relative humidity needs its temperature`,
    hint: say`8% or 21C/45%`,
  });

const noConditions = (text: string): Result<never> =>
  refuse({
    at: [],
    says: say`${quote(text)} is neither air nor a moisture content; air is a temperature and a relative humidity`,
    hint: say`21C/45%, 70F/45% or 8%`,
  });
