import type { Project } from '../../model/project.ts'
import type { Purchase } from '../../model/purchase.ts'
import type { TaskNetwork } from '../../model/tasks.ts'

/** What the draws are made from. */
export interface DrawSource {
  readonly project: Project
  readonly purchase: Purchase
  readonly network: TaskNetwork
}
