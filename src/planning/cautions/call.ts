import { groupBy } from '../../base/group-by.ts'
import type { ShownCaution } from '../../model/results.ts'
import { codeOf } from '../../trade/cautions/caution.ts'
import { type CautionKey, cautions } from '../../trade/cautions.ts'

/** A caution, and the step that calls for it; `null`: the whole sheet. */
export interface Call {
  readonly topic: string
  readonly signs: readonly string[]
  readonly says: string
  readonly step: string | null
}

/** The usual caution of a kind of work. */
export const usual = (key: CautionKey, step: string | null = null): Call => ({
  topic: key,
  ...cautions[key],
  step,
})

/** Cautions in the words of the project. */
export const own = (topic: string, all: readonly string[], step: string | null = null): readonly Call[] =>
  all.map((says) => ({ topic, signs: [], says, step }))

/** Calls of the same words become one, with every topic, sign and step that called; so do those of a topic without words. */
export function onceEach(calls: readonly Call[]): readonly ShownCaution[] {
  const alike = ({ says, topic }: Call): string =>
    says === '' ? JSON.stringify(topic) : says.trim().toLowerCase()
  return [...groupBy(calls, alike).values()].map(asOne)
}

function asOne(same: readonly Call[]): ShownCaution {
  return {
    topic: [...new Set(same.map(({ topic }) => topic))].join(' and '),
    signs: [...new Set(same.flatMap(({ signs }) => signs))],
    says: same[0]!.says,
    steps: [...new Set(same.flatMap(({ step }) => step ?? []))],
  }
}

/** Of lines that stand together, each keeps the signs that none above it shows. */
export function newSigns(all: readonly ShownCaution[]): readonly ShownCaution[] {
  const shown = new Set<string>()
  return all.map((one) => {
    const signs = one.signs.filter((sign) => !shown.has(codeOf(sign)))
    for (const sign of signs) shown.add(codeOf(sign))
    return { ...one, signs }
  })
}
