import { inUnit, readAs } from '../../base/quantity.ts'
import { isFault } from '../../base/quantity-fault.ts'
import { tidyMm } from '../tolerances/tidy.ts'
import { readClasses } from './read-classes.ts'
import type { ReadSize, SizeFault, SizeText } from './size-text.ts'

const number = '[-+]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)'
const unit = '(?:mm|in|thou|um|µm)(?![A-Za-z0-9])'
const value = `(${number}) ?(${unit})?`
/** Fractions are of inches alone: `25/24` is a pair of limits. */
const fraction = '(?:\\d+[ -])?\\d+/\\d+(?= ?in\\b)'
const head = new RegExp(`^ *([Øø⌀∅])? ?(${fraction}|${number}) ?(${unit})? ?`)
const even = new RegExp(`^(?:±|\\+/-|\\+-) ?${value} *$`)
const pair = new RegExp(`^\\(?${value} ?[/,]? ?${value}\\)? *$`)
const limitPair = new RegExp(`^[/-] ?[Øø⌀∅]? ?${value} *$`)
const single = new RegExp(`^([-+]) ?${value.replace('[-+]?', '')} *$`)

/** Unit of a bare number beside one with a unit: nobody means `10 ±5 µm` to be ten micrometres. */
const sizeUnits: Readonly<Record<string, string>> = { mm: 'mm', in: 'in', thou: 'in', um: 'mm', µm: 'mm' }

/** A number as text with the unit beside it, if any. */
type Written = readonly [number: string, unit: string | undefined]

/**
 * The size a text means: `6 H7`, `Ø6 H7/m6`, `25 ±0.05`, `10 +0.02 -0.01`, `12 +0.1/-0.02 mm`, `25.021 / 25.000`, `25`.
 * A bare number is in the unit written elsewhere in the text, else in mm.
 */
export function readSize(typed: string): ReadSize | SizeFault {
  const text = typed.replace(/[−–]/g, '-').replace(/μ/g, 'µ').replace(/\s/g, ' ')
  const whole = spanOf(typed, 0, typed.length)
  if (text.trim() === '') return { fault: 'empty', ...whole, near: [] }
  const comma = /\d,(?=\d)/.exec(text)
  if (comma)
    return {
      fault: 'comma',
      ...spanOf(typed, comma.index + 1, 1),
      near: [text.trim().replace(/(\d),(?=\d)/g, '$1.')],
    }
  const found = text.length > 200 ? null : head.exec(text)
  if (!found || /^[-+]/.test(found[2]!)) return { fault: 'not a size', ...whole, near: [] }
  const rest = text.slice(found[0].length)
  const written = new RegExp(` ?\\d ?(${unit})`).exec(text)?.[1]
  const sizeUnit = sizeUnits[written ?? ''] ?? 'mm'
  const read = readRest(typed, [found[2]!, found[3]], { rest, fallback: sizeUnit })
  if ('fault' in read) return read
  const unitFrom = written === sizeUnit ? ('written' as const) : ('default' as const)
  return { ...read, text: typed.trim(), isDiameter: found[1] !== undefined, unit: sizeUnit, unitFrom }
}

interface Rest {
  readonly rest: string
  readonly fallback: string
}

function readRest(typed: string, nominal: Written, { rest, fallback }: Rest): SizeText | SizeFault {
  const nominalMm = toMm(nominal, fallback)
  const at = typed.length - rest.length
  const span = spanOf(typed, at, rest.length)
  if (!(nominalMm > 0 && nominalMm < 1e6)) return { fault: 'not a size', ...spanOf(typed, 0, at), near: [] }
  if (rest.trim() === '') return { kind: 'plain', nominalMm }
  const evenly = even.exec(rest)
  if (evenly) {
    const halfMm = toMm([evenly[1]!, evenly[2]], fallback)
    if (halfMm < 0) return { fault: 'limits crossed', ...span, near: [] }
    return withDeviations(nominalMm, [halfMm, -halfMm], span)
  }
  const second = limitPair.exec(rest)
  if (second && isLimitPair(nominalMm, toMm([second[1]!, second[2]], fallback)))
    return ordered(nominalMm, toMm([second[1]!, second[2]], fallback))
  const both = pair.exec(rest)
  if (both && twoSigned(both)) {
    const deviations = [toMm([both[1]!, both[2]], fallback), toMm([both[3]!, both[4]], fallback)] as const
    return withDeviations(nominalMm, deviations, span)
  }
  const one = single.exec(rest)
  if (one) return oneDeviation(nominal[0], one, span)
  return readClasses(typed, at, nominalMm)
}

/** Upper first, as drawings have it; either order is taken where the signs are told apart. */
function withDeviations(
  nominalMm: number,
  [first, second]: readonly [number, number],
  span: Pick<SizeFault, 'text' | 'at' | 'length'>,
): SizeText | SizeFault {
  const [upperMm, lowerMm] = first < 0 && second >= 0 ? [second, first] : [first, second]
  if (lowerMm > upperMm) return { fault: 'limits crossed', ...span, near: [] }
  if (nominalMm + lowerMm <= 0) return { fault: 'not a size', ...span, near: [] }
  return { kind: 'deviations', nominalMm, upperMm, lowerMm }
}

/** `10 -0.02` is no pair of limits, `24.98 - 25.02` is. */
const isLimitPair = (first: number, second: number): boolean =>
  second > 0 && Math.max(first, second) <= 2 * Math.min(first, second)

function ordered(first: number, second: number): SizeText {
  return { kind: 'limits', minMm: Math.min(first, second), maxMm: Math.max(first, second) }
}

/** Each deviation has a sign, or is 0. */
function twoSigned(found: RegExpExecArray): boolean {
  return [found[1]!, found[3]!].every((text) => /^[-+]/.test(text) || Number(text) === 0)
}

function oneDeviation(
  nominal: string,
  [, sign, size]: RegExpExecArray,
  span: Pick<SizeFault, 'text' | 'at' | 'length'>,
): SizeFault {
  const full = sign === '+' ? `${nominal} +${size}/0` : `${nominal} 0/-${size}`
  return { fault: 'one deviation', ...span, near: [full, `${nominal} ±${size}`] }
}

function spanOf(typed: string, at: number, length: number): Pick<SizeFault, 'text' | 'at' | 'length'> {
  const text = typed.slice(at, at + length)
  const skipped = text.length - text.trimStart().length
  return { text: text.trim(), at: at + skipped, length: text.trim().length }
}

function toMm([text, own]: Written, fallback: string): number {
  const read = readAs(`${text.replace(/^\+/, '').replace(/(\d)-(?=\d)/, '$1 ')} ${own ?? fallback}`, 'length')
  if (isFault(read)) return Number.NaN
  return tidyMm(inUnit(read.value, 'mm')!.valueOf())
}
