import type { Cut, CuttingFault } from '../trade/cutting/types.ts'

/** A cut with the time in which a person sets the edge and measures before each pass; `null`: the usual time is taken. */
export function withSetting(
  cut: Cut | CuttingFault,
  statedSeconds: number | null,
  usualSeconds: number,
): Cut | CuttingFault {
  if ('fault' in cut) return cut
  const each = statedSeconds ?? usualSeconds
  const setting = cut.passes * each
  const { air } = cut.timeSeconds
  const taken = { what: 'setting before each pass', value: `${each} s`, source: 'common practice, no source' }
  return {
    ...cut,
    seconds: cut.seconds + setting,
    timeSeconds: { ...cut.timeSeconds, air: air + setting },
    worked: [...cut.worked, `setting and measuring: ${cut.passes} x ${each} s`],
    assumed: statedSeconds === null ? [...cut.assumed, taken] : cut.assumed,
  }
}
