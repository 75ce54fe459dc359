import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'

const fig = (value: number): string =>
  Math.abs(value) >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(3)))

/** What having a board made costs and takes: of its first offer. */
interface HavingItMade {
  readonly vendor: string
  readonly price: string | null
  readonly lead: string | null
}

const sayOffer = ({ vendor, price, lead }: HavingItMade): string =>
  `${vendor} asks ${price ?? 'a price that is not known'} and takes ${lead ?? 'a time that is not known'}`

/** PRC: what boards ask of their makers and their solderers. */
export const prcBoard = {
  boardTooFine: message<{
    board: string
    feature: string
    has: number
    low: number
    high: number
    by: string
    wouldDo: readonly string[]
    offer: HavingItMade | null
  }>({
    code: 'PRC50',
    level: 'warning',
    says: (p) =>
      `\`${p.board}\` has a ${p.feature} of ${fig(p.has)} mm, ${p.by} needs ${fig(p.low)} mm${p.high > p.low ? ` with care, ${fig(p.high)} mm to be safe` : ''}`,
    mend: (p) =>
      [
        p.wouldDo.length > 0
          ? `draw it at ${fig(p.high)} mm, or write \`by: ${p.wouldDo[0]}\``
          : `draw it at ${fig(p.high)} mm`,
        p.offer ? sayOffer(p.offer) : null,
      ]
        .filter((one) => one !== null)
        .join('; '),
    why: 'What is too fine for a process comes out broken or joined; a board house that does it costs days and money.',
  }),
  traceTooNarrow: message<{
    board: string
    what: string | null
    amps: number
    width: number
    needs: number
    rise: number
  }>({
    code: 'PRC51',
    level: 'warning',
    says: (p) =>
      `${p.what === null ? 'a trace' : `the trace \`${p.what}\``} of \`${p.board}\` is ${fig(p.width)} mm wide; ${fig(p.amps)} A at ${fig(p.rise)} K need ${fig(p.needs)} mm`,
    mend: (p) => `draw it ${fig(Math.ceil(p.needs * 20) / 20)} mm wide, or take thicker copper`,
    why: 'A trace that is too narrow runs hot. The rule of IPC-2221 is rough: add margin.',
  }),
  notPreferred: message<{
    what: string
    value: string
    series: string
    nearest: string
    percent: number
  }>({
    code: 'PRC52',
    level: 'warning',
    says: (p) =>
      `\`${p.value}\` of ${p.what} is not in ${p.series}; the nearest is ${p.nearest} (${p.percent >= 0 ? '+' : ''}${p.percent.toFixed(1)} %)`,
    mend: (p) => `take ${p.nearest}`,
    why: 'Resistors, capacitors and inductors are made and sold in the values of IEC 60063.',
  }),
  noPartFor: message<{ board: string; designators: readonly string[]; value: string; package: string }>({
    code: 'PRC53',
    level: 'warning',
    says: (p) =>
      `no part of the project is ${p.value === '' ? 'without a value' : `\`${p.value}\``} in \`${p.package}\` (${nameList(p.designators.slice(0, 4), 'and')}${p.designators.length > 4 ? ` and ${p.designators.length - 4} more` : ''}): it is not bought for \`${p.board}\``,
    mend: (p) =>
      `name the part in the column \`part\`, or write \`value: ${p.value === '' ? '…' : p.value}\` and \`package: ${p.package}\` on a bought part`,
    why: 'What no part stands for is neither bought nor counted in the money.',
  }),
  twoPartsFor: message<{ board: string; value: string; package: string; parts: readonly string[] }>({
    code: 'PRC54',
    level: 'error',
    says: (p) => `\`${p.value}\` in \`${p.package}\` may be ${nameList(p.parts, 'or')}`,
    mend: () => 'name the part in the column `part`, or tell the parts apart by `value` and `package`',
    why: 'Which of them is bought decides the money and the day it is here.',
  }),
  nothingOnPanel: message<{ board: string; size: string; panel: string }>({
    code: 'PRC55',
    level: 'error',
    says: (p) => `no \`${p.board}\` of ${p.size} fits a panel of ${p.panel} with its rails`,
    mend: () => 'take a larger panel or narrower rails',
    why: 'Boards are counted and bought by the panel.',
  }),
  joinsNotKnown: message<{ board: string; packages: readonly string[]; heat: boolean }>({
    code: 'PRC56',
    level: 'warning',
    says: (p) =>
      p.heat
        ? `${nameList(p.packages, 'and')} on \`${p.board}\` cannot be soldered with an iron`
        : `the joints of ${nameList(p.packages, 'and')} on \`${p.board}\` are not known, so their soldering is not in the time`,
    mend: (p) =>
      p.heat
        ? 'write `solder: {by: paste}`'
        : 'state `solder: {time: …}`, or name the package as the trade does, such as 0603, SOIC-8 or 1x04',
    why: 'The time of soldering follows from packages and joints.',
  }),
  countedTwice: message<{ board: string; part: string; listed: number; placed: number }>({
    code: 'PRC57',
    level: 'warning',
    says: (p) =>
      `\`places\` of \`${p.board}\` has ${p.listed} of \`${p.part}\`, its placements have ${p.placed}`,
    mend: (p) => `remove \`${p.part}\` from \`places\``,
    why: 'The placements are counted. `places` is for what they do not list.',
  }),
  largerThanPrices: message<{ board: string; area: number; most: number }>({
    code: 'PRC58',
    level: 'error',
    says: (p) => `\`${p.board}\` has ${fig(p.area)} cm2, the largest area with a price is ${fig(p.most)} cm2`,
    mend: (p) => `add the price for ${fig(Math.ceil(p.area))} cm2`,
    why: 'Board makers ask by area and by number.',
  }),
  noPanel: message<{ board: string; missing: string }>({
    code: 'PRC59',
    level: 'error',
    says: (p) => `this offer for \`${p.board}\` needs \`${p.missing}\`, which is not said`,
    mend: (p) =>
      p.missing === 'panel' ? 'add `panel: {size: 100 x 80 mm}` to the board' : 'add `outline:` to the board',
    why: 'How many boards a panel holds, or how large a board is, decides what one costs.',
  }),
} as const
