/** Plans small enough to be worked out by hand. */
import type { Results } from '../../../../src/model/results.ts'
import { planned } from '../../../reference/calendar-bench.ts'

/** One parcel, and an hour of work with what is in it. */
export const parcel = (lead = '5 wd'): Results =>
  planned(
    `device: {name: parcel, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
vendors: {shop: {transit: 2 wd}}
parts: {screw: {kind: bought, qty: 1, offers: [{vendor: shop, price: 1, lead: ${lead}}]}}
work: {fit: {time: 1 h, needs: [screw]}}
`,
    { samples: 0 },
  )

/** Two works of a whole evening each, and what has to dry after each. */
export const drying = (a: string, b: string): Results =>
  planned(
    `device: {name: drying, qty: 1, currency: EUR, start: 2026-03-02}
people: {ana: {hours: {mon-fri: "19:00-22:00"}}}
work:
  a: {time: 3 h}
  a dries: {time: ${a}, attention: none, after: [a]}
  b: {time: 3 h}
  b dries: {time: ${b}, attention: none, after: [b]}
`,
    { samples: 0 },
  )
