import { cal } from '../diagnostics/catalogue/cal.ts'
import type { NetworkCheck } from './check.ts'

/** CAL03, CAL04: runs and unbroken work longer than every window they could have; once for each place in the source. */
export const windows: NetworkCheck = ({ project, network, tooLong }, report) => {
  const tasks = new Map(network.tasks.map((task) => [task.id, task]))
  const said = new Set<string>()
  for (const { task, minutes, longest, whose, unattended } of tooLong) {
    const { at, title, machine, subject } = tasks.get(task)!
    const place = `${at.file}:${at.line}:${at.column}`
    // Where hours never meet at all, that is what is said.
    if (said.has(place) || (longest === 0 && machine !== null && !unattended)) continue
    said.add(place)
    const print = subject.plate !== null || project.parts.get(subject.part ?? '')?.way.kind === 'printed'
    const what = `\`${title}\``
    if (unattended) report(cal.runTooLong, at, { what, minutes, machine: machine ?? whose, longest, print })
    else report(cal.windowTooShort, at, { what, minutes, longest, whose: `\`${whose}\`` })
  }
}
