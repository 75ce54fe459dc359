import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'

/** A feature, as `part.feature`, with its text. */
export interface FeatureSaid {
  readonly of: string
  readonly text: string
}

/** Two features that are to meet. */
interface PairSaid {
  readonly first: FeatureSaid
  readonly second: FeatureSaid
}

/** One thing in which two features differ: `pitch: 1 mm and 1.5 mm`. */
export interface MismatchSaid {
  readonly what: string
  readonly first: string
  readonly second: string
}

/** Largest and smallest clearance in micrometres, below 0 where metal overlaps. */
export interface ClearanceSaid {
  readonly largest: number
  readonly smallest: number
}

const um = (value: number): string => `${Math.round(value * 10) / 10 + 0} um`
const said = ({ of, text }: FeatureSaid): string => `\`${of}: ${text}\``
const pair = ({ first, second }: PairSaid): string => `${said(first)} and ${said(second)}`
const differ = (all: readonly MismatchSaid[]): string =>
  all.map(({ what, first, second }) => `${what} (${first} and ${second})`).join(', ')
const between = ({ largest, smallest }: ClearanceSaid): string =>
  `clearance ${um(smallest)} at the least and ${um(largest)} at the most`
const spelled = (near: readonly string[], otherwise: string): string =>
  near.length > 0 ? `did you mean ${nameList(near, 'or')}?` : otherwise

/** What is wrong with a text, in words that follow the text. */
export interface Unread extends FeatureSaid {
  readonly part: string
  readonly because: string
  readonly near: readonly string[]
}

