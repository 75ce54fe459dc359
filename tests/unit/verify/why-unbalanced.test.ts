import Fraction from 'fraction.js'
import { describe, expect, test } from 'vitest'
import type { Charge, Money, Source } from '../../../src/model/money.ts'
import type { Cart, CartLine } from '../../../src/model/purchase.ts'
import { exchanged, halfAway, minorUnits } from '../../../src/verify/exact.ts'
import { whyUnbalanced } from '../../../src/verify/why-unbalanced.ts'
import { type SmallMoney, smallMoney } from './small-money.ts'

type Change = (all: SmallMoney) => void

function saysOf(change: Change): string | null {
  const all = smallMoney()
  change(all)
  return whyUnbalanced(all.project, all.purchase, all.money)
}

const cart =
  (id: string, facts: Partial<Cart>): Change =>
  (all) => {
    const carts = all.purchase.carts.map((one) => (one.id === id ? { ...one, ...facts } : one))
    all.purchase = { ...all.purchase, carts }
  }

const line =
  (id: string, facts: Partial<CartLine>): Change =>
  (all) => {
    for (const one of all.purchase.carts) {
      cart(one.id, { lines: one.lines.map((each) => (each.id === id ? { ...each, ...facts } : each)) })(all)
    }
  }

const money =
  (facts: (now: Money) => Partial<Money>): Change =>
  (all) => {
    all.money = { ...all.money, ...facts(all.money) }
  }

const source = (id: string, facts: Partial<Source>) =>
  money(({ sources }) => ({
    sources: sources.map((one) => (one.id === id ? ({ ...one, ...facts } as Source) : one)),
  }))

const charge = (id: string, facts: Partial<Charge>) =>
  money(({ charges }) => ({ charges: charges.map((one) => (one.id === id ? { ...one, ...facts } : one)) }))

test('money counted by hand balances', () => {
  expect(saysOf(() => {})).toBeNull()
})

