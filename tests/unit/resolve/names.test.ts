import { describe, expect, it } from 'vitest'
import { device, people, resolveText } from './resolve-text.ts'

const stepsPut = (parts: string, put: string) =>
  resolveText(`${device}${people}
parts: {${parts}, base: {kind: bought, have: 9}}
assembly: {steps: [{put: ${put}, on: base, by: seat, time: 5 min}]}
`)

describe('a name with a count behind it', () => {
  it('is the longest known name, then the count', () => {
    const { project } = stepsPut(
      'screw: {kind: bought, have: 99}, screw M2x4: {kind: bought, have: 99}',
      'screw M2x4 x3',
    )
    expect(project.demand.get('screw M2x4')!.perDevice).toBe(3)
    expect(project.demand.get('screw')!.perDevice).toBe(0)
  })

  it('is the whole name where that is known, its digits no count', () => {
    const { project } = stepsPut('plate 3 x4mm: {kind: bought, have: 99}', 'plate 3 x4mm')
    expect(project.demand.get('plate 3 x4mm')!.perDevice).toBe(1)
  })

  it('takes the sign of multiplication as well as the letter', () => {
    expect(stepsPut('pin: {kind: bought, have: 99}', 'pin ×4').project.demand.get('pin')!.perDevice).toBe(4)
  })

  it.each(['pin x0', 'pin x 2', '2 pin', '2x pin', 'pin x2.5', 'pin x-1', 'pin x200000'])(
    'as `%s` is told how to write it, and nothing that only follows',
    (put) => {
      const { diagnostics } = stepsPut('pin: {kind: bought, have: 99}', put)
      expect(diagnostics.map(({ code }) => code)).toEqual(['QTY11'])
    },
  )
})

describe('an entry of the project', () => {
  const bench =
    'vendors: {shop: {freight: 9, transit: 2 wd}, other: {transit: 3 wd}}\nmachines: {mill: {users: [zoe], rate: 6 EUR/h}}\n'

  it('replaces one of the shop whole, what it leaves out included', () => {
    const { project } = resolveText(`${device}use: [bench.yaml]\n${people}vendors: {shop: {days: mon}}\n`, {
      'bench.yaml': bench,
    })
    const shop = project.vendors.get('shop')!
    expect([shop.freight, shop.transit.mean.valueOf(), shop.days.weekly.filter(Boolean).length]).toEqual([
      null,
      0,
      1,
    ])
    expect(project.vendors.get('other')!.transit.mean.valueOf()).toBe(3)
  })

  it('is warned of when nothing uses it, one of a shop is not', () => {
    const { diagnostics } = resolveText(
      `${device}use: [bench.yaml]\n${people}vendors: {mine: {transit: 1 wd}}\nmachines: {mill: {}}\n`,
      { 'bench.yaml': bench },
    )
    expect(diagnostics.map(({ code, says }) => `${code} ${says}`)).toEqual([
      'REF03 the vendor `mine` is not used',
      'REF03 the machine `mill` is not used',
    ])
  })

  it('of a shop may name users of other projects, who are no users here', () => {
    const { project, diagnostics } = resolveText(
      `${device}use: [bench.yaml]\npeople: {zoe: {hours: {sat: "10:00-16:00"}}, ana: {hours: {sat: "10:00-16:00"}}}\n`,
      { 'bench.yaml': `${bench.replace('[zoe]', '[zoe, kim]')}` },
    )
    expect(project.machines.get('mill')!.users).toEqual(['zoe'])
    expect(diagnostics).toEqual([])
  })
})

describe('a project', () => {
  it('starts on the day given instead of its own', () => {
    const text = `device: {name: Lamp, currency: EUR, start: 2026-02-02, wanted: 2026-02-20}\n${people}`
    expect(resolveText(text).project.device.start).toBe(Date.UTC(2026, 1, 2) / 86_400_000)
    expect(resolveText(text, {}, '2026-02-09').project.device.start).toBe(Date.UTC(2026, 1, 9) / 86_400_000)
    expect(resolveText(text, {}, '2026-03-01').diagnostics.map(({ code }) => code)).toEqual(['CAL09'])
  })

  it('takes the first of the ways to get a part and remembers the others', () => {
    const { project, diagnostics } = resolveText(`${device}${people}
parts:
  hub:
    qty: 1
    have: 1
    choices:
      buy: {kind: bought}
      make: {kind: machined, material: unobtainium, route: [{deburr: {}}]}
`)
    expect(diagnostics).toEqual([])
    const hub = project.parts.get('hub')!
    expect([hub.way.kind, hub.choice]).toEqual(['bought', { taken: 'buy', left: ['make'] }])
  })
})
