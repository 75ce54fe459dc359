import Fraction from 'fraction.js'
import type { Quantity } from '../base/quantity.ts'
import { cal } from '../diagnostics/catalogue/cal.ts'
import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Cutter, Machine, Person, Tool, Vendor } from '../model/project.ts'
import type {
  CutterSource,
  MachineSource,
  PersonSource,
  ToolSource,
  VendorSource,
} from '../source/generated/project-types.ts'
import { quantityOfKey } from '../source/quantity-of-key.ts'
import { entries, field, type Spot } from '../source/spot.ts'
import type { Context } from './context.ts'
import { dayAt, dayPatternAt, hoursAt, timeOfDayAt } from './hours.ts'
import { nameAt } from './names.ts'
import { numbersAt } from './numbers-at.ts'
import { knownCurrency, offersAt, worthAt } from './offers.ts'
import {
  certain,
  hourlyRate,
  listed,
  minutesAt,
  moneyIn,
  quantityAt,
  ratioAt,
  sizeAt,
  threePointAt,
  words,
} from './reading.ts'

const defaultCutoff = 12 * 60
const defaultPost = 18 * 60
const tenMinutes = certain(600, 'min', '10 min')

function saysNoHours(spot: Spot<PersonSource>): boolean {
  const given = [field(spot, 'hours'), field(spot, 'extra')].flatMap((one) => (one ? entries(one) : []))
  return given.every(([, value]) => listed(value).every((one) => one.text.trim() === ''))
}

/** A person with hours and rate. */
export function personAt(context: Context, id: string, spot: Spot<PersonSource>): Person {
  const hours = hoursAt(context, field(spot, 'hours'), null, field(spot, 'extra'))
  const off = field(spot, 'off')
  const withOff = hoursAt(context, null, off, null)
  // Hours that cannot be read have been reported as such.
  if (saysNoHours(spot)) context.report(cal.nobodyHasHours, spot.keyAt, { person: id })
  return {
    id,
    at: spot.keyAt,
    hours: hours ? { ...hours, off: withOff?.off ?? [] } : null,
    rate: hourlyRate(context, 'rate', field(spot, 'rate')),
    setUp: minutesAt(context, 'setup', field(spot, 'setup')) ?? 0,
    cleanUp: minutesAt(context, 'clean-up', field(spot, 'clean-up')) ?? 0,
  }
}

/** Whether every user named exists; a shop file may name people of other projects, so there nothing is said. */
function usersKnown(context: Context, spot: Spot<string | string[]> | null): boolean {
  if (!spot || spot.file !== context.file) return true
  return listed(spot)
    .map((one) => nameAt(context.names, context.report, one, ['person']))
    .every((name) => name !== null)
}

const machineKeys = new Set(['rate', 'deposits'])

/** A machine with hours, rate and who may use it. */
export function machineAt(context: Context, id: string, spot: Spot<MachineSource>): Machine {
  const users = context.users.get(id) ?? []
  const known = usersKnown(context, field(spot, 'users'))
  if (known && users.length === 0 && context.people.length > 0)
    context.report(cal.machineWithoutUser, (field(spot, 'users') ?? spot).at, { machine: id })
  const travel = sizeAt(context, 'travel', field(spot, 'travel'), 3)
  const bed = sizeAt(context, 'bed', field(spot, 'bed'), 3)
  const spindleSpot = field(spot, 'spindle')
  const spindle = spindleSpot
    ? numbersAt(context, '#/$defs/machine/properties/spindle', spindleSpot)
    : new Map<string, Quantity>()
  const [slowest, fastest] = [spindle.get('slowest'), spindle.get('fastest')]
  if (slowest && fastest && slowest.value.gt(fastest.value))
    context.report(prcCutting.spindleCrossed, spindleSpot!.at, {
      machine: id,
      slowest: slowest.text,
      fastest: fastest.text,
    })
  return {
    id,
    at: spot.keyAt,
    hours: hoursAt(context, field(spot, 'hours'), field(spot, 'off'), field(spot, 'extra')),
    rate: hourlyRate(context, 'rate', field(spot, 'rate')),
    capacity: field(spot, 'capacity')?.value ?? 1,
    users,
    travel: travel && [travel[0]!, travel[1]!, travel[2]!],
    numbers: numbersAt(context, '#/$defs/machine', spot, machineKeys),
    spindle,
    prints: field(spot, 'prints')?.value ?? null,
    deposits: quantityAt(context, 'deposits', field(spot, 'deposits'), 'volume per time', 'above 0'),
    bed: bed && [bed[0]!, bed[1]!, bed[2]!],
    bottomLayers: field(spot, 'bottom layers')?.value ?? null,
    note: words(field(spot, 'note')),
  }
}

