/** Small projects for checks of features, joins, setups and chains. */
import type { ModelCheck } from '../../../src/checks/check.ts'
import { collect } from '../../../src/diagnostics/collector.ts'
import { resolveText } from '../resolve/resolve-text.ts'

const head = 'device: {name: Lamp, currency: EUR, start: 2026-02-02}\n'
const vendor = 'vendors: {shop: {transit: 2 wd}}\n'

/** A bought part with features, as one line of `parts`. */
export const bought = (name: string, features: string, more = ''): string =>
  `  ${name}: {kind: bought, ${more}features: {${features}}, offers: [{vendor: shop, price: 1, lead: 3 wd}]}\n`

/** A project text of parts, steps (each one line) and further sections. */
export function projectText(parts: readonly string[], steps: readonly string[] = [], more = ''): string {
  const assembly =
    steps.length === 0 ? '' : `assembly:\n  steps:\n${steps.map((one) => `    - ${one}\n`).join('')}`
  return `${head}${vendor}parts:\n${parts.join('')}${assembly}${more}`
}

/** What a check says of a project, as codes, and as sentences. */
export function saidBy(
  check: ModelCheck,
  text: string,
): { readonly codes: string[]; readonly says: string[] } {
  const { report, diagnostics } = collect()
  check(resolveText(text).project, report)
  const all = diagnostics()
  return { codes: all.map(({ code }) => code), says: all.map(({ says }) => says) }
}
