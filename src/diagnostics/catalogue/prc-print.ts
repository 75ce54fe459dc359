import { message } from '../message.ts'

const fig = (value: number): string =>
  Math.abs(value) >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(3)))

/** PRC: what a print asks of printer and part. */
export const prcPrint = {
  printTimeFarOff: message<{ of: string; stated: number; computed: number }>({
    code: 'PRC40',
    level: 'warning',
    says: (p) =>
      `the print of ${p.of} has ${fig(p.stated)} min, but by its layers it takes ${fig(p.computed)} min`,
    mend: () =>
      'remove `time:` to take the computed one, or correct height, layer or what the printer is said to do',
    why: 'The stated time is used. One of the two is likely a slip, and the evenings are planned by it.',
  }),
  largerThanBed: message<{
    part: string
    machine: string
    side: 'footprint' | 'height'
    has: string
    bed: string
    over: number
  }>({
    code: 'PRC41',
    level: 'warning',
    says: (p) =>
      `\`${p.part}\` has a ${p.side} of ${p.has}, \`${p.machine}\` prints ${p.bed}: ${fig(p.over)} mm too large`,
    mend: (p) =>
      p.side === 'height'
        ? 'lay the part down, print it in two pieces, or take a larger printer'
        : 'turn the part (and state its `height` and `footprint`), print it in two pieces, or take a larger printer',
    why: 'What does not fit the bed with its gap is not printed at all.',
  }),
  severalJobs: message<{ of: string; machine: string; jobs: number; proved: boolean; what: string }>({
    code: 'PRC42',
    level: 'warning',
    says: (p) =>
      `${p.what} do not fit \`${p.machine}\` together: ${p.of} is printed ${p.jobs} times${p.proved ? '' : ' (fewest found by trial)'}`,
    mend: (p) =>
      `leave it, if ${p.jobs} jobs one after another are meant; else put parts on plates of their own`,
    why: 'Each job has its own start, run, wash and cure; a stated time of the job holds for each.',
  }),
  tooFineToPrint: message<{
    part: string
    feature: string
    has: number
    low: number
    high: number
    process: string
    wouldDo: readonly string[]
  }>({
    code: 'PRC43',
    level: 'warning',
    says: (p) =>
      `\`${p.part}\` has a ${p.feature} of ${fig(p.has)} mm, ${p.process} prints need ${fig(p.low)}${p.high > p.low ? ` to ${fig(p.high)}` : ''} mm`,
    mend: (p) =>
      p.wouldDo.length > 0
        ? `make it ${fig(p.high)} mm, or print it in a ${p.wouldDo.join(' or ')} printer`
        : `make it ${fig(p.high)} mm${p.feature === 'hole' ? ', or drill it afterwards' : ''}`,
    why: 'Below the least size a feature closes, breaks or is missing; what comes out depends on printer and material.',
  }),
  notLaidOut: message<{ of: string; count: number; most: number }>({
    code: 'PRC44',
    level: 'warning',
    says: (p) =>
      `${p.of} holds ${p.count} pieces, at most ${p.most} are laid out: whether they fit the bed is not checked`,
    mend: () => 'put the pieces on several plates, or give the part a `lot`',
    why: 'Laying out is tried piece by piece; past some hundreds it would take too long.',
  }),
} as const
