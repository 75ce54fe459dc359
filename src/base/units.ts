import Fraction from 'fraction.js'
import { currencies } from './currencies.ts'
import { type Dims, dims, overDims } from './dims.ts'

/** A unit a person may type. Value in base units = number x `factor` + `offset`. */
export interface Unit {
  readonly symbol: string
  readonly dims: Dims
  /** Exact, in the base units mm, s, g, A, K, turn, working day and major unit of a currency. */
  readonly factor: Fraction
  /** Not zero for degrees Celsius alone. */
  readonly offset: Fraction
}

const newton = '1000000'
/** A newton metre, joule, watt, volt, ohm and henry each come to this in g, mm, s and A. */
const newtonMetre = '1000000000'
const poundForce = '4.4482216152605'

/**
 * Dimensions, factor of the group, and its units with their factors; spellings of one unit are split by `|`.
 * All exact. A pound-force is 0.45359237 kg under 9.80665 m/s2, an inch 25.4 mm.
 * Source: NIST SP 811 appendix B and the SI brochure (BIPM) tables 4, 7 and 8, from memory. `thou` and `mil` for
 * 0.001 in, `N m` written as one word, `in lb` for inch pound-force: common practice, no source.
 */
const groups: readonly (readonly [Readonly<Record<string, number>>, string, string])[] = [
  [{ length: 1 }, '1', 'mm 1, m 1000, cm 10, dm 100, km 1000000, um 0.001, nm 0.000001'],
  [{ length: 1 }, '25.4', 'in 1, ft 12, yd 36, thou|mil 0.001'],
  [{ length: 2 }, '1', 'mm2 1, cm2 100, dm2 10000, m2 1000000, in2 645.16'],
  [{ length: 3 }, '1', 'mm3|uL|ul 1, cm3|mL|ml|cc 1000, L|l|dm3 1000000, m3 1000000000, in3 16387.064'],
  [{ time: 1 }, '1', 's 1, ms 0.001, us 0.000001, min 60, h 3600, d 86400'],
  [{ workingDays: 1 }, '1', 'wd 1'],
  [{ mass: 1 }, '1', 'g 1, kg 1000, mg 0.001, ug 0.000001, t 1000000, lb 453.59237, oz 28.349523125'],
  [{ turn: 1 }, '1', 'rev 1, deg|° 1/360'],
  [{ turn: 1, time: -1 }, '1', 'rpm 1/60'],
  [{ time: -1 }, '1', 'Hz 1, kHz 1000, MHz 1000000, GHz 1000000000'],
  [{ temperature: 1 }, '1', 'K 1'],
  [{ mass: 1, length: 1, time: -2 }, newton, 'N 1, mN 0.001, kN 1000, kgf 9.80665, gf 0.00980665'],
  [{ mass: 1, length: 1, time: -2 }, newton, `lbf ${poundForce}, ozf ${poundForce}*1/16`],
  [{ mass: 1, length: 2, time: -2 }, newtonMetre, 'N m|Nm 1, N cm|Ncm 0.01, N mm|Nmm 0.001, mN m|mNm 0.001'],
  [{ mass: 1, length: 2, time: -2 }, newtonMetre, 'uN m|uNm 0.000001, kN m|kNm 1000, kgf cm 0.0980665'],
  [{ mass: 1, length: 2, time: -2 }, newtonMetre, `in lb|in lbf|lb in|lbf in ${poundForce}*0.0254`],
  [{ mass: 1, length: 2, time: -2 }, newtonMetre, `ft lb|ft lbf|lb ft|lbf ft ${poundForce}*0.3048`],
  [{ mass: 1, length: 2, time: -2 }, newtonMetre, `oz in|ozf in|in oz|in ozf ${poundForce}*0.0254*1/16`],
  [{ mass: 1, length: 2, time: -2 }, newtonMetre, 'J 1, mJ 0.001, kJ 1000, Wh 3600, kWh 3600000'],
  [
    { mass: 1, length: -1, time: -2 },
    '1',
    'Pa 1, kPa 1000, MPa 1000000, GPa 1000000000, mbar 100, bar 100000',
  ],
  [{ mass: 1, length: -1, time: -2 }, `${newton}*${poundForce}*100/64516`, 'psi 1, ksi 1000'],
  [{ mass: 1, length: 2, time: -3 }, newtonMetre, 'W 1, mW 0.001, uW 0.000001, kW 1000'],
  [{ current: 1 }, '1', 'A 1, mA 0.001, uA 0.000001, nA 0.000000001'],
  [{ current: 1, time: 1 }, '3600', 'Ah 1, mAh 0.001'],
  [{ mass: 1, length: 2, time: -3, current: -1 }, newtonMetre, 'V 1, mV 0.001, uV 0.000001, kV 1000'],
  [{ mass: 1, length: 2, time: -3, current: -2 }, newtonMetre, 'ohm|Ω 1, mohm|mΩ 0.001, kohm|kΩ 1000'],
  [{ mass: 1, length: 2, time: -3, current: -2 }, newtonMetre, 'Mohm|MΩ 1000000'],
  [{ mass: -1, length: -2, time: 4, current: 2 }, `1/${newtonMetre}`, 'F 1, mF 1/1000, uF 1/1000000'],
  [{ mass: -1, length: -2, time: 4, current: 2 }, `1/${newtonMetre}`, 'nF 1/1000000000, pF 1/1000000000000'],
  [{ mass: 1, length: 2, time: -2, current: -2 }, newtonMetre, 'H 1, mH 0.001, uH 0.000001, nH 1/1000000000'],
  [{}, '1', '% 0.01, ppm 0.000001'],
]

