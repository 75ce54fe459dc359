import { describe, expect, it } from 'vitest'
import { plan } from '../../../../src/compile.ts'

const carts = (vendor: string, parts: string) => {
  const text = `
device: {name: T, currency: EUR, start: 2026-02-02}
people: {ana: {hours: {daily: "18:00-22:00"}}}
vendors: {v: {transit: 1 wd, ${vendor}}}
parts:
${parts}
`
  const { results } = plan('-', { stdin: text })
  return results!.purchase.carts[0]!
}
const knob = '  knob: {kind: bought, qty: 9, offers: [{vendor: v, price: {1: 5.50, 10: 4.50}, lead: 1 wd}]}'

describe('how much of each line is bought', () => {
  it('is what the cart as a whole costs least with: a cheaper break may lose free freight', () => {
    const cart = carts('freight: 12, free over: 47', knob)
    expect(cart.lines[0]!.quantity).toBe(9)
    expect(cart.total).toBe(4950)
  })

  it('takes the break where freight is the same', () => {
    const cart = carts('freight: 12', knob)
    expect(cart.lines[0]!.quantity).toBe(10)
    expect(cart.total).toBe(5700)
  })

  it('buys more where that makes the freight free', () => {
    const cart = carts(
      'freight: 12, free over: 50',
      '  knob: {kind: bought, qty: 9, offers: [{vendor: v, price: {1: 5.40, 10: 5.39}, lead: 1 wd}]}',
    )
    expect(cart.lines[0]!.quantity).toBe(10)
    expect(cart.total).toBe(5390)
  })
})
