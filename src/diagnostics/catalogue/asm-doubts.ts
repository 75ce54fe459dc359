import { nameList } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message } from '../message.ts'

const list = (names: readonly string[]): string => nameList(names, 'and')

/** ASM: orders that are possible and likely not meant. */
export const asmDoubts = {
  adjusterCovered: message<{ step: string; part: string; body: string; shut: { step: string; at: Place } }>({
    code: 'ASM10',
    level: 'warning',
    says: ({ step, part, body, shut }) =>
      `\`${step}\` comes after \`${shut.step}\`, which shuts \`${body}\` with \`${part}\` in it`,
    mend: ({ part }) => `add \`reaches: [${part}]\` to it, so that it comes while \`${part}\` can be got at`,
    notes: ({ body, shut }) => [{ at: shut.at, says: `\`${shut.step}\` shuts \`${body}\` here` }],
    why: 'What is adjusted must be reached. Nothing holds the adjustment to a time when it can be, so the plan may close the body first.',
  }),
  testTooLate: message<{ step: string; body: string; inside: string; shut: { step: string; at: Place } }>({
    code: 'ASM11',
    level: 'warning',
    says: ({ step, body, inside, shut }) =>
      `\`${step}\` is the first test of \`${inside}\`, and comes after \`${shut.step}\` has shut \`${body}\` for good`,
    mend: ({ shut }) => `test it before, too: a test with \`before: [${shut.step}]\``,
    notes: ({ shut }) => [{ at: shut.at, says: `\`${shut.step}\` is undone only by destroying its joint` }],
    why: 'A test after the point of no return finds faults that can no longer be mended. What can be tested before is tested before.',
  }),
  heavyPressLate: message<{ step: string; board: { step: string; part: string; at: Place } }>({
    code: 'ASM12',
    level: 'warning',
    says: ({ step, board }) => `\`${step}\` is a heavy press, and \`${board.part}\` is already in`,
    mend: ({ board }) =>
      `press first, with \`before: [${board.step}]\`; or add \`light: yes\` where little force does`,
    notes: ({ board }) => [{ at: board.at, says: `\`${board.step}\` puts \`${board.part}\` in before it` }],
    why: 'The force of a heavy press goes through whatever lies on its way, and solder joints and chips crack unseen.',
  }),
  cureNotWaited: message<{
    step: string
    glued: { step: string; at: Place }
    how: 'put' | 'turned' | 'turned while it cures'
  }>({
    code: 'ASM13',
    level: 'warning',
    says: ({ step, glued, how }) => {
      const does = how === 'put' ? `puts something on what \`${glued.step}\` glued` : 'turns the work over'
      const cure =
        how === 'turned while it cures'
          ? `and need not wait for the cure of \`${glued.step}\``
          : how === 'put'
            ? 'and no cure is stated'
            : `after \`${glued.step}\`, of which no cure is stated`
      return `\`${step}\` ${does} ${cure}`
    },
    mend: ({ glued, how }) =>
      how === 'turned while it cures'
        ? `add \`after: [${glued.step}]\` to it`
        : `add \`cure:\` to \`${glued.step}\`, as its data sheet says`,
    notes: ({ glued }) => [{ at: glued.at, says: `\`${glued.step}\` glues here` }],
    why: 'What is not cured moves when it is touched or turned over, and the joint never gets its strength.',
  }),
  fallsOut: message<{
    step: string
    turn: string
    loose: readonly { step: string; part: string; at: Place }[]
  }>({
    code: 'ASM14',
    level: 'warning',
    says: ({ step, turn, loose }) =>
      `\`${step}\` turns the work (${turn}) while ${list(loose.map(({ part }) => part))} ${loose.length === 1 ? 'lies' : 'lie'} loose in it`,
    mend: ({ loose }) =>
      `add \`loose_until:\` with the step that fastens it to \`${loose[0]!.step}\`, or say in a \`note\` how \`${loose[0]!.part}\` is held`,
    notes: ({ loose }) =>
      loose.map(({ step, at }) => ({ at, says: `\`${step}\` only lays it in its place` })),
    why: 'What is only laid in its place falls out, or out of line, when the work is turned over before something holds it.',
  }),
  fastenersOff: message<
    | {
        kind: 'threads'
        part: string
        size: string
        threads: number
        screws: number
        step: string
        others: readonly { step: string; count: number; at: Place }[]
      }
    | { kind: 'shares'; step: string; part: string; parts: number; screw: string; screws: number }
  >({
    code: 'ASM15',
    level: 'warning',
    says: (facts) =>
      facts.kind === 'threads'
        ? `\`${facts.part}\` is made with ${facts.threads} ${facts.threads === 1 ? 'thread' : 'threads'} ${facts.size}, and ${facts.screws} ${facts.screws === 1 ? 'screw' : 'screws'} ${facts.size} go into it (${list([facts.step, ...facts.others.map(({ step }) => step)])})`
        : `\`${facts.step}\` puts ${facts.parts} of \`${facts.part}\` with ${facts.screws} of \`${facts.screw}\`: not as many for each`,
    mend: (facts) =>
      facts.kind === 'threads'
        ? 'correct the counts under `with`, or `holes` of the operation that makes the threads'
        : `write a multiple of ${facts.parts}: \`${facts.screw} x${Math.ceil(facts.screws / facts.parts) * facts.parts}\``,
    notes: (facts) =>
      facts.kind === 'threads'
        ? facts.others.map(({ step, count, at }) => ({ at, says: `\`${step}\` takes ${count} of them` }))
        : [],
    why: 'A screw too few shows when the device is put together and the shop is shut; a screw too many has no hole.',
  }),
  wornBehindHarm: message<{ part: string; destroys: readonly { step: string; at: Place }[] }>({
    code: 'ASM16',
    level: 'warning',
    says: ({ part, destroys }) =>
      `\`${part}\` wears, and cannot be renewed without destroying ${list(destroys.map(({ step }) => step))}`,
    mend: () =>
      'screw it instead of joining it for good, or leave an opening; `fettle apart` shows the whole way',
    notes: ({ destroys }) =>
      destroys.map(({ step, at }) => ({ at, says: `\`${step}\` joins for good here` })),
    why: 'What wears is renewed some day. Behind a joint that only destroying opens, the whole device wears out with it.',
  }),
} as const