/** Counted things that may stand below the line only: a feed per tooth is a length, a time per layer a time. */
const counted: readonly string[] = ['tooth', 'layer', 'piece']

const zero = new Fraction(0)
const celsius: readonly Unit[] = ['°C', 'degC'].map((symbol) => ({
  symbol,
  dims: dims({ temperature: 1 }),
  factor: new Fraction(1),
  offset: new Fraction('273.15'),
}))

const table: ReadonlyMap<string, Unit> = new Map([
  ...groups.flatMap(([powers, scale, units]) =>
    units.split(', ').flatMap((unit) => entry(powers, scale, unit)),
  ),
  ...[...currencies.keys()].flatMap((code) => entry({ [`money:${code}`]: 1 }, '1', `${code} 1`)),
  ...celsius.map((unit) => [unit.symbol, unit] as const),
])

/** Every unit symbol, in the order of the table; the last few stand below the line only. */
export const unitSymbols: readonly string[] = [...table.keys(), ...counted]

/** Signs that mean the same, made one: micro, ohm, raised powers, the dot of a product, spaces. */
export function foldSigns(text: string): string {
  return text
    .replace(/[µμ]/g, 'u')
    .replace(/\u2126/g, 'Ω')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[·⋅]/g, ' ')
    .replace(/−/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
}

/**
 * The unit a text names: one symbol, or two with a line between (`in/min`); the empty text is the unit of a bare
 * ratio; `null` where it is not known. Case counts: `mm` is a unit, `MM` is not.
 */
export function findUnit(text: string): Unit | null {
  const [above, below, ...more] = foldSigns(text)
    .split('/')
    .map((part) => part.trim())
  if (above === undefined || more.length > 0) return null
  if (below === undefined) return above === '' ? countedUnit('') : (table.get(above) ?? null)
  const upper = table.get(above)
  const lower = counted.includes(below) ? countedUnit(below) : table.get(below)
  if (!upper || !lower) return null
  const symbol = `${above}/${below}`
  return {
    symbol,
    dims: overDims(upper.dims, lower.dims),
    factor: upper.factor.div(lower.factor),
    offset: zero,
  }
}

function countedUnit(symbol: string): Unit {
  return { symbol, dims: dims({}), factor: new Fraction(1), offset: zero }
}

function entry(powers: Readonly<Record<string, number>>, scale: string, unit: string): [string, Unit][] {
  const gap = unit.lastIndexOf(' ')
  const factor = product(`${scale}*${unit.slice(gap + 1)}`)
  return unit
    .slice(0, gap)
    .split('|')
    .map((symbol) => [symbol, { symbol, dims: dims(powers), factor, offset: zero }])
}

function product(factors: string): Fraction {
  return factors.split('*').reduce((so, factor) => so.mul(new Fraction(factor)), new Fraction(1))
}
