import { cal } from '../diagnostics/catalogue/cal.ts'
import type { NetworkCheck } from './check.ts'

/** CAL03, CAL04: runs and unbroken work longer than every window they could have; once for each place in the source. */
export const windows: NetworkCheck = ({ network, tooLong }, report) => {
  const tasks = new Map(network.tasks.map((task) => [task.id, task]))
  const said = new Set<string>()
  for (const { task, minutes, longest, whose, unattended } of tooLong) {
    const { at, title, machine } = tasks.get(task)!
    const place = `${at.file}:${at.line}:${at.column}`
    if (said.has(place)) continue
    said.add(place)
    const what = `\`${title}\``
    if (unattended) report(cal.runTooLong, at, { what, minutes, machine: machine ?? whose, longest })
    else report(cal.windowTooShort, at, { what, minutes, longest, whose: `\`${whose}\`` })
  }
}