/** A tool of which there are only so many. */
export function toolAt(context: Context, id: string, spot: Spot<ToolSource>): Tool {
  return {
    id,
    at: spot.keyAt,
    qty: field(spot, 'qty')?.value ?? 1,
    from: dayAt(context, 'from', field(spot, 'from')),
    until: dayAt(context, 'until', field(spot, 'until')),
    numbers: numbersAt(context, '#/$defs/tool', spot),
  }
}

const cutterKeys = new Set(['life', 'worth', 'have', 'offers'])

/** A cutter on the bench, its further facts as typed. */
export function cutterAt(context: Context, id: string, spot: Spot<CutterSource>): Cutter {
  const facts = entries(spot)
    .filter(([key]) => !cutterKeys.has(key))
    .map(([key, value]) => [key, words(value) ?? ''] as const)
  const numbers = numbersAt(context, '#/$defs/cutter', spot, cutterKeys)
  const figure = (key: string): boolean => quantityOfKey('#/$defs/cutter', key).length > 0
  if (facts.some(([key]) => figure(key) && !numbers.has(key))) context.faulted.add(id)
  return {
    id,
    at: spot.keyAt,
    have: field(spot, 'have')?.value ?? 1,
    life: threePointAt(context, 'life', field(spot, 'life'), 'time', 'above 0'),
    worth: worthAt(context, field(spot, 'worth')),
    offers: offersAt(context, id, field(spot, 'offers')),
    facts: new Map(facts),
    numbers,
  }
}

/** A vendor with its days, post and charges. */
export function vendorAt(context: Context, id: string, spot: Spot<VendorSource>): Vendor {
  const currencySpot = field(spot, 'currency')
  if (currencySpot) knownCurrency(context, currencySpot.text, currencySpot.at)
  const currency = context.vendorCurrency.get(id) ?? context.currency
  const carrier = field(spot, 'carrier')
  const money = (key: 'freight' | 'free over' | 'minimum order' | 'clearance') =>
    moneyIn(context, key, field(spot, key), currency)
  return {
    id,
    at: spot.keyAt,
    days: dayPatternAt(context, field(spot, 'days'), field(spot, 'off')),
    cutoff: timeOfDayAt(context, 'cutoff', field(spot, 'cutoff'), defaultCutoff),
    post: timeOfDayAt(context, 'post', field(spot, 'post'), defaultPost),
    transit:
      threePointAt(context, 'transit', field(spot, 'transit'), 'working days') ?? certain(0, 'wd', '0 wd'),
    carrier: carrier
      ? dayPatternAt(context, field(carrier, 'days'), field(carrier, 'off'))
      : dayPatternAt(context, null, null),
    currency,
    freight: money('freight'),
    freeOver: money('free over'),
    minimumOrder: money('minimum order'),
    clearance: money('clearance'),
    duty: ratioAt(context, 'duty', field(spot, 'duty')) ?? new Fraction(0),
    tax: ratioAt(context, 'tax', field(spot, 'tax')) ?? new Fraction(0),
    order: threePointAt(context, 'order', field(spot, 'order'), 'time') ?? tenMinutes,
    receive: threePointAt(context, 'receive', field(spot, 'receive'), 'time') ?? tenMinutes,
    url: words(field(spot, 'url')),
  }
}
