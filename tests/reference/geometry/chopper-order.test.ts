import { describe, expect, it } from 'vitest'
import { plan } from '../../../src/compile.ts'
import type { Results } from '../../../src/model/results.ts'
import { whyBlocked } from '../../../src/verify/why-blocked.ts'
import { chopperText, withChopper } from './chopper-files.ts'

/** The chopper without a word of which way anything goes in, what it goes into and what shuts what. */
function bare(): string {
  const cut = chopperText
    .replace(/^ {6,8}(?:from|in|through|shut): .*\n/gm, (line) => (/from: \d/.test(line) ? line : ''))
    .replace(/, (?:in|through|shut): [^,}\n]+/g, '')
  expect(cut).not.toMatch(/^ {6}(?:in|through|shut): /m)
  return cut
}

describe('the order of the chopper from its meshes alone', () => {
  const { results, diagnostics } = withChopper(plan, bare()) as {
    results: Results
    diagnostics: readonly { level: string; says: string }[]
  }
  const order = results?.orders.get('')?.order ?? []
  const goesBefore = (first: string, then: string) => {
    expect(order).toContain(first)
    expect(order.indexOf(first), `${first} before ${then}: ${order.join(', ')}`).toBeLessThan(
      order.indexOf(then),
    )
  }

  it('exists, without an error and with nothing set aside', () => {
    expect(diagnostics.filter(({ level }) => level === 'error').map(({ says }) => says)).toEqual([])
    expect(results.orders.get('')!.setAside).toEqual([])
  })

  it('is as a person would say', () => {
    goesBefore('fit block', 'shut belly') // the heads of its screws are in the pocket
    goesBefore('fit washer', 'fit rear bearing')
    goesBefore('fit rear bearing', 'fit coupling')
    goesBefore('fit coupling', 'fit motor')
    goesBefore('fit rotor', 'fit guard')
    goesBefore('fit rotor', 'fit speed board') // the fork straddles the rim
    goesBefore('fit bracket', 'fit speed board')
    goesBefore('fit loom', 'fit cable holders')
    goesBefore('fit cable holders', 'shut belly')
    goesBefore('shut belly', 'fit feet')
    goesBefore('fit block', 'fit rotor')
    goesBefore('fit block', 'fit guard')
  })

  it('seats the wheel before the ring that locks it', () => {
    const rotor = results.orders.get('rotor head')!.order!
    expect(rotor.indexOf('seat wheel')).toBeLessThan(rotor.indexOf('lock wheel'))
  })

  it('leaves every part a straight way in', () => {
    for (const [of, meshes] of results.meshes!.plans)
      expect(whyBlocked(meshes, results.orders.get(of)!)).toBe(null)
  })
})
