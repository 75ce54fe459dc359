import type { Report } from '../diagnostics/message.ts'
import type { AssemblyOrder } from '../model/assembly.ts'
import type { FromMeshes } from '../model/from-meshes.ts'
import type { Join } from '../model/joins.ts'
import type { Project } from '../model/project.ts'
import type { Purchase } from '../model/purchase.ts'
import type { WornOut } from '../model/repair.ts'
import type { Results } from '../model/results.ts'
import type { NoSchedule, TooLong } from '../model/schedule.ts'
import type { TaskNetwork } from '../model/tasks.ts'

/** Looks at the resolved project. */
export type ModelCheck = (project: Project, report: Report) => void

/** What is known once the work is laid out, before it is placed in time. */
export interface Laid {
  readonly project: Project
  readonly purchase: Purchase
  /** Orders by assembly; `''` is the device. */
  readonly orders: ReadonlyMap<string, AssemblyOrder>
  /** What meshes in assembled place say; `null`: fewer than two stand there. */
  readonly meshes: FromMeshes | null
  readonly network: TaskNetwork
  readonly tooLong: readonly TooLong[]
  /** What meets in assembly steps. */
  readonly joins: readonly Join[]
  /** Wearing parts that cannot be renewed without harm. */
  readonly worn: readonly WornOut[]
}
/** Looks at the network. */
export type NetworkCheck = (laid: Laid, report: Report) => void

/** Says why there is no schedule. */
export type UnplacedCheck = (laid: Laid, none: NoSchedule, report: Report) => void

/** Looks at a finished plan. */
export type ResultCheck = (results: Results, report: Report) => void
