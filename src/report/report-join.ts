import type { Join, JoinSide } from '../model/joins.ts'
import type { ReportJoin } from './report-model.ts'

const rounded = (value: number): number => Number(value.toPrecision(6)) + 0
const both = (range: readonly number[]): readonly number[] => range.map(rounded)
const sideOf = ({ part, feature, text }: JoinSide): ReportJoin['first'] => ({
  of: `${part}.${feature}`,
  text,
})

/** What meets in one step of an assembly; `null`: nothing is known. */
export function reportJoin(joins: readonly Join[], assembly: string | null, step: string): ReportJoin | null {
  const join = joins.find((one) => one.assembly === assembly && one.step === step)
  if (!join) return null
  const { sort, first, second, written, fit, press, says, worked, assumed } = join
  return {
    ...{ sort, first: sideOf(first), second: sideOf(second), written, says, worked, assumed },
    fit: fit && {
      kind: fit.kind,
      largestClearance: fit.largestClearanceUm,
      smallestClearance: fit.smallestClearanceUm,
    },
    press: press && {
      ...{ force: both(press.forceN), pressure: both(press.pressureMpa) },
      ...{ torque: both(press.torqueNm), hoop: both(press.hoopMpa) },
    },
  }
}
