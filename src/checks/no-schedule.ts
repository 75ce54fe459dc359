import { dep } from '../diagnostics/catalogue/dep.ts'
import type { UnplacedCheck } from './check.ts'

const says = {
  'beyond horizon': 'the work does not end within twenty years',
  'no room': 'there is no room for it in the hours given',
  'longest wait missed': 'a longest wait cannot be kept',
  ring: 'its parts wait for each other',
  capacity: 'it needs more of something than there is',
  'no window': 'no window is long enough for it in one go',
} as const

/** DEP05: no schedule. Says "none found" where that is all that is known. */
export const noSchedule: UnplacedCheck = ({ project, network }, none, report) => {
  const tasks = new Map(network.tasks.map((task) => [task.id, task]))
  const first = tasks.get(none.tasks[0] ?? '')
  report(dep.noSchedule, first?.at ?? project.device.at, {
    why: says[none.why],
    tasks: none.tasks.map((id) => tasks.get(id)?.title ?? id),
    certain: none.kind === 'impossible',
  })
}
