import { type Condition, type Rule, stepsOf } from './rules.ts'

/**
 * Steps that could change places with each other in every order that keeps the rules, in classes of two or more,
 * rising; those that `alike` tells apart stay apart.
 * Method: two steps are of a class when the rules stay the same with the two exchanged; then whole classes may be
 * shuffled, since such exchanges can be done one after the other.
 */
export function interchangeable(
  size: number,
  rules: readonly Rule[],
  alike: (one: number, other: number) => boolean,
): readonly (readonly number[])[] {
  const about: Rule[][] = Array.from({ length: size }, () => [])
  for (const rule of rules)
    for (const step of new Set([rule.step, ...rule.any.flatMap(stepsOf)])) about[step]!.push(rule)
  const fits = (one: number, other: number): boolean =>
    about[one]!.length === about[other]!.length &&
    alike(one, other) &&
    sameExchanged([...new Set([...about[one]!, ...about[other]!])], one, other)
  const classes: number[][] = []
  for (let step = 0; step < size; step++) {
    const known = classes.find(([first]) => fits(first!, step))
    if (known) known.push(step)
    else classes.push([step])
  }
  return classes.filter(({ length }) => length > 1)
}

/** Rules that put each class in the order of its numbers: of orders that differ only in a class one is kept. */
export function inOneOrder(classes: readonly (readonly number[])[]): readonly Rule[] {
  return classes.flatMap((steps) =>
    steps.slice(1).map((step, k): Rule => ({ step, any: [{ kind: 'some done', of: [steps[k]!] }] })),
  )
}

function sameExchanged(rules: readonly Rule[], one: number, other: number): boolean {
  const exchanged = (step: number): number => (step === one ? other : step === other ? one : step)
  const as = (number: (step: number) => number): string =>
    [...new Set(rules.map((rule) => sayRule(rule, number)))].sort().join(';')
  return as((step) => step) === as(exchanged)
}

const sayRule = ({ step, any }: Rule, number: (step: number) => number): string =>
  `${number(step)}:${any
    .map((one) => sayCondition(one, number))
    .sort()
    .join('|')}`

function sayCondition(one: Condition, number: (step: number) => number): string {
  const list = (steps: readonly number[]): string =>
    [...new Set(steps.map(number))].sort((a, b) => a - b).join(',')
  return one.kind === 'shut' ? `${one.is}${list(one.shuts)}/${list(one.opens)}` : `${one.kind}${list(one.of)}`
}
