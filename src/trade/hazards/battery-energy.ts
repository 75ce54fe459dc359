import { allWithin } from './all-within.ts'

/** Cells of one kind, so many in series and so many such rows side by side. */
export interface BatteryPack {
  readonly cellVolts: number
  readonly cellAmpHours: number
  readonly inSeries: number
  readonly inParallel: number
}

/** Voltage, charge and energy of a pack. */
export interface BatteryEnergy {
  readonly volts: number
  readonly ampHours: number
  readonly wattHours: number
  /** More than a lithium-ion battery may have to travel as an ordinary parcel. */
  readonly aboveTransportStep: boolean
}

/** Watt hours of one lithium-ion battery. Source: UN transport rules, special provision 188, from memory. */
export const transportStepWattHours = 100

/** Energy of a battery pack: V Ah; `null` out of domain. Source: definition. */
export function batteryEnergy(pack: BatteryPack): BatteryEnergy | null {
  const { cellVolts, cellAmpHours, inSeries, inParallel } = pack
  if (!allWithin([cellVolts, cellAmpHours], 1e-6, 1e5)) return null
  if (!allWithin([inSeries, inParallel], 1, 1e5)) return null
  if (!Number.isInteger(inSeries) || !Number.isInteger(inParallel)) return null
  const volts = cellVolts * inSeries
  const ampHours = cellAmpHours * inParallel
  const wattHours = volts * ampHours
  return { volts, ampHours, wattHours, aboveTransportStep: wattHours > transportStepWattHours }
}
