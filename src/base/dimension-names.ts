import { anyMoney, type Dims, dims } from './dims.ts'

/** What each named dimension is made of, and the unit a person most likely means when none is typed. */
const named = {
  length: [{ length: 1 }, 'mm'],
  time: [{ time: 1 }, 'min'],
  'working days': [{ workingDays: 1 }, 'wd'],
  mass: [{ mass: 1 }, 'g'],
  area: [{ length: 2 }, 'cm2'],
  volume: [{ length: 3 }, 'cm3'],
  speed: [{ length: 1, time: -1 }, 'mm/min'],
  'area per time': [{ length: 2, time: -1 }, 'cm2/min'],
  'volume per time': [{ length: 3, time: -1 }, 'cm3/min'],
  'rotational speed': [{ turn: 1, time: -1 }, 'rpm'],
  'length per turn': [{ length: 1, turn: -1 }, 'mm/rev'],
  angle: [{ turn: 1 }, 'deg'],
  density: [{ mass: 1, length: -3 }, 'g/cm3'],
  force: [{ mass: 1, length: 1, time: -2 }, 'N'],
  'force per length': [{ mass: 1, time: -2 }, 'N/mm'],
  torque: [{ mass: 1, length: 2, time: -2 }, 'N m'],
  stress: [{ mass: 1, length: -1, time: -2 }, 'MPa'],
  power: [{ mass: 1, length: 2, time: -3 }, 'W'],
  'energy per area': [{ mass: 1, time: -2 }, 'mJ/cm2'],
  'power per area': [{ mass: 1, time: -3 }, 'mW/cm2'],
  current: [{ current: 1 }, 'A'],
  charge: [{ current: 1, time: 1 }, 'mAh'],
  voltage: [{ mass: 1, length: 2, time: -3, current: -1 }, 'V'],
  resistance: [{ mass: 1, length: 2, time: -3, current: -2 }, 'ohm'],
  capacitance: [{ mass: -1, length: -2, time: 4, current: 2 }, 'uF'],
  inductance: [{ mass: 1, length: 2, time: -2, current: -2 }, 'uH'],
  frequency: [{ time: -1 }, 'Hz'],
  temperature: [{ temperature: 1 }, '°C'],
  'expansion per degree': [{ temperature: -1 }, 'ppm/K'],
  ratio: [{}, '%'],
  money: [{ money: 1 }, 'EUR'],
  'money per time': [{ money: 1, time: -1 }, 'EUR/h'],
  'money per mass': [{ money: 1, mass: -1 }, 'EUR/kg'],
  'money per length': [{ money: 1, length: -1 }, 'EUR/m'],
  'money per area': [{ money: 1, length: -2 }, 'EUR/dm2'],
  'money per volume': [{ money: 1, length: -3 }, 'EUR/L'],
} as const satisfies Record<string, readonly [Readonly<Record<string, number>>, string]>

/** A dimension that callers ask for by name. */
export type DimensionName = keyof typeof named

/** Every named dimension. */
export const dimensionNames = Object.keys(named) as readonly DimensionName[]

/** Whether a word names a dimension. */
export const isDimensionName = (word: string): word is DimensionName => Object.hasOwn(named, word)

const made: ReadonlyMap<DimensionName, Dims> = new Map(
  dimensionNames.map((name) => [name, dims(named[name][0])]),
)

/** Whether dimensions are those of the name, any currency standing for money. */
export function measures(name: DimensionName, of: Dims): boolean {
  return made.get(name) === anyMoney(of)
}

/** The unit most likely meant where a quantity of this name has none. Currencies are shown as EUR. */
export function likelyUnit(name: DimensionName): string {
  return named[name][1]
}

/** The first name that fits the dimensions, or the dimensions themselves where no name does. */
export function nameDims(of: Dims): string {
  return dimensionNames.find((name) => measures(name, of)) ?? of
}
