/** What two cautions may both speak of, so that the typed one holds. Source: common practice, no source. */
const matters: readonly RegExp[] = [
  /\bguards?\b/i,
  /\blow(est)? (power|speed)\b/i,
  /\blids? on\b/i,
  /\bextract(ion|or)?\b/i,
  /\bfingers\b/i,
]

/**
 * A usual caution without what is typed for the step already or is typed otherwise: `guard in place` gives way to `no
 * guard yet`. Gives: `''` where nothing is left.
 */
export function usualUnsaid(says: string, typed: readonly string[]): string {
  return without(says, (clause) =>
    typed.some(
      (one) => holds(one, clause) || matters.some((matter) => matter.test(one) && matter.test(clause)),
    ),
  )
}

/** A caution of the project without what is typed for the step in the same words, in whatever order. */
export function ownUnsaid(says: string, typed: readonly string[]): string {
  return without(says, (clause) => typed.some((one) => holds(one, clause)))
}

function without(says: string, said: (clause: string) => boolean): string {
  const clauses = says.split(/(?<=[,;]) /)
  const left = clauses.filter((clause) => !said(clause))
  return left.length === clauses.length ? says : left.join(' ').replace(/[,;]$/, '')
}

/** Whether words hold the words of a clause, one after the other. */
const holds = (words: string, clause: string): boolean => bare(words).includes(bare(clause))

const bare = (words: string): string =>
  ` ${words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `
