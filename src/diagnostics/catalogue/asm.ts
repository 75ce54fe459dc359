import { nameList } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message, type Note } from '../message.ts'

/** One statement about the order of steps, as it is shown beside others. */
export interface OrderStatement {
  readonly at: Place
  /** The key it stands under. */
  readonly key: string
  readonly step: string
  readonly asks: 'one of these first' | 'before each' | 'before the last' | 'open' | 'shut' | 'not between'
  /** Steps, or openings as `body.opening`. */
  readonly of: readonly string[]
}

const inWords = ({ key, step, asks, of }: OrderStatement): string => {
  const says = {
    'one of these first': () => `\`${step}\` comes after ${nameList(of, 'or')}`,
    'before each': () => `\`${step}\` comes before ${nameList(of, 'and')}`,
    'before the last': () =>
      of.length === 1
        ? `\`${step}\` comes before ${nameList(of, 'and')}`
        : `\`${step}\` comes before the last of ${nameList(of, 'and')}`,
    open: () => `${nameList(of, 'or')} is open when \`${step}\` begins`,
    'not between': () => `\`${step}\` does not come between ${nameList(of, 'and')}`,
    shut: () => `${nameList(of, 'or')} is shut when \`${step}\` begins`,
  }
  return `${says[asks]()} (\`${key}\`)`
}
const eachInWords = (statements: readonly OrderStatement[]): readonly Note[] =>
  statements.map((one) => ({ at: one.at, says: inWords(one) }))

/** ASM: the order in which things go together. */
export const asm = {
  noOrder: message<{
    assembly: string
    statements: readonly OrderStatement[]
    minimal: boolean
    smallest: boolean
  }>({
    code: 'ASM01',
    level: 'error',
    says: ({ assembly, statements, minimal, smallest }) => {
      const spare = minimal ? ', and without any one of them the rest can' : ''
      const fewest = smallest ? '; no smaller set clashes' : ''
      return statements.length === 1
        ? `${assembly} cannot go together: this statement can hold in no order`
        : `${assembly} cannot go together: these ${statements.length} statements cannot hold together${spare}${fewest}`
    },
    mend: () => 'change or take out one of the statements shown below',
    notes: ({ statements }) => eachInWords(statements),
    why: 'Whatever order is tried, some step finds its way in shut or its part not there. Shown are statements that cannot all be kept, none of them to spare where it says so.',
  }),
  stepsInRing: message<{ ring: readonly string[]; statements: readonly OrderStatement[] }>({
    code: 'ASM02',
    level: 'error',
    says: ({ ring }) =>
      ring.length === 1
        ? `the step \`${ring[0]}\` waits for itself`
        : `these steps wait for each other: ${[...ring, ring[0]].join(' -> ')}`,
    mend: ({ statements }) =>
      statements.length === 1
        ? 'take the step out of its own list'
        : 'take out one of the statements shown below; what is fitted together before it goes in is a part of kind assembly',
    notes: ({ statements }) => eachInWords(statements),
    why: 'Steps in a ring can never start: each needs another one of them to be done before.',
  }),
  noOrderFound: message<{ assembly: string; steps: number }>({
    code: 'ASM03',
    level: 'error',
    says: ({ assembly, steps }) =>
      `no order of the ${steps} steps of ${assembly} was found; that there is none was not proved`,
    mend: () => 'say more about the order with `after`, or build a group of steps as a part of kind assembly',
    why: 'Openings that are opened again, and parts that several steps put, make the search long. It stops after a fixed number of states.',
  }),
  shutTwice: message<{ opening: string; step: string; first: { step: string; at: Place } }>({
    code: 'ASM04',
    level: 'warning',
    says: ({ opening, step, first }) =>
      first.step === step
        ? `\`${step}\` shuts \`${opening}\` twice`
        : `\`${opening}\` is shut by \`${first.step}\` and by \`${step}\`, and no step opens it: it counts as open until the last of them`,
    mend: ({ opening }) =>
      `leave \`shut: ${opening}\` at the step that closes it for good, or add an \`open\` step`,
    notes: ({ opening, first }) => [{ at: first.at, says: `\`${first.step}\` shuts \`${opening}\` here` }],
    why: 'Two half covers shut an opening together, and only the last of them shuts things out. If one step alone shuts it, things could be planned to go in too late.',
  }),
  shutsNothingOut: message<{ opening: string; key: string; step: string; more: number }>({
    code: 'ASM05',
    level: 'warning',
    says: ({ opening, key, step, more }) =>
      `nothing shuts \`${opening}\`, so \`${key}\` does not hold \`${step}\` to any order${more > 0 ? ` (and ${more} more like it)` : ''}`,
    mend: ({ opening }) =>
      `add \`shut: ${opening}\` to the step that closes it, or take it out of \`openings\` if it stays open`,
    why: 'A part that may go in through an opening which stays open can go in at any time. Often the step that closes it was forgotten.',
  }),
  neverPut: message<{ body: string; ground: string; holder: string | null }>({
    code: 'ASM06',
    level: 'error',
    says: ({ body, ground, holder }) =>
      holder === null
        ? `no step puts \`${body}\`, and \`${ground}\` is the body that the rest goes on`
        : `\`${body}\` is a part of \`${holder}\`: here only \`${holder}\` as a whole is put`,
    mend: ({ body, holder }) =>
      holder === null
        ? `add a step \`put: ${body}\`, or name another body here`
        : `write \`${holder}\` here, or do this step inside \`${holder}\``,
    why: 'One body may lie on the bench from the start. Every other body must be put by a step before something can go on or into it.',
  }),
  opensWhatIsOpen: message<{ opening: string; step: string }>({
    code: 'ASM07',
    level: 'error',
    says: ({ opening, step }) => `\`${step}\` opens \`${opening}\`, which no other step shuts`,
    mend: ({ opening }) => `add \`shut: ${opening}\` to the step that closes it, or take \`open\` out`,
    why: 'Openings are open from the start. `open` undoes a `shut` that came before.',
  }),
  whichCopy: message<{ body: string; step: string; by: readonly string[] }>({
    code: 'ASM08',
    level: 'warning',
    says: ({ body, step, by }) =>
      `\`${body}\` is put by ${nameList(by, 'and')}: \`${step}\` may come after the first of them`,
    mend: ({ by }) => `if another copy is meant, add \`after: [${by.at(-1)}]\``,
    why: 'One copy is enough to put something on it. Where a certain copy is meant, the order must say so.',
  }),
  leftOpen: message<{ opening: string; step: string }>({
    code: 'ASM09',
    level: 'warning',
    says: ({ opening, step }) => `\`${step}\` opens \`${opening}\`, and no step shuts it again`,
    mend: ({ opening }) => `add a step with \`shut: ${opening}\` after it`,
    why: 'What is opened for a repair or an adjustment is easily forgotten: the device would leave the bench open.',
  }),
} as const
