import { describe, expect, it } from 'vitest'
import { plan } from '../../../src/compile.ts'

const chain = (sum: string) =>
  plan('-', {
    stdin: `
device: {name: Box, currency: EUR, start: 2026-02-02}
people: {ana: {hours: {daily: "09:00-19:00"}}}
parts:
  base: {kind: bought, qty: 1, have: 1, worth: 1, features: {depth: 6 ± 0.05 mm}}
  lid: {kind: bought, qty: 1, have: 1, worth: 1, features: {height: 2 ± 0.02 mm}}
chains:
  gap: {must: 2 ± 0.03 mm, sum: [${sum}]}
`,
  })

describe('a dimension of a single piece', () => {
  it('named twice with opposite signs takes nothing from a chain, for the check as for the sum', () => {
    const { diagnostics, results } = chain('base.depth, -base.depth, lid.height')
    expect(diagnostics.map(({ code }) => code)).toEqual([])
    expect(results!.chains[0]!.worst).toEqual([1.98, 2.02])
  })
})
