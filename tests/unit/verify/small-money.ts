import Fraction from 'fraction.js'
import type { Charge, HoursSource, LeftOver, LineSource, Money, Source } from '../../../src/model/money.ts'
import type { Offer, Project } from '../../../src/model/project.ts'
import type { Cart, CartLine, Purchase } from '../../../src/model/purchase.ts'
import { here, project, vendor } from './world.ts'

const f = (value: number | string) => new Fraction(value)

/** Three carts and their money, counted by hand: one at home, one abroad, one with a price that nobody knows. */
export interface SmallMoney {
  project: Project
  purchase: Purchase
  money: Money
}

export function smallMoney(): SmallMoney {
  const base = project()
  const purchase = smallPurchase()
  return {
    project: {
      ...base,
      device: { ...base.device, qty: 2 },
      exchange: new Map([['USD', f('0.92')]]),
      vendors: new Map([
        ['home', vendor('home', { freight: f(9), freeOver: f(80), tax: f('0.19') })],
        [
          'abroad',
          vendor('abroad', { currency: 'USD', minimumOrder: f(20), clearance: f(5), duty: f('0.027') }),
        ],
        ['secret', vendor('secret')],
      ]),
    },
    purchase,
    money: moneyOf(purchase),
  }
}

function offer(of: string, facts: Partial<Offer>): Offer {
  const none = { needs: [], lead: null, minimum: null, code: null, url: null, cart: null, note: null }
  return { at: here, vendor: of, prices: null, currency: 'EUR', pack: 1, moq: 1, ...none, ...facts }
}

function line(
  id: string,
  facts: Partial<CartLine> & Pick<CartLine, 'offer' | 'needed' | 'quantity'>,
): CartLine {
  const free = { freight: 0, surcharge: 0, duty: 0, tax: 0, clearance: 0 }
  const unknown = { unitPrice: null, breakFrom: 1, goodsForeign: null, goods: null, landed: null, known: 0 }
  const what = { kind: 'part', part: id } as const
  return { id, what, title: id, at: here, more: null, rate: f(1), ...free, ...unknown, ...facts }
}

function cart(id: string, lines: CartLine[], facts: Partial<Cart>): Cart {
  const none = { freight: 0, surcharge: 0, duty: 0, tax: 0, clearance: 0 }
  const foreign = { freightForeign: 0, surchargeForeign: 0, clearanceForeign: 0, goodsForeign: null }
  const days = { leadDays: 0, likelyLeadDays: 0, transitDays: 0, likelyTransitDays: 0, leads: [] }
  const { transit } = vendor(id)
  const open = { goods: null, total: null, known: 0, unknown: [], needs: [], outside: false }
  return {
    ...{ id, vendor: id, at: here, lines, currency: 'EUR', rate: f(1), transit },
    ...{ ...none, ...foreign, ...days, ...open, ...facts },
  }
}

function smallPurchase(): Purchase {
  const magnetOffer = offer('home', { pack: 5, prices: prices([1, '0.62'], [25, '0.41']) })
  const screwOffer = offer('home', { pack: 50, prices: prices([1, '0.05']) })
  // Tax 0.19 x 17.70 = 3.363; freight and tax divided 620 to 250.
  const magnet = line('magnet', {
    ...{ offer: magnetOffer, needed: 8, quantity: 10, more: 'pack', unitPrice: f('0.62') },
    ...{ goodsForeign: 620, goods: 620, freight: 641, tax: 239, landed: 1500, known: 1500 },
  })
  const screw = line('screw', {
    ...{ offer: screwOffer, needed: 40, quantity: 50, more: 'pack', unitPrice: f('0.05') },
    ...{ goodsForeign: 250, goods: 250, freight: 259, tax: 97, landed: 606, known: 606 },
  })
  const home = cart('home', [magnet, screw], {
    ...{ goodsForeign: f('8.7'), freightForeign: 900, goods: 870, freight: 900, tax: 336 },
    ...{ total: 2106, known: 2106 },
  })
  // 12.81 USD are 11.79 EUR; 7.19 short of the least order; duty 0.027 x 18.40 = 0.4968.
  const chip = line('chip', {
    ...{ offer: offer('abroad', { currency: 'USD', prices: prices([1, '6.405']) }), needed: 2, quantity: 2 },
    ...{ rate: f('0.92'), unitPrice: f('6.405'), goodsForeign: 1281, goods: 1179 },
    ...{ surcharge: 661, duty: 50, clearance: 460, landed: 2350, known: 2350 },
  })
  const abroad = cart('abroad', [chip], {
    ...{
      currency: 'USD',
      rate: f('0.92'),
      goodsForeign: f('12.81'),
      surchargeForeign: 719,
      clearanceForeign: 500,
    },
    ...{ goods: 1179, surcharge: 661, duty: 50, clearance: 460, total: 2350, known: 2350 },
  })
  const sensor = line('sensor', { offer: offer('secret', {}), needed: 1, quantity: 1 })
  const secret = cart('secret', [sensor], { unknown: ['sensor'] })
  const ghost = { title: 'ghost', at: here, why: 'no offer', kind: 'part', parts: [] } as const
  return { carts: [abroad, home, secret], cuts: [], wear: [], missing: [{ id: 'ghost', ...ghost }] }
}