const unread = (kind: string) => (p: Unread) =>
  `${said(p)} is no ${kind}: ${p.part === '' || p.part === p.text ? 'it ' : `\`${p.part}\` `}${p.because}`

/** FIT: fits, threads and tolerances. */
export const fit = {
  threadUnread: message<Unread>({
    code: 'FIT01',
    level: 'error',
    says: unread('thread'),
    mend: (p) => spelled(p.near, 'write it as `M14x1-6H`, `M6-6g depth 8 mm` or `1/4-20 UNC-2B`'),
    why: 'A thread is looked up by diameter, pitch and class: limits, tap drill and what it screws into hang on them.',
  }),
  sizeUnread: message<Unread>({
    code: 'FIT02',
    level: 'error',
    says: unread('toleranced size'),
    mend: (p) => spelled(p.near, 'write it as `6 H7`, `4.2 ± 0.05 mm` or `12 +0.1/-0.02 mm`'),
    why: 'The limits on the inspection sheet are worked out from the text.',
  }),
  saysMore: message<FeatureSaid & { rest: string; near: readonly string[] }>({
    code: 'FIT03',
    level: 'warning',
    says: (p) => `${said(p)} is kept as words, because of \`${p.rest}\``,
    mend: (p) => spelled(p.near, 'write size or thread alone; what else there is to say goes into a `note`'),
    why: 'A text that is kept as words has no limits and is compared with nothing.',
  }),
  noLimitsHere: message<FeatureSaid & { because: string; mend: string }>({
    code: 'FIT04',
    level: 'warning',
    says: (p) => `${said(p)} gets no limits: ${p.because}`,
    mend: (p) => p.mend,
    why: 'A size without limits is neither compared with its mate nor judged on the inspection sheet.',
  }),
  threadUnlisted: message<
    FeatureSaid & { list: string; toCheck: readonly string[]; listed: readonly string[] }
  >({
    code: 'FIT05',
    level: 'warning',
    says: (p) => `${said(p)} is not among the threads of ${p.list}`,
    mend: (p) =>
      `make sure that ${p.toCheck.join(', ')}${p.listed.length > 0 ? `; listed are ${nameList(p.listed.slice(0, 4), 'and')}` : ''}`,
    why: 'A thread that no standard lists can be cut, but its tap, mill and gauge are made to order.',
  }),
  matesNot: message<PairSaid & { mismatches: readonly MismatchSaid[] }>({
    code: 'FIT06',
    level: 'error',
    says: (p) => `${pair(p)} do not go together: ${differ(p.mismatches)}`,
    mend: (p) => `correct \`${p.first.of}\` or \`${p.second.of}\`, or name the two that meet under \`mates\``,
    why: 'Two features that are to meet must have the same size and be one the outside, one the inside.',
  }),
  noPairFits: message<PairSaid & { step: string; by: string; mismatches: readonly MismatchSaid[] }>({
    code: 'FIT07',
    level: 'warning',
    says: (p) =>
      `nothing that \`${p.step}\` joins by ${p.by} goes together; nearest are ${pair(p)}: ${differ(p.mismatches)}`,
    mend: (p) =>
      `correct \`${p.first.of}\` or \`${p.second.of}\`, or say which two meet: \`mates: [${p.first.of}, …]\``,
    why: 'Where `mates` is silent, the features of both sides are searched for two that belong together.',
  }),
  pressLoose: message<PairSaid & ClearanceSaid & { step: string }>({
    code: 'FIT08',
    level: 'warning',
    says: (p) => `\`${p.step}\` presses ${pair(p)}, but they slide: ${between(p)}`,
    mend: () => 'take a tighter class, such as `p6` in `H7`, or join with `by: seat` or `by: glue`',
    why: 'Where the hole is always larger than the shaft, nothing holds what is pressed in.',
  }),
  seatTight: message<PairSaid & ClearanceSaid & { step: string }>({
    code: 'FIT09',
    level: 'warning',
    says: (p) => `\`${p.step}\` seats ${pair(p)}, but they need a press: ${between(p)}`,
    mend: () => 'take a looser class, such as `g6` or `h6` in `H7`, or join with `by: press`',
    why: 'Where the shaft is always larger than the hole, the part does not go in by hand.',
  }),
  lightDiffers: message<PairSaid & ClearanceSaid & { step: string; light: boolean }>({
    code: 'FIT10',
    level: 'warning',
    says: (p) =>
      p.light
        ? `\`${p.step}\` says \`light: yes\`, but ${pair(p)} always overlap: ${between(p)}`
        : `\`${p.step}\` says \`light: no\`, but ${pair(p)} may be loose: ${between(p)}`,
    mend: (p) => (p.light ? 'remove `light: yes`, or take `m6` or `k6` in `H7`' : 'write `light: yes`'),
    why: 'A light press comes apart again with care, a heavy one does not; the plan warns before the step of no return.',
  }),
  engagement: message<PairSaid & { says: string; mend: string }>({
    code: 'FIT11',
    level: 'warning',
    says: (p) => `${pair(p)}: ${p.says}`,
    mend: (p) => p.mend,
    why: 'Tolerances of threads are meant for a normal length; a short one strips, and a long one binds.',
  }),
  tighterThanProcess: message<
    FeatureSaid & { how: string; asked: number; finest: number; usual: number; source: string }
  >({
    code: 'FIT12',
    level: 'warning',
    says: (p) =>
      `${said(p)} allows ${um(p.asked)} in all; ${p.how} usually holds ${um(p.usual)}, with care ${um(p.finest)}`,
    mend: (p) =>
      `allow ${um(p.finest)} or more, finish it by a finer process, or plan a trial piece (source: ${p.source})`,
    why: 'What a process holds as a rule decides how many pieces are scrap. Shops differ: one that knows its own figure goes by that.',
  }),
  notCompared: message<PairSaid & { because: string }>({
    code: 'FIT13',
    level: 'warning',
    says: (p) => `${pair(p)} are not compared: ${p.because}`,
    mend: () => 'give both a thread, or a size with a class such as `6 H7` and `6 g6`',
    why: 'Saying nothing would look like a passed check.',
  }),
  fixtureThread: message<PairSaid & { mismatches: readonly MismatchSaid[] }>({
    code: 'FIT14',
    level: 'error',
    says: (p) => `the thread held on does not screw onto its fixture, ${pair(p)}: ${differ(p.mismatches)}`,
    mend: (p) => `correct \`${p.second.of}\`, or hold the part on something else`,
    why: 'A fixture that does not take the part costs the evening of the setup and the making of another.',
  }),
  fixtureFit: message<PairSaid & { says: string }>({
    code: 'FIT15',
    level: 'warning',
    says: (p) => `the part is held on ${said(p.first)} by ${said(p.second)}: ${p.says}`,
    mend: (p) =>
      `give \`${p.second.of}\` the size of \`${p.first.of}\` in a class that slides, such as \`g6\` or \`H7\``,
    why: 'What locates a part in its fixture must go on by hand and without shake.',
  }),
  generalUnread: message<{ text: string }>({
    code: 'FIT16',
    level: 'error',
    says: ({ text }) => `\`${text}\` is no class of general tolerances`,
    mend: () => 'write `f`, `m`, `c` or `v`, or as on the drawing, such as `ISO 2768-m`',
    why: 'Sizes without a tolerance of their own get the limits of this class.',
  }),
} as const
