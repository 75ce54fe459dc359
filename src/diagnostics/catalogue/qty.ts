import { type DimensionName, dimensionNames } from '../../base/dimension-names.ts'
import { nameList } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import type { ThreePointFault } from '../../base/three-point.ts'
import { message } from '../message.ts'

/** A text that is no such quantity. */
export interface Unread {
  readonly key: string
  readonly fault: ThreePointFault
  readonly wanted: readonly DimensionName[]
}

const oneOf = (texts: readonly string[], otherwise: string): string =>
  texts.length > 0 ? `write ${nameList(texts.slice(0, 3), 'or')}` : otherwise

const example: Partial<Record<DimensionName, string>> = {
  length: '25 mm',
  time: '90 min',
  'working days': '5 wd',
  mass: '12 g',
  volume: '8.5 cm3',
  area: '32 cm2',
  speed: '400 mm/min',
  torque: '0.15 N m',
  density: '2.7 g/cm3',
  money: '12.50 EUR',
  'money per time': '20 EUR/h',
  'rotational speed': '9000 rpm',
  'volume per time': '12 cm3/h',
  ratio: '40 %',
  power: '500 W',
}
const such = (wanted: readonly DimensionName[]): string =>
  nameList(
    wanted.flatMap((name) => example[name] ?? []),
    'or',
  ) || 'a number with its unit'

const andList = (texts: readonly string[]): string =>
  [texts.slice(0, -1).join(', '), ...texts.slice(-1)].filter((text) => text !== '').join(' and ')

const isDimension = (name: string): boolean => dimensionNames.some((known) => known === name)

/** A dimension with its article; what has no name of its own is something else. */
function withArticle(name: string): string {
  if (!isDimension(name)) return 'something else'
  if (name === 'working days') return 'a number of working days'
  return /^[aei]/.test(name) ? `an ${name}` : name.startsWith('money') ? name : `a ${name}`
}

/** What is wrong with the text, in words. */
function reason({ fault }: Unread): string {
  switch (fault.fault) {
    case 'empty':
      return 'nothing is written'
    case 'too long':
      return `\`${fault.text}...\` is longer than ${fault.most} characters`
    case 'not finite':
      return `\`${fault.text}\` is not a finite number`
    case 'out of range':
      return `\`${fault.text}\` has more than ${fault.digits} digits or a power of ten past ${fault.exponent}`
    case 'comma':
      return `\`${fault.text}\` has a comma between digits`
    case 'not a time sum':
      return `\`${fault.text}\` adds things that are not all times`
    case 'run together':
      return `\`${fault.text}\` runs its times together`
    case 'two kinds':
      return `\`${fault.text}\` mixes ${fault.units[1]} with ${fault.units[0]}`
    case 'too many points':
      return `\`${fault.text}\` has ${fault.count} values, at most three are read`
    default:
      return `\`${fault.text}\` is not a number with a unit`
  }
}

/** QTY: quantities, counts and what they add up to. */
export const qty = {
  bareNumber: message<Unread>({
    code: 'QTY01',
    level: 'error',
    says: ({ key, fault }) =>
      `\`${key}\` is a bare number, ${'text' in fault ? `\`${fault.text}\`` : 'it'}, where a unit belongs`,
    mend: ({ fault, wanted }) =>
      oneOf('perhaps' in fault ? fault.perhaps : [], `write the unit, such as ${such(wanted)}`),
    why: "A number without a unit can be read in several ways: 20 may be millimetres, thou or minutes. Only counts, ratios and money in the project's currency go bare.",
  }),
  unknownUnit: message<Unread>({
    code: 'QTY02',
    level: 'error',
    says: ({ key, fault }) =>
      `\`${key}\` has a unit that is not known: ${'unit' in fault ? `\`${fault.unit}\`` : ''}`,
    mend: ({ fault, wanted }) =>
      'near' in fault && fault.near.length > 0
        ? `did you mean ${nameList(fault.near, 'or')}?`
        : `write it such as ${such(wanted)}`,
    why: 'Units are spelled as in the SI and the trade, with capitals where they belong: mm, min, N m, thou, wd.',
  }),
  wrongDimension: message<Unread>({
    code: 'QTY03',
    level: 'error',
    says: ({ key, fault, wanted }) =>
      `\`${key}\` wants ${wanted.map(withArticle).join(' or ')}, but \`${'text' in fault ? fault.text : ''}\` is ${'got' in fault ? withArticle(fault.got) : 'something else'}`,
    mend: ({ fault, wanted }) =>
      oneOf('perhaps' in fault ? fault.perhaps : [], `write it such as ${such(wanted)}`),
    why: 'Every key has one dimension. A length where a time belongs would give a plan that looks right and is not. Working days `wd` and elapsed days `d` are different dimensions.',
  }),
  unreadable: message<Unread>({
    code: 'QTY04',
    level: 'error',
    says: (p) => `\`${p.key}\` cannot be read: ${reason(p)}`,
    mend: ({ fault, wanted }) =>
      oneOf('perhaps' in fault ? fault.perhaps : [], `write it such as ${such(wanted)}`),
    why: 'Quantities are a number, a space and a unit. Decimals have a point; sums are for times only (`1 h 30 min`).',
  }),
  pointsOutOfOrder: message<{ key: string; text: string; points: readonly string[] }>({
    code: 'QTY05',
    level: 'error',
    says: ({ key, text }) => `the values of \`${key}\` do not rise: \`${text}\``,
    mend: () => 'write them as optimistic..likely..pessimistic, smallest first',
    why: 'The mean (a + 4m + b)/6 and the spread only mean something when the optimistic value is the smallest and the pessimistic the largest.',
  }),
  outOfBounds: message<{ key: string; text: string; bound: string }>({
    code: 'QTY06',
    level: 'error',
    says: ({ key, text, bound }) => `\`${key}\` is \`${text}\`, but must be ${bound}`,
    mend: ({ bound }) => `write a value that is ${bound}`,
    why: 'Negative times, prices and sizes have no meaning in a plan and would quietly cancel real ones; a time of many years is a slip of a unit.',
  }),
  countMismatch: message<{
    part: string
    listed: number
    placed: number
    places: readonly { at: Place; says: string }[]
  }>({
    code: 'QTY07',
    level: 'error',
    says: ({ part, listed, placed }) =>
      `the steps place ${placed} of \`${part}\` in each device, the parts list says ${listed}`,
    mend: ({ part, placed }) => `write \`qty: ${placed}\` on \`${part}\`, leave it out, or change the steps`,
    notes: ({ places }) => places,
    why: 'A screw too many in the steps is a screw that is not bought. `qty` on a part is a check on what the steps say.',
  }),
  notPlaced: message<{ part: string; role: string; reused: boolean }>({
    code: 'QTY08',
    level: 'warning',
    says: ({ part, role, reused }) =>
      reused
        ? `nothing names the ${role} \`${part}\` and it has no \`qty\`, so none is made or bought`
        : `\`${part}\` is in no step and has no \`qty\`, so none is made or bought`,
    mend: ({ part, role, reused }) =>
      reused
        ? `name \`${part}\` where it is needed, such as \`${role === 'fixture' ? 'hold' : 'tool'}: ${part}\`, give it a \`qty\`, or take it out`
        : `put \`${part}\` in a step, give it a \`qty\`, or take it out`,
    why: 'The steps say what goes where. A part that nothing asks for costs nothing and takes no time, which is seldom what was meant.',
  }),
  noTime: message<{ what: string; missing: readonly string[] }>({
    code: 'QTY09',
    level: 'error',
    says: ({ what, missing }) =>
      missing.length === 0
        ? `${what} has no time`
        : `${what} has no time, and it cannot be worked out without ${andList(missing)}`,
    mend: ({ missing }) =>
      `${missing.length === 0 ? 'add' : 'add what is missing, or'} \`time:\`, such as \`time: 12 min\` or \`time: 10..15..30 min\``,
    why: 'Without a time there is no date and no machine cost. A rough three-point time is better than none.',
  }),
  timeAssumed: message<{ step: string; minutes: number }>({
    code: 'QTY10',
    level: 'warning',
    says: ({ step, minutes }) => `the step \`${step}\` has no time; ${minutes} min are assumed`,
    mend: () => 'add `time:` to the step',
    why: 'Small steps add up to evenings. The assumption is shown on the checklist until you give a time.',
  }),
  badCount: message<{ text: string; part: string; count: number | null }>({
    code: 'QTY11',
    level: 'error',
    says: ({ text, part }) => `\`${text}\` does not say how many of \`${part}\``,
    mend: ({ part, count }) =>
      count === null
        ? `write such as \`${part} x2\`, with a whole number from 1 to 100000`
        : `write \`${part} x${count}\``,
    why: 'Counts are whole numbers from one up.',
  }),
  copiesMismatch: message<{ part: string; put: number; named: number }>({
    code: 'QTY13',
    level: 'error',
    says: ({ part, put, named }) => `the step puts ${put} of \`${part}\`, but \`as\` names ${named}`,
    mend: ({ part, named }) =>
      `write \`put: ${part}${named === 1 ? '' : ` x${named}`}\`, or name each of them under \`as\``,
    why: 'Each copy that is put gets one name, so that later steps can tell them apart.',
  }),
  sizeUnread: message<{ key: string; text: string; parts: number }>({
    code: 'QTY12',
    level: 'error',
    says: ({ key, text, parts }) => `\`${key}\` needs ${parts} lengths, but says \`${text}\``,
    mend: ({ parts }) =>
      `write ${parts === 2 ? '`22 x 14 mm`' : '`65 x 65 x 15 mm`'}: lengths with \` x \` between and a unit at the end`,
    why: 'A size is read as lengths with ` x ` between them; one unit at the end serves all.',
  }),
} as const
