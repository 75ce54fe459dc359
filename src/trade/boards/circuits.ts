import { firstOutside, type OutOfDomain } from '../printing/domain.ts'
import { figure } from '../printing/figure.ts'

/** Numbers of a small circuit with the sum. */
export type CircuitAnswer<T> = (T & { readonly worked: readonly string[] }) | OutOfDomain

/**
 * Corner frequency, time constant and rise from 10 to 90 % of a resistor and a capacitor. Source: 1/(2 pi R C)
 * (textbook).
 */
export function rcCircuit(rc: {
  readonly ohm: number
  readonly farad: number
}): CircuitAnswer<{ readonly cornerHz: number; readonly timeConstantS: number; readonly riseS: number }> {
  const outside = firstOutside(rc, { ohm: 'above 0', farad: 'above 0' })
  if (outside) return outside
  const timeConstantS = rc.ohm * rc.farad
  const cornerHz = 1 / (2 * Math.PI * timeConstantS)
  const product = `${figure(rc.ohm)} ohm x ${figure(rc.farad)} F`
  return {
    cornerHz,
    timeConstantS,
    riseS: 2.2 * timeConstantS,
    worked: [
      `corner = 1 / (2 pi x ${product}) = ${figure(cornerHz)} Hz`,
      `time constant = ${product} = ${figure(timeConstantS)} s; rise 10 to 90 % = 2.2 x that`,
    ],
  }
}

/** Voltage between two resistors, the lower to ground, unloaded. Source: V R2 / (R1 + R2) (textbook). */
export function divider(of: {
  readonly volt: number
  readonly upperOhm: number
  readonly lowerOhm: number
}): CircuitAnswer<{ readonly outVolt: number; readonly sourceOhm: number; readonly watt: number }> {
  const outside = firstOutside(of, { volt: '0 or more', upperOhm: 'above 0', lowerOhm: 'above 0' })
  if (outside) return outside
  const sum = of.upperOhm + of.lowerOhm
  const outVolt = (of.volt * of.lowerOhm) / sum
  const ratio = `${figure(of.lowerOhm)} / (${figure(of.upperOhm)} + ${figure(of.lowerOhm)})`
  return {
    outVolt,
    sourceOhm: (of.upperOhm * of.lowerOhm) / sum,
    watt: of.volt ** 2 / sum,
    worked: [`out = ${figure(of.volt)} V x ${ratio} = ${figure(outVolt)} V`],
  }
}

/** Series resistor of a light-emitting diode and the power in it. Source: (V - V_f) / I (textbook). */
export function ledResistor(led: {
  readonly supplyVolt: number
  readonly forwardVolt: number
  readonly ampere: number
}): CircuitAnswer<{ readonly ohm: number; readonly watt: number }> {
  const outside = firstOutside(led, { supplyVolt: 'above 0', forwardVolt: '0 or more', ampere: 'above 0' })
  if (outside) return outside
  const { supplyVolt, forwardVolt, ampere } = led
  if (forwardVolt >= supplyVolt)
    return { fault: 'out of domain', field: 'forwardVolt', value: forwardVolt, must: `below ${supplyVolt}` }
  const ohm = (supplyVolt - forwardVolt) / ampere
  const line = `R = (${figure(supplyVolt)} - ${figure(forwardVolt)}) V / ${figure(ampere)} A = ${figure(ohm)} ohm`
  return { ohm, watt: (supplyVolt - forwardVolt) * ampere, worked: [line] }
}

/** Thresholds of a comparator with hysteresis. */
export interface Thresholds {
  readonly upperVolt: number
  readonly lowerVolt: number
  readonly hysteresisVolt: number
}

const mostVolt = 1e6

/**
 * Thresholds of an inverting comparator: R1 from the reference to the + input, R2 from the output to it.
 * Source: (V_ref R2 + V_out R1) / (R1 + R2), a public worked example. Voltages may be negative.
 */
export function invertingSchmitt(of: {
  readonly referenceVolt: number
  readonly highVolt: number
  readonly lowVolt: number
  readonly r1Ohm: number
  readonly r2Ohm: number
}): CircuitAnswer<Thresholds> {
  const outside = firstOutside(of, { r1Ohm: 'above 0', r2Ohm: 'above 0' })
  if (outside) return outside
  for (const field of ['referenceVolt', 'highVolt', 'lowVolt'] as const)
    if (!(Math.abs(of[field]) <= mostVolt))
      return { fault: 'out of domain', field, value: of[field], must: 'within a million volt' }
  if (of.lowVolt > of.highVolt)
    return { fault: 'out of domain', field: 'lowVolt', value: of.lowVolt, must: `at most ${of.highVolt}` }
  const at = (out: number) => (of.referenceVolt * of.r2Ohm + out * of.r1Ohm) / (of.r1Ohm + of.r2Ohm)
  const [upperVolt, lowerVolt] = [at(of.highVolt), at(of.lowVolt)]
  const say = (out: number, volt: number) =>
    `(${figure(of.referenceVolt)} x ${figure(of.r2Ohm)} + ${figure(out)} x ${figure(of.r1Ohm)}) / ` +
    `(${figure(of.r1Ohm)} + ${figure(of.r2Ohm)}) = ${figure(volt)} V`
  return {
    upperVolt,
    lowerVolt,
    hysteresisVolt: ((of.highVolt - of.lowVolt) * of.r1Ohm) / (of.r1Ohm + of.r2Ohm),
    worked: [`upper = ${say(of.highVolt, upperVolt)}`, `lower = ${say(of.lowVolt, lowerVolt)}`],
  }
}

