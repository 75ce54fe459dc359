import type { JoiningMethod, Step } from '../model/assembly.ts'
import type { Project } from '../model/project.ts'
import type { UndoBecause, Undoing, UndoWhy } from '../model/repair.ts'
import type { UndoCost } from '../model/undo-cost.ts'
import { sayCount } from './say-time.ts'

const verbs: Readonly<Record<JoiningMethod, string>> = {
  screw: 'Unscrew',
  thread: 'Unscrew',
  press: 'Press out',
  seat: 'Lift out',
  glue: 'Break the glued joint of',
  solder: 'Unsolder',
  snap: 'Unsnap',
  crimp: 'Cut off the crimp of',
  plug: 'Unplug',
  magnet: 'Pull off',
  tie: 'Cut the tie of',
}

const careful: Readonly<Record<UndoCost, string>> = {
  none: '',
  care: ', with care',
  destroyed: ', which destroys the joint',
}

const isUsedUp = (project: Project, part: string): boolean => project.parts.get(part)?.role === 'consumable'

/** How a step is undone: `Unscrew lid from base: take out screw M3x8 x4`. */
export function sayUndoing(project: Project, step: Step, cost: UndoCost): string {
  const kept = step.fasteners.filter(({ part }) => !isUsedUp(project, part))
  const bolts = kept.map(({ part, count }) => sayCount(part, count)).join(', ')
  const out = step.method === 'screw' && bolts !== '' ? `: take out ${bolts}` : ''
  if (!step.put) return `Undo "${step.action ?? step.id}"${out}${careful[cost]}`
  const verb = step.method === null ? 'Take off' : verbs[step.method]
  const body = step.onto ?? step.into
  const from = body ? ` from ${body.body}` : ''
  return `${verb} ${sayCount(step.put.part, step.put.count)}${from}${out}${careful[cost]}`
}

const lost: Readonly<Partial<Record<JoiningMethod, (part: string) => string>>> = {
  glue: (part) => `${part}, likely spoilt; clean both faces`,
  solder: (part) => `${part}, if it did not stand the heat; fresh solder`,
  crimp: (part) => `the contact of ${part}`,
  tie: () => 'the tie',
  press: (part) => `${part}, as a pressed part seldom holds twice; measure the bore`,
}

/** What must be had new on the way back. */
export function sayRenewals(project: Project, step: Step, cost: UndoCost): readonly string[] {
  const used = step.fasteners
    .filter(({ part }) => isUsedUp(project, part))
    .map(({ part, count }) => sayCount(part, count))
  const said = step.adhesive !== null && used.length === 0 ? [step.adhesive] : []
  const locker = step.locker && used.length === 0 ? ['thread locker'] : []
  const what = step.put?.part ?? step.id
  const gone = cost === 'destroyed' && step.method !== null ? lost[step.method] : undefined
  return [...used, ...said, ...locker, ...(gone ? [gone(what)] : [])]
}

const reasons: Readonly<Record<UndoWhy, (step: string) => string>> = {
  on: (step) => `sits on what ${step} put (\`on\``,
  in: (step) => `sits in what ${step} put (\`in\``,
  shut: (step) => `shuts what ${step} put (\`shut\``,
  mates: (step) => `meets what ${step} put (\`mates\``,
  'way out': (step) => `shuts the way out of what ${step} does (\`in\``,
  reaches: (step) => `${step} cannot be reached otherwise (\`reaches\``,
  before_last_of: (step) => `${step} cannot be got at otherwise (\`before_last_of\``,
  after: (step) => `was to come after ${step} (\`after\``,
  before: (step) => `${step} was to come before it (\`before\``,
  stops: (step) => `stops what ${step} put on its way out (\`model\``,
  'stops fastener': (step) => `stops what fastens ${step} on its way out (\`model\``,
  wanted: () => 'this is what is wanted (`put`',
}

/** Why a step is undone, with the line that says so. */
export function sayWhyUndone(because: UndoBecause | null): string {
  if (because === null) return 'this is what is wanted'
  return `${reasons[because.why](`"${because.step}"`)}, line ${because.at.line})`
}

/** What to think of a step that only words of order ask for; `null`: nothing. */
export function sayDoubt({ because, byWordsAlone, cost }: Undoing): string | null {
  if (!byWordsAlone || cost === 'none' || !because) return null
  const { why, at, step, sure } = because
  return !sure
    ? `only \`${why}\` (line ${at.line}) asks for it: if it is not in the way, leave it on`
    : `only needed if "${step}" must be undone, for which only words of order ask`
}
