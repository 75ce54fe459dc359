import { nameList } from '../base/near-names.ts'
import type { OrderConstraint, Step } from '../model/assembly.ts'
import type { ReportRule } from './report-model.ts'
import type { WhyModel } from './why-model.ts'

/** What holds a step to its place in the order, and how it holds others, statement by statement. */
export interface OrderRules {
  readonly held: readonly ReportRule[]
  readonly holds: readonly ReportRule[]
}

/** The statements about one step, each with its key and line, in the order of the source; `why` tells of those by the meshes. */
export function orderRules(
  constraints: readonly OrderConstraint[],
  step: Step,
  why: WhyModel = () => null,
): OrderRules {
  const tell = (says: (one: OrderConstraint) => string | null): readonly ReportRule[] =>
    constraints.flatMap((one) => {
      const said = says(one)
      if (said === null) return []
      const because = why(one)
      const whole = because === null ? said : `${said}: ${because}`
      return [{ says: whole, key: one.why, file: one.at.file, line: one.at.line }]
    })
  return { held: tell((one) => sayHeld(one, step.id)), holds: tell((one) => sayHolds(one, step)) }
}

const openingsOf = (body: string, openings: readonly string[]): string =>
  nameList(
    openings.map((opening) => `${body}.${opening}`),
    'or',
  )

/** What a statement asks of the step; `null`: nothing. */
function sayHeld(one: OrderConstraint, step: string): string | null {
  if (one.form === 'before') return one.of.includes(step) ? `comes after \`${one.step}\`` : null
  return one.step === step ? sayAsked(one, null) : null
}

/** What a statement asks of another step because of this one; `null`: nothing. */
function sayHolds(one: OrderConstraint, step: Step): string | null {
  if (one.form === 'before')
    return one.step === step.id
      ? `${nameList(one.of, 'and')} ${one.of.length === 1 ? 'comes' : 'come'} after it`
      : null
  if (one.step === step.id || !isAbout(one, step)) return null
  return `\`${one.step}\` ${sayAsked(one, step.id)}`
}

/** Whether a statement about another step names this one, or an opening that it shuts or opens. */
function isAbout(one: OrderConstraint, { id, shuts, opens }: Step): boolean {
  switch (one.form) {
    case 'presence':
      return one.needs.includes(id)
    case 'before':
    case 'before last of':
      return one.of.includes(id)
    case 'not between':
      return one.from === id || one.until === id
    case 'while open':
    case 'while shut': {
      const openings = one.form === 'while open' ? one.openings : [one.opening]
      return [...shuts, ...opens].some(({ body, opening }) => body === one.body && openings.includes(opening))
    }
  }
}

/** What a statement asks of its step, as seen from another one, which is called `it` where it is named alone. */
function sayAsked(one: OrderConstraint, seenFrom: string | null): string {
  const names = (list: readonly string[], word: 'and' | 'or'): string =>
    list.length === 1 && list[0] === seenFrom ? 'it' : nameList(list, word)
  switch (one.form) {
    case 'presence':
      return `comes after ${names(one.needs, 'or')}`
    case 'before':
      return `comes before ${names(one.of, 'and')}`
    case 'before last of':
      return `comes before ${one.of.length === 1 ? '' : 'the last of '}${names(one.of, 'and')}`
    case 'while open':
      return `begins while ${openingsOf(one.body, one.openings)} is open`
    case 'while shut':
      return `begins while ${openingsOf(one.body, [one.opening])} is shut`
    case 'not between':
      return `does not come between \`${one.from}\` and \`${one.until}\``
  }
}