/**
 * Thresholds of a comparator on one supply with three resistors at its + input: to supply, to ground, to the output.
 * Source: a maker's note on a comparator with hysteresis (2.7 and 2.3 V on 5 V); output at supply or ground.
 */
export function singleSupplySchmitt(of: {
  readonly supplyVolt: number
  readonly toSupplyOhm: number
  readonly toGroundOhm: number
  readonly toOutputOhm: number
}): CircuitAnswer<Thresholds> {
  const outside = firstOutside(of, {
    supplyVolt: 'above 0',
    toSupplyOhm: 'above 0',
    toGroundOhm: 'above 0',
    toOutputOhm: 'above 0',
  })
  if (outside) return outside
  const { supplyVolt, toSupplyOhm: x, toGroundOhm: y, toOutputOhm: h } = of
  const beside = (a: number, b: number) => (a * b) / (a + b)
  const upperVolt = (supplyVolt * y) / (y + beside(x, h))
  const lowerVolt = (supplyVolt * beside(y, h)) / (x + beside(y, h))
  return {
    upperVolt,
    lowerVolt,
    hysteresisVolt: Math.max(0, upperVolt - lowerVolt),
    worked: [
      `upper = ${figure(supplyVolt)} x ${figure(y)} / (${figure(y)} + ${figure(x)} || ${figure(h)}) = ` +
        `${figure(upperVolt)} V`,
      `lower = ${figure(supplyVolt)} x ${figure(beside(y, h))} / (${figure(x)} + ${figure(y)} || ${figure(h)}) = ` +
        `${figure(lowerVolt)} V`,
    ],
  }
}

/**
 * Resistors of that comparator for wanted thresholds, from the one to the supply.
 * Source: R_h / R_x = V_lower / (V_upper - V_lower), R_y / R_x = V_lower / (V_cc - V_upper) (from memory, follows from
 * the two thresholds).
 */
export function designSchmitt(of: {
  readonly supplyVolt: number
  readonly upperVolt: number
  readonly lowerVolt: number
  readonly toSupplyOhm: number
}): CircuitAnswer<{ readonly toGroundOhm: number; readonly toOutputOhm: number }> {
  const outside = firstOutside(of, {
    supplyVolt: 'above 0',
    upperVolt: 'above 0',
    lowerVolt: 'above 0',
    toSupplyOhm: 'above 0',
  })
  if (outside) return outside
  const { supplyVolt, upperVolt, lowerVolt, toSupplyOhm } = of
  if (upperVolt >= supplyVolt)
    return { fault: 'out of domain', field: 'upperVolt', value: upperVolt, must: `below ${supplyVolt}` }
  if (lowerVolt >= upperVolt)
    return { fault: 'out of domain', field: 'lowerVolt', value: lowerVolt, must: `below ${upperVolt}` }
  const toOutputOhm = (toSupplyOhm * lowerVolt) / (upperVolt - lowerVolt)
  const toGroundOhm = (toSupplyOhm * lowerVolt) / (supplyVolt - upperVolt)
  const x = figure(toSupplyOhm)
  return {
    toGroundOhm,
    toOutputOhm,
    worked: [
      `to output = ${x} x ${figure(lowerVolt)} / (${figure(upperVolt)} - ${figure(lowerVolt)}) = ` +
        `${figure(toOutputOhm)} ohm`,
      `to ground = ${x} x ${figure(lowerVolt)} / (${figure(supplyVolt)} - ${figure(upperVolt)}) = ` +
        `${figure(toGroundOhm)} ohm`,
    ],
  }
}

/** A load on a battery: its current and the share of the time it runs. */
export interface BatteryLoad {
  readonly milliampere: number
  readonly share: number
}

/** Share of the charge that can be used where none is given. Common practice, no source. */
const usualShare = 0.8

/**
 * Hours a battery runs its loads. Source: usable charge / sum of current x share of time (textbook); usable share 0.8
 * where none is given (common practice, no source). Shares need not add up to one.
 */
export function batteryHours(
  battery: { readonly milliampereHours: number; readonly usable: number | null },
  loads: readonly BatteryLoad[],
): CircuitAnswer<{ readonly hours: number; readonly averageMilliampere: number }> {
  const outside =
    firstOutside(battery, { milliampereHours: 'above 0', usable: 'above 0, to 1' }) ??
    loads
      .map((load) => firstOutside(load, { milliampere: '0 or more', share: '0 to 1' }))
      .find((fault) => fault !== null)
  if (outside) return outside
  const usable = battery.usable ?? usualShare
  const averageMilliampere = loads.reduce((sum, { milliampere, share }) => sum + milliampere * share, 0)
  if (!(averageMilliampere >= 1e-18))
    return { fault: 'out of domain', field: 'loads', value: averageMilliampere, must: 'above 0 together' }
  const hours = (battery.milliampereHours * usable) / averageMilliampere
  const terms = loads.map(({ milliampere, share }) => `${figure(milliampere)} x ${figure(share)}`).join(' + ')
  const from = battery.usable === null ? ' (assumed, common practice, no source)' : ''
  return {
    hours,
    averageMilliampere,
    worked: [
      `average = ${terms} = ${figure(averageMilliampere)} mA`,
      `hours = ${figure(battery.milliampereHours)} mAh x ${figure(usable)}${from} / ${figure(averageMilliampere)} = ` +
        `${figure(hours)} h`,
    ],
  }
}