function prices(...breaks: [number, string][]): Offer['prices'] {
  return breaks.map(([from, price]) => ({ from, price: f(price) }))
}

function moneyOf({ carts }: Purchase): Money {
  const lines = carts.flatMap((one) => one.lines.map((each) => lineSource(one, each)))
  const hours: HoursSource = {
    ...{ kind: 'hours', id: 'mill / base', title: 'mill', of: 'machine', resource: 'mill' },
    ...{ minutes: 90, rate: f(6), amount: 900, known: 900 },
  }
  const sources: Source[] = [
    ...lines,
    { kind: 'missing', id: 'ghost', title: 'ghost', amount: null, known: 0, why: 'no offer' },
    {
      ...{ kind: 'own stock', id: 'bar', title: 'bar', of: 'form', item: 'bar', units: f('0.48') },
      ...{ worth: f(10), worthFrom: 'stated', amount: 480, known: 480 },
    },
    hours,
  ]
  const open = ['sensor', 'ghost']
  const of = (known: number, unknown: string[] = []) => ({ known, unknown })
  return {
    ...{ currency: 'EUR', digits: 2, difference: 0, sources },
    ...{ cash: of(4456, open), charged: of(5415, open), leftOver: of(421) },
    ...{ fromOwnStock: of(480), hoursAtRate: of(900) },
    charges: [
      charge('magnet', 'bought', [0, 8, 10], 1200),
      charge('screw', 'bought', [0, 40, 50], 485),
      charge('chip', 'bought', [0, 2, 2], 2350),
      charge('sensor', 'bought', [0, 1, 1], null),
      charge('ghost', 'bought', [0, 1, 1], null),
      { ...charge('bar', 'material', [0, 1, 1], 480), cause: { kind: 'part', id: 'base' } },
      { ...charge('mill / base', 'machine', [0, 90, 90], 900), cause: { kind: 'part', id: 'base' } },
    ],
    leftovers: [rest('magnet', [8, 10, 10], 300), rest('screw', [40, 50, 50], 121)],
    byPart: [
      ...[
        ['magnet', 1200],
        ['screw', 485],
        ['chip', 2350],
        ['base', 1380],
      ].map(([id, known]) => ({
        cause: { kind: 'part' as const, id: id as string },
        ...of(known as number),
      })),
      ...open.map((id) => ({ cause: { kind: 'part' as const, id }, ...of(0, [id]) })),
    ],
    byProcess: [
      { process: 'bought', ...of(4035, open) },
      { process: 'material', ...of(480) },
      { process: 'machine', ...of(900) },
    ],
    byVendor: [
      { vendor: 'home', ...of(2106) },
      { vendor: 'abroad', ...of(2350) },
      { vendor: 'secret', ...of(0, ['sensor']) },
      { vendor: null, ...of(0, ['ghost']) },
    ],
    byDevice: [
      { device: 0, ...of(2708, open) },
      { device: 1, ...of(2707, open) },
    ],
    expectedLoss: [{ part: 'base', attempts: 1380, yield: f('0.8'), amount: 345 }],
  }
}

function lineSource({ id, vendor: from }: Cart, { id: name, landed, known }: CartLine): LineSource {
  return { kind: 'line', id: name, title: name, cart: id, vendor: from, line: name, amount: landed, known }
}

type Cut = readonly [after: number, upTo: number, of: number]

function slice(source: string, [after, upTo, of]: Cut) {
  return { source, after: f(after).div(of), upTo: f(upTo).div(of), units: f(upTo - after), of: f(of) }
}

function charge(source: string, process: Charge['process'], cut: Cut, amount: number | null): Charge {
  const cause = { kind: 'part', id: source } as const
  return { id: `${source} used`, cause, process, slice: slice(source, cut), amount, known: amount ?? 0 }
}

function rest(source: string, cut: Cut, amount: number): LeftOver {
  const why = { part: null, why: 'over', process: 'bought' } as const
  return { id: `${source} left`, ...why, slice: slice(source, cut), amount, known: amount }
}
