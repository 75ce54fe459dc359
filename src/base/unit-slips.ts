import { currencies } from './currencies.ts'
import { nearNames } from './near-names.ts'
import { findUnit, foldSigns, unitSymbols } from './units.ts'

/** Words and signs people type for a unit, and the units they mean. Common practice, no source. */
const slips: ReadonlyMap<string, readonly string[]> = new Map(
  [
    '" in, inch in, inches in, \' ft, foot ft, feet ft, mils mil, micron um, microns um, metre m, meter m',
    'sec s, secs s, second s, seconds s, minute min, minutes min, mins min, hr h, hrs h, hour h, hours h',
    'day d|wd, days d|wd, gram g, grams g, kilo kg, lbs lb, litre L, liter L, c °C, degree deg|°C',
    'degrees deg|°C, percent %, turn rev, turns rev, teeth tooth, layers layer, pcs piece, pieces piece',
    '€ EUR, euro EUR, euros EUR, £ GBP, $ USD|CAD|AUD, dollar USD, dollars USD, ¥ JPY|CNY',
  ]
    .flatMap((line) => line.split(', '))
    .map((pair) => pair.split(' '))
    .map(([typed, meant]) => [typed!, meant!.split('|')]),
)

const unitsOnly = unitSymbols.filter((symbol) => !currencies.has(symbol))

/** Up to three units that a person may have meant by one that is not known, each half of a quotient by itself. */
export function nearUnits(unit: string): string[] {
  const [above = '', below] = foldSigns(unit)
    .split('/')
    .map((part) => part.trim())
  if (below === undefined) return nearSymbols(above)
  const upper = findUnit(above) ? [above] : nearSymbols(above)
  const lower = findUnit(`mm/${below}`) ? [below] : nearSymbols(below)
  return upper.flatMap((a) => lower.map((b) => `${a}/${b}`)).slice(0, 3)
}

function nearSymbols(symbol: string): string[] {
  const slip = slips.get(symbol.toLowerCase())
  if (slip) return [...slip]
  const sameLetters = unitSymbols.filter((other) => other.toLowerCase() === symbol.toLowerCase())
  if (sameLetters.length > 0) return sameLetters.sort().slice(0, 3)
  return nearNames(symbol, symbol.length === 3 && symbol === symbol.toUpperCase() ? unitSymbols : unitsOnly)
}
