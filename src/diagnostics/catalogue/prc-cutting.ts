import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'

/** Which cut is spoken of: `rough` of `base`. */
interface Of {
  readonly op: string
  readonly part: string
}

/** What a set-up needs along an axis, as a sum in words, and what the machine has. */
interface Travel {
  readonly part: string
  readonly machine: string
  readonly axis: string
  readonly needs: number
  readonly has: number
  readonly sum: string
}

const of = ({ op, part }: Of): string => `\`${op}\` of \`${part}\``
/** A figure with the digits a person reads off a gauge or a screen. */
const fig = (value: number): string =>
  Math.abs(value) >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(3)))
/** What makes a cut lighter, by operation; less depth, step or feed for those that are not named. */
const lighter: Readonly<Record<string, string>> = {
  drill: 'write a smaller `feed`, or drill a smaller hole first',
  ream: 'write a smaller `feed`',
  tap: 'write a lower `speed`',
  turn: 'take less `depth` or `feed`',
  bore: 'take more `passes`, or less `feed`',
  'part off': 'write a smaller `feed`',
}

const whys = {
  depth: 'Past its flutes a cutter rubs and breaks; past its reach the holder hits the work.',
  size: 'A cutter leaves what it cannot get into.',
} as const

/** PRC: what a cut asks of cutter, work and machine. */
export const prcCutting = {
  cutOutside: message<Of & { what: string; least: string; most: string }>({
    code: 'PRC10',
    level: 'error',
    says: (p) =>
      `${of(p)} cannot be worked out: the ${p.what} is past what any bench has, ${p.least} to ${p.most}`,
    mend: (p) => `correct the ${p.what}`,
    why: 'A slip of a unit or of a nought makes minutes that mean nothing.',
  }),
  noSuchCut: message<Of & { what: string }>({
    code: 'PRC11',
    level: 'error',
    says: (p) => `${of(p)} cannot be cut: ${p.what}`,
    mend: () => 'correct the sizes of this operation',
    why: 'An operation takes material away: what it leaves must be smaller than what it finds.',
  }),
  timeFarOff: message<Of & { stated: number; computed: number }>({
    code: 'PRC12',
    level: 'warning',
    says: (p) => `${of(p)} has ${fig(p.stated)} min, but by its cutting data it takes ${fig(p.computed)} min`,
    mend: () => 'remove `time:` to take the computed one, or correct feed, depth or volume',
    why: 'The stated time is used. One of the two is likely a slip, and the evenings are planned by it.',
  }),
  spindleSpeed: message<Of & { wanted: number; limit: number; above: boolean }>({
    code: 'PRC13',
    level: 'warning',
    says: (p) =>
      `${of(p)} asks for ${fig(p.wanted)} rpm, the spindle turns ${p.above ? 'at most' : 'no slower than'} ${fig(p.limit)} rpm`,
    mend: (p) =>
      p.above
        ? `write \`speed: ${fig(p.limit)} rpm\` or less`
        : 'take a smaller cutter, or a machine that turns slower',
    why: 'The time is worked out with what the spindle can do; too fast an edge wears out in minutes.',
  }),
  feedAboveAxis: message<Of & { wanted: number; most: number }>({
    code: 'PRC14',
    level: 'warning',
    says: (p) =>
      `${of(p)} asks for a feed of ${fig(p.wanted)} mm/min, the axes cut at most at ${fig(p.most)} mm/min`,
    // The pitch ties the feed of a tap to its speed.
    mend: (p) =>
      p.op === 'tap'
        ? `write a \`speed\` that is ${fig(p.wanted / p.most)} times lower`
        : `write \`feed: ${fig(p.most)} mm/min\` or less`,
    why: 'The time is worked out with what the axes can do.',
  }),
  tooLittlePower: message<Of & { needs: number; has: number; unit: 'W' | 'N m' }>({
    code: 'PRC15',
    level: 'warning',
    says: (p) => `${of(p)} needs about ${fig(p.needs)} ${p.unit}, the machine has ${fig(p.has)} ${p.unit}`,
    mend: (p) => lighter[p.op] ?? 'take less `depth`, `step` or `feed`',
    why: 'A spindle that is asked for more than it has stalls, and breaks the cutter. Tables of cutting force differ by a third: it is an estimate.',
  }),
  pastFlutes: message<Of & { depth: number; flutes: number }>({
    code: 'PRC16',
    level: 'warning',
    says: (p) =>
      `${of(p)} goes ${fig(p.depth)} mm deep at once, the cutter's flutes are ${fig(p.flutes)} mm long`,
    mend: (p) => `write a \`depth\` of at most ${fig(p.flutes)} mm, or take a longer cutter`,
    why: whys.depth,
  }),
  pastReach: message<Of & { depth: number; reach: number }>({
    code: 'PRC17',
    level: 'warning',
    says: (p) =>
      `${of(p)} goes ${fig(p.depth)} mm deep, the cutter reaches ${fig(p.reach)} mm below its holder`,
    mend: (p) => `take a cutter that reaches ${fig(p.depth)} mm, or come from the other side`,
    why: whys.depth,
  }),
  cutterTooLarge: message<Of & { of: string; cutter: number; room: number }>({
    code: 'PRC18',
    level: 'warning',
    says: (p) => `${of(p)} has a cutter of ${fig(p.cutter)} mm, the ${p.of} has room for ${fig(p.room)} mm`,
    mend: (p) => `take a cutter ${p.of === 'corner' ? 'of at most' : 'smaller than'} ${fig(p.room)} mm`,
    why: whys.size,
  }),
  cutterOtherSize: message<Of & { cutter: number; wanted: number }>({
    code: 'PRC19',
    level: 'warning',
    says: (p) => `${of(p)} wants ${fig(p.wanted)} mm, its cutter makes ${fig(p.cutter)} mm`,
    mend: (p) => `take a cutter of ${fig(p.wanted)} mm, or correct the diameter`,
    why: 'Drills, reamers and taps make their own size.',
  }),
  deepHole: message<Of & { ratio: number; beyond: number }>({
    code: 'PRC20',
    level: 'warning',
    says: (p) => `${of(p)} is ${fig(p.ratio)} times as deep as wide, and no \`peck\` is said`,
    mend: () => 'add `peck:`, about the diameter of the drill',
    why: 'Past three diameters chips no longer come out by themselves; past ten it takes a special drill.',
  }),
  chipOutOfRange: message<Of & { chip: number; limit: number; thin: boolean }>({
    code: 'PRC21',
    level: 'warning',
    says: (p) =>
      `${of(p)} takes a chip of ${fig(p.chip * 1000)} um, ${p.thin ? 'the least that cuts is' : 'a tooth stands at most'} ${fig(p.limit * 1000)} um`,
    mend: (p) => (p.thin ? 'feed faster, or turn slower' : 'feed slower, or turn faster'),
    why: 'Too thin a chip rubs and blunts the edge; too thick a one breaks it.',
  }),
  cutterBends: message<Of & { by: number; most: number }>({
    code: 'PRC22',
    level: 'warning',
    says: (p) =>
      `${of(p)} bends its cutter by about ${fig(p.by * 1000)} um, more than ${fig(p.most * 1000)} um`,
    mend: () => 'let the cutter stand out less, or take less `depth` or `step`',
    why: 'A slender cutter leaves walls that are not square, and breaks.',
  }),
  unsuitedTool: message<Of & { tool: string; material: string }>({
    code: 'PRC23',
    level: 'warning',
    says: (p) => `${of(p)} cuts ${p.material} with an edge of ${p.tool}`,
    mend: () => 'take a carbide cutter',
    why: 'The edge is softer at its working heat than the work needs.',
  }),
  thinWall: message<Of & { wall: number; least: number; height: number }>({
    code: 'PRC24',
    level: 'warning',
    says: (p) =>
      `${of(p)} leaves a wall of ${fig(p.wall)} mm, ${fig(p.height)} mm high; at least ${fig(p.least)} mm stands`,
    mend: () => 'leave it thicker, support it, or cut it in low steps on both sides in turn',
    why: 'A thin wall bends away from the cutter and sings.',
  }),
  stepTooWide: message<Of & { step: number; cutter: number }>({
    code: 'PRC25',
    level: 'warning',
    says: (p) => `${of(p)} steps ${fig(p.step)} mm sideways, its cutter takes ${fig(p.cutter)} mm`,
    mend: (p) => `write a step of at most ${fig(p.cutter)} mm`,
    why: 'Strips are left standing between the passes.',
  }),
  pitchOutOfRange: message<Of & { pitch: number; from: number; to: number }>({
    code: 'PRC26',
    level: 'warning',
    says: (p) =>
      `${of(p)} has a pitch of ${fig(p.pitch)} mm, its cutter cuts ${p.from === p.to ? '' : `${fig(p.from)} to `}${fig(p.to)} mm`,
    mend: () => 'take a thread mill for this pitch',
    why: 'The profile of the cutter is the profile of the thread.',
  }),
  wideThreadMill: message<Of & { cutter: number; most: number }>({
    code: 'PRC27',
    level: 'warning',
    says: (p) =>
      `${of(p)} has a thread mill of ${fig(p.cutter)} mm; up to ${fig(p.most)} mm keeps the profile true`,
    mend: (p) => `take one of at most ${fig(p.most)} mm`,
    why: 'A thread mill that nearly fills the hole cuts its flanks away.',
  }),
  unknownLike: message<{ material: string; text: string; near: readonly string[] }>({
    code: 'PRC28',
    level: 'error',
    says: (p) => `\`${p.material}\` is like \`${p.text}\`, which is in no table here`,
    mend: (p) =>
      p.near.length > 0
        ? `did you mean ${nameList(p.near, 'or')}?`
        : 'name an alloy or plastic by its standard',
    why: 'Speeds, forces and masses come from the tables of the trade.',
  }),
  travelTooShort: message<Travel>({
    code: 'PRC29',
    level: 'warning',
    says: (p) =>
      `this setup of \`${p.part}\` needs ${fig(p.needs)} mm along ${p.axis} (${p.sum}), \`${p.machine}\` has ${fig(p.has)} mm`,
    mend: () => 'clamp it another way, cut the stock smaller, or take a shorter cutter',
    why: 'Stock, workholding and cutter stand on one another; the table must carry the work past the cutter.',
  }),
  feedNotPitch: message<Of & { stated: number; pitch: number }>({
    code: 'PRC32',
    level: 'warning',
    says: (p) =>
      `${of(p)} has a feed of ${fig(p.stated)} mm/min, its pitch and speed make ${fig(p.pitch)} mm/min`,
    mend: () => 'remove `feed:`, or correct `speed` or `thread`',
    why: 'In cutting a thread the edge goes one pitch each turn; any other feed tears it or breaks the tap.',
  }),
  pastStock: message<Of & { needs: number; has: number; unit: 'mm' | 'cm3' }>({
    code: 'PRC31',
    level: 'warning',
    says: (p) =>
      p.unit === 'mm'
        ? `${of(p)} goes over ${fig(p.needs)} mm, its stock has ${fig(p.has)} mm`
        : `${of(p)} takes off ${fig(p.needs)} cm3, its stock is ${fig(p.has)} cm3`,
    mend: (p) =>
      p.unit === 'mm'
        ? 'buy longer stock, or correct the length or depth'
        : 'correct the volume, or the size of the stock',
    why: 'No more can be cut than is there: the stock is bought too small, or a size is a slip.',
  }),
  spindleCrossed: message<{ machine: string; slowest: string; fastest: string }>({
    code: 'PRC33',
    level: 'error',
    says: (p) =>
      `the spindle of \`${p.machine}\` turns no slower than ${p.slowest} and no faster than ${p.fastest}`,
    mend: () => 'exchange `slowest` and `fastest`, or correct them',
    why: 'Every speed is held between the two.',
  }),
  cutsAnotherThread: message<Of & { cuts: string; wanted: string }>({
    code: 'PRC34',
    level: 'warning',
    says: (p) => `${of(p)} is to make ${p.wanted}, its cutter cuts ${p.cuts}`,
    mend: () => 'take the cutter for this thread, or correct the thread',
    why: 'A tap makes its own diameter and pitch, whatever the drawing says.',
  }),
  holeForThread: message<Of & { thread: string; hole: number; least: number; most: number; drill: string }>({
    code: 'PRC35',
    level: 'warning',
    says: (p) =>
      `${of(p)} cuts ${p.thread} into a hole of ${fig(p.hole)} mm; ${fig(p.least)} to ${fig(p.most)} mm is wanted`,
    mend: (p) => `drill ${p.drill} first`,
    why: 'Too small a hole breaks the tap, too large a one leaves too little thread.',
  }),
  pocketPastStock: message<Of & { pocket: string; stock: string }>({
    code: 'PRC36',
    level: 'warning',
    says: (p) => `${of(p)} clears a pocket of ${p.pocket}, the stock has ${p.stock}`,
    mend: () => 'correct `pocket`, or the stock',
    why: 'A pocket ends inside the stock.',
  }),
} as const
