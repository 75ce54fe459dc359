import type { Place } from '../../base/place.ts'
import { message, type Note } from '../message.ts'

/** One edge of a ring, in words. */
export interface Edge {
  readonly id: string
  readonly at: Place
  /** `base` waits for `cover`: in words. */
  readonly says: string
}
/** Every edge with its line. */
const ringNotes = (ring: readonly Edge[]): readonly Note[] => ring.map(({ at, says }) => ({ at, says }))
const chain = (ring: readonly Edge[]): string => [...ring.map(({ id }) => id), ring[0]?.id ?? ''].join(' -> ')

/** DEP: what waits for what. */
export const dep = {
  waitsInRing: message<{ ring: readonly Edge[] }>({
    code: 'DEP01',
    level: 'error',
    says: ({ ring }) => `these wait for each other: ${chain(ring)}`,
    mend: ({ ring }) => (ring.length === 1 ? 'take it out' : 'take out this link or one of those below'),
    notes: ({ ring }) => ringNotes(ring),
    why: 'Things that wait for each other in a ring can never start, so no finish date exists.',
  }),
  partInItself: message<{ ring: readonly Edge[] }>({
    code: 'DEP02',
    level: 'error',
    says: ({ ring }) => `these parts contain each other: ${chain(ring)}`,
    mend: () => 'take one of them out of the steps of another',
    notes: ({ ring }) => ringNotes(ring),
    why: 'No part can be inside itself, however far down.',
  }),
  fixtureNeedsItself: message<{ fixture: string; ring: readonly Edge[] }>({
    code: 'DEP03',
    level: 'error',
    says: ({ fixture, ring }) => `\`${fixture}\` is needed to make \`${fixture}\`: ${chain(ring)}`,
    mend: ({ fixture }) => `hold the first setups of \`${fixture}\` by something else`,
    notes: ({ ring }) => ringNotes(ring),
    why: 'A fixture must exist before the setup that clamps on it, so its own route cannot need it.',
  }),
  usedBeforeItExists: message<{ part: string; by: string; ring: readonly Edge[] }>({
    code: 'DEP04',
    level: 'error',
    says: ({ part, by, ring }) => `\`${part}\` is used by \`${by}\` before it can exist: ${chain(ring)}`,
    mend: ({ part }) => `let \`${part}\` not wait for what it goes into`,
    notes: ({ ring }) => ringNotes(ring),
    why: 'A part cannot wait for a step that needs the part.',
  }),
  noSchedule: message<{ why: string; tasks: readonly string[]; certain: boolean }>({
    code: 'DEP05',
    level: 'error',
    says: ({ why, tasks, certain }) =>
      `${certain ? 'there is no schedule' : 'no schedule was found'}: ${why}${tasks.length > 0 ? ` (${tasks.slice(0, 3).join('; ')})` : ''}`,
    mend: () => 'loosen the longest wait, add hours, or let the work pause',
    why: 'The work could not be placed in the hours given. Where this was not proved, it says "none found".',
  }),
} as const