const broken: readonly [string, Change, RegExp][] = [
  [
    'money in another currency',
    money(() => ({ currency: 'USD' })),
    /the money is in USD, the project in EUR/,
  ],
  ['fewer digits than the currency has', money(() => ({ digits: 0 })), /EUR has 2 minor digits, not 0/],
  ['too few pieces', line('chip', { needed: 3 }), /`chip` .* buys 2 and needs 3/],
  ['part of a pack', line('magnet', { quantity: 9 }), /`magnet` .* no whole number of packs of 5/],
  ['more than needed without a reason', line('magnet', { more: null }), /`magnet` .* reason for more: none/],
  ['a price from another break', line('magnet', { unitPrice: new Fraction('0.41') }), /unit price from 1/],
  [
    'a line that is not price times amount',
    line('magnet', { goodsForeign: 621 }),
    /`magnet`.*621.*they are 620/,
  ],
  [
    'an unknown price taken as nothing',
    line('sensor', { goodsForeign: 0 }),
    /`sensor`.*0 in EUR; they are null/,
  ],
  [
    'a free price where none is given',
    line('sensor', { unitPrice: new Fraction(0) }),
    /`sensor`.*does not give/,
  ],
  ['an exchange rounded down', line('chip', { goods: 1178 }), /`chip`.*1178 in EUR; they are 1179/],
  ['freight not asked for', cart('home', { freightForeign: 0 }), /`home` says freight 0, not 900/],
  [
    'no surcharge below the least order',
    cart('abroad', { surchargeForeign: 0 }),
    /`abroad` says surcharge 0, not 719/,
  ],
  ['an exchange left out', cart('abroad', { clearance: 500 }), /says clearance 500; converted it is 460/],
  ['duty forgotten', cart('abroad', { duty: 0 }), /`abroad` says duty 0; at its rate it is 50/],
  ['tax on the goods alone', cart('home', { tax: 165 }), /`home` says tax 165; at its rate it is 336/],
  [
    'freight shared wrongly',
    line('magnet', { freight: 642 }),
    /gives line `magnet` 642 of the freight, not 641/,
  ],
  [
    'a cart that is not the sum of its lines',
    cart('home', { total: 2105 }),
    /`home` says total 2105; .* 2106/,
  ],
  [
    'a line that is not the sum of its parts',
    line('magnet', { landed: 1499 }),
    /lands line `magnet` at 1499/,
  ],
  [
    'an unknown line unsaid',
    cart('secret', { unknown: [] }),
    /`secret` names as unknown nothing, not `sensor`/,
  ],
  [
    'a total over an unknown line',
    cart('secret', { total: 0 }),
    /`secret` says total 0; its parts make null/,
  ],
  ['a line without a source', money((m) => ({ sources: m.sources.slice(1) })), /3 sources stand for 4 lines/],
  [
    'a source twice',
    money((m) => ({ sources: [...m.sources, m.sources[0]!] })),
    /source `chip` stands twice/,
  ],
  [
    'a source unlike its line',
    source('magnet', { amount: 1501, known: 1501 }),
    /`magnet` says 1501; its line/,
  ],
  ['what nobody sells at nothing', source('ghost', { amount: 0 }), /source `ghost` says 0 and is null/],
  [
    'own stock at another worth',
    source('bar', { amount: 481, known: 481 }),
    /source `bar` says 481 and is 480/,
  ],
  [
    'hours at another rate',
    source('mill / base', { amount: 901 }),
    /source `mill \/ base` says 901 and is 900/,
  ],
  ['a charge a cent short', charge('screw used', { amount: 484 }), /`screw used` says 484; its part .* 485/],
  [
    'an unknown charge at nothing',
    charge('sensor used', { amount: 0 }),
    /`sensor used` says 0; its part .* null/,
  ],
  [
    'a rest left nowhere',
    money((m) => ({ leftovers: m.leftovers.slice(1) })),
    /parts of source `magnet` end at 0.8/,
  ],
  [
    'hours charged to nobody',
    money((m) => ({ charges: m.charges.slice(0, -1) })),
    /`mill \/ base` is charged to nothing/,
  ],
  [
    'a line charged over and over',
    money((m) => ({ charges: [...m.charges, m.charges[0]!] })),
    /parts of source `magnet` do not lie end to end/,
  ],
  [
    'cash a cent off',
    money(() => ({ cash: { known: 4455, unknown: ['sensor', 'ghost'] } })),
    /cash says 4455; .* 4456/,
  ],
  [
    'cash that hides an unknown',
    money(() => ({ cash: { known: 4456, unknown: ['ghost'] } })),
    /cash names as unknown/,
  ],
  [
    'charged that hides an unknown',
    money(() => ({ charged: { known: 5415, unknown: [] } })),
    /charged names as unk/,
  ],
  [
    'left over a cent off',
    money(() => ({ leftOver: { known: 420, unknown: [] } })),
    /left over says 420; .* 421/,
  ],
  ['a difference that is none', money(() => ({ difference: 1 })), /the difference says 1 and is 0/],
  [
    'a part missing from its table',
    money((m) => ({ byPart: m.byPart.slice(1) })),
    /by part lacks `part magnet`/,
  ],
  [
    'a part twice in its table',
    money((m) => ({ byPart: [...m.byPart, m.byPart[0]!] })),
    /by part stands twice/,
  ],
  [
    'a process a cent off',
    money((m) => ({ byProcess: m.byProcess.map((row) => ({ ...row, known: row.known + 1 })) })),
    /`bought` by process says 4036; it adds up to 4035/,
  ],
  [
    'a vendor that hides an unknown price',
    money((m) => ({ byVendor: m.byVendor.map((row) => ({ ...row, unknown: [] })) })),
    /`secret` by vendor names as unknown nothing; without a price are `sensor`/,
  ],
  [
    'a share for one device of two',
    money((m) => ({ byDevice: m.byDevice.slice(1) })),
    /not one for each device/,
  ],
  [
    'shares by device a cent off',
    money((m) => ({ byDevice: m.byDevice.map((row) => ({ ...row, known: 2707 })) })),
    /by device add up to 5414, not to 5415/,
  ],
  [
    'an expected loss left out of the yield',
    money((m) => ({ expectedLoss: m.expectedLoss.map((row) => ({ ...row, amount: 276 })) })),
    /expected loss of `base` says 276 and is 345/,
  ],
]

describe('money that does not add up is refused, and the sentence names where:', () => {
  test.each(broken)('%s', (_name, change, sentence) => {
    expect(saysOf(change)).toMatch(sentence)
  })
})

describe('own arithmetic', () => {
  test('a half goes away from zero on both sides', () => {
    expect([halfAway(5n, 2n), halfAway(-5n, 2n), halfAway(7n, 3n), halfAway(-1n, 3n)]).toEqual([3, -3, 2, 0])
  })

  // Source: ISO 4217 minor digits, from memory: EUR 2, JPY 0, KWD 3.
  test('money is rounded to the digits of its currency', () => {
    expect(['EUR', 'JPY', 'KWD'].map((currency) => minorUnits(1005n, 1000n, currency))).toEqual([
      101, 1, 1005,
    ])
    expect(minorUnits(1n, 1n, 'XYZ')).toBeNull()
  })

  // Constructed: 84.00 x 1.0850 = 91.14.
  test('an exchange is rounded once', () => {
    expect(exchanged(8400, 'USD', new Fraction('1.0850'), 'EUR')).toBe(9114)
    expect(exchanged(8400, 'USD', null, 'EUR')).toBeNull()
  })
})
