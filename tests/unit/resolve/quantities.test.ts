import { describe, expect, it } from 'vitest'
import { device, people, resolveText } from './resolve-text.ts'

const machinedPart = (stock: string): string => `${device}${people}
materials:
  brass: {kerf: 20 thou, forms: [{bar: 3/4 in, length: 1 ft, have: 6 in}, {plate: 8 in x 100 mm x 1/4 in, have: 0.5}]}
parts:
  hub: {kind: machined, qty: 1, material: brass, stock: ${stock}, mass: 0.5 oz, route: [{deburr: {time: 90 s}}]}
`

describe('a quantity of the source', () => {
  // Source: the international inch is 25.4 mm exactly, the avoirdupois ounce 28.349523125 g exactly (NIST SP 811, appendix B.8).
  it('is kept exactly in base units and in the words the person wrote', () => {
    const { project, diagnostics } = resolveText(machinedPart('{bar: 19.05 mm, length: 1 1/8 in}'))
    expect(diagnostics).toEqual([])
    const part = project.parts.get('hub')!
    expect(part.mass!.value.valueOf()).toBe(14.1747615625)
    expect(part.mass!.text).toBe('0.5 oz')
    const stock = part.way.kind === 'machined' ? part.way.stock! : null
    expect(stock!.size.shape === 'bar' && stock!.size.length.value.valueOf()).toBe(28.575)
    expect(stock!.size.shape === 'bar' && stock!.size.length.text).toBe('1 1/8 in')
    expect(project.materials.get('brass')!.kerf.value.valueOf()).toBe(0.508)
  })

  it('finds the form of a bar across inch and metric: 19.05 mm is cut from 3/4 in', () => {
    const { project } = resolveText(machinedPart('{bar: 19.05 mm, length: 20 mm}'))
    const way = project.parts.get('hub')!.way
    expect(way.kind === 'machined' && way.stock!.form).toBe('brass bar 3/4 in')
  })

  it('does not take a bar of 19 mm for one of 3/4 in', () => {
    const { diagnostics } = resolveText(machinedPart('{bar: 19 mm, length: 20 mm}'))
    expect(diagnostics.map(({ code }) => code)).toEqual(['BUY07'])
  })

  it('mixes units within one size, those without taking the last', () => {
    const { project } = resolveText(machinedPart('{plate: 2 in x 30 x 6.35 mm}'))
    const way = project.parts.get('hub')!.way
    const size = way.kind === 'machined' ? way.stock!.size : null
    expect(size?.shape === 'plate' && size.length.value.valueOf()).toBe(50.8)
    expect(size?.shape === 'plate' && size.width.value.valueOf()).toBe(30)
  })

  it('counts what is here of a form as a share of one: 6 in of a bar of 1 ft is half', () => {
    const { project } = resolveText(machinedPart('{bar: 3/4 in, length: 20 mm}'))
    const forms = project.materials.get('brass')!.forms
    expect(forms.map(({ have }) => have.valueOf())).toEqual([0.5, 0.5])
  })

  it('takes the mean of three points, (a + 4 m + b) / 6, and keeps the text', () => {
    const { project } = resolveText(`${device}${people}work: {firmware: {time: 60..90..180 min}}`)
    const time = project.work.get('firmware')!.time!
    expect(time.mean.valueOf()).toBe(6000)
    expect(time.text).toBe('60..90..180 min')
  })

  it('reads bare money in the vendor’s currency and rates in the project’s', () => {
    const { project, diagnostics } = resolveText(`${device}${people}
exchange: {USD: 0.92}
vendors: {harbour: {currency: USD, freight: 9}}
parts: {lens: {kind: bought, qty: 1, worth: 3, offers: [{vendor: harbour, price: 4.20, lead: 1 wd}]}}
`)
    expect(diagnostics).toEqual([])
    const way = project.parts.get('lens')!.way
    const offer = way.kind === 'bought' ? way.offers[0]! : null
    expect([offer!.currency, offer!.prices![0]!.price.toFraction()]).toEqual(['USD', '21/5'])
    expect(project.exchange.get('USD')!.toFraction()).toBe('23/25')
  })
})
