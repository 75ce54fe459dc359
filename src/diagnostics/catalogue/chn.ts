import { message } from '../message.ts'

const mm = (value: number): string => `${Number(value.toFixed(4)) + 0} mm`
const span = ([least, most]: readonly [number, number]): string => `${mm(least)} to ${mm(most)}`
const share = (value: number): string => `${Number((100 * value).toPrecision(2))} %`

/** What a chain asks for and what it comes to. */
export interface ChainSaid {
  readonly chain: string
  readonly must: readonly [number, number]
  readonly worst: readonly [number, number]
  readonly middle: number
  readonly statistical: readonly [number, number]
  readonly outside: number
  /** The dimension that spreads most, and its share of the spread. */
  readonly most: { readonly of: string; readonly share: number }
}

/** CHN: dimension chains. */
export const chn = {
  mustUnread: message<{ chain: string; text: string; near: readonly string[] }>({
    code: 'CHN01',
    level: 'error',
    says: ({ chain, text }) => `\`${text}\` gives no limits for the chain \`${chain}\``,
    mend: ({ near }) =>
      near[0] !== undefined ? `write \`${near[0]}\`` : 'write it as `0.30 ± 0.10 mm` or `0.2 / 0.4 mm`',
    why: 'A chain is judged by the limits that must hold.',
  }),
  linkWithoutLimits: message<{ chain: string; of: string; text: string; because: string }>({
    code: 'CHN02',
    level: 'warning',
    says: ({ chain, of, text, because }) =>
      `the chain \`${chain}\` is not added up: \`${of}: ${text}\` ${because}`,
    mend: ({ of, text, because }) =>
      because === 'has no tolerance'
        ? `give \`${of}\` limits, such as \`${/^[\d.]+/.exec(text)?.[0] ?? '12'} ± 0.05 mm\`, or the device general tolerances, \`general: m\``
        : 'name a dimension that has limits, such as `4.2 ± 0.05 mm`',
    why: 'A sum is known only when each of its dimensions has a least and a largest size.',
  }),
  mayMiss: message<ChainSaid>({
    code: 'CHN03',
    level: 'warning',
    says: (p) =>
      `\`${p.chain}\` must be ${span(p.must)}, but can come to ${span(p.worst)}; by the odds ${span(p.statistical)}, ${share(p.outside)} of devices outside; \`${p.most.of}\` makes ${share(p.most.share)} of the spread`,
    mend: (p) => `tighten \`${p.most.of}\`, widen what must hold, or plan to measure and shim`,
    why: 'The worst case is every part at its worst limit at once; a device built once has no odds to count on.',
  }),
  missesInTheMiddle: message<ChainSaid>({
    code: 'CHN04',
    level: 'warning',
    says: (p) =>
      `\`${p.chain}\` must be ${span(p.must)}, but comes to ${mm(p.middle)} with every part in the middle of its limits, ${span(p.worst)} at worst and ${span(p.statistical)} by the odds; \`${p.most.of}\` makes ${share(p.most.share)} of the spread`,
    mend: (p) =>
      `change a size by ${mm((p.must[0] + p.must[1]) / 2 - p.middle)} in the sum, or correct a sign or a count`,
    why: 'More than half of all devices would miss, so a size, a sign or a count is likely wrong.',
  }),
} as const
