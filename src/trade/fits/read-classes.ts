import { nearNames } from '../../base/near-names.ts'
import { type ShaftLetter, shaftLetters } from './fundamental-deviation.ts'
import type { SizeFault, SizeText, ToleranceClass } from './size-text.ts'

/** Classes that shops have gauges and reamers for. Source: ISO 286-2 preferred fits, from memory. */
const usual = [
  ...['H6', 'H7', 'H8', 'H9', 'H11', 'G7', 'F8', 'JS7', 'K7', 'N7', 'P7'],
  ...['f7', 'g6', 'h6', 'h7', 'h9', 'js6', 'k6', 'm6', 'n6', 'p6', 'r6', 's6'],
]

/** The class or the fit that stands in a text from `at` on. */
export function readClasses(typed: string, at: number, nominalMm: number): SizeText | SizeFault {
  const pattern = /^ *([A-Za-z]+)(\d+)(?: ?[/-] ?| +(?=[A-Za-z]))?(?:([A-Za-z]+)(\d+))? *$/
  const rest = typed.slice(at)
  const found = pattern.exec(rest)
  if (!found) return leftOver(rest, at)
  const first = toleranceClass([found[1]!, found[2]!], at + rest.indexOf(found[1]!))
  if ('fault' in first) return first
  if (found[3] === undefined) return { kind: 'class', nominalMm, class: first }
  const second = toleranceClass([found[3], found[4]!], at + rest.lastIndexOf(`${found[3]}${found[4]}`))
  if ('fault' in second) return second
  return fitOfClasses(nominalMm, [first, second], { text: rest.trim(), at, length: rest.length })
}

function leftOver(rest: string, at: number): SizeFault {
  const text = rest.trim()
  const start = at + rest.length - rest.trimStart().length
  return { fault: 'left over', text, at: start, length: text.length, near: nearNames(text, usual) }
}

function fitOfClasses(
  nominalMm: number,
  [first, second]: readonly [ToleranceClass, ToleranceClass],
  span: Pick<SizeFault, 'text' | 'at' | 'length'>,
): SizeText | SizeFault {
  if (first.gender === second.gender) return { fault: 'same gender', ...span, near: [] }
  if (first.gender === 'shaft')
    return { fault: 'order of fit', ...span, near: [`${nominalMm} ${second.text}/${first.text}`] }
  return { kind: 'fit', nominalMm, hole: first, shaft: second }
}

function toleranceClass(
  [letters, digits]: readonly [string, string],
  at: number,
): ToleranceClass | SizeFault {
  const text = `${letters}${digits}`
  const span = { text, at, length: text.length }
  const upper = letters === letters.toUpperCase()
  const letter = shaftLetters.find((known) => known === letters.toLowerCase())
  if (letter === undefined || (!upper && letters !== letters.toLowerCase()))
    return { fault: 'letter', ...span, near: nearLetters(letters, digits, upper) }
  const grade = Number(digits)
  if (!/^[1-9]\d?$/.test(digits) || grade > 18)
    return { fault: 'grade', ...span, near: usual.filter((known) => known.replace(/\d+/, '') === letters) }
  return { text, gender: upper ? 'hole' : 'shaft', letter, grade }
}

/** Neighbours in the alphabet of positions: `j6` gives `js6`, `c11` gives `d11`, `x6` gives `s6`. */
function nearLetters(letters: string, digits: string, upper: boolean): string[] {
  const small = letters.toLowerCase()
  const cased = (letter: ShaftLetter): string => (upper ? letter.toUpperCase() : letter)
  if (shaftLetters.some((known) => known === small))
    return [small, small.toUpperCase()].map((l) => `${l}${digits}`)
  const below = shaftLetters.filter((known) => known < small).at(-1)
  const above = shaftLetters.find((known) => known > small)
  return [above, below].flatMap((letter) => (letter ? [`${cased(letter)}${digits}`] : []))
}
