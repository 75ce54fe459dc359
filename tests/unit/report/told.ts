/** Results of built projects as the sheets take them; without times where a test needs none. */
import { instantOf } from '../../../src/base/clock.ts'
import type { Project } from '../../../src/model/project.ts'
import type { PlanTask } from '../../../src/model/tasks.ts'
import { planPurchase } from '../../../src/planning/buying/index.ts'
import { cautionsOf } from '../../../src/planning/cautions/cautions-of.ts'
import { computeMoney } from '../../../src/planning/cost/index.ts'
import type { Told } from '../../../src/report/sheets.ts'
import { tasksOnly } from '../planning/project-builder.ts'

/** Purchase and money of a project, with an empty schedule. */
export function toldOf(project: Project, tasks: readonly PlanTask[] = []): Told {
  const network = tasksOnly(tasks)
  const purchase = planPurchase(project)
  const finish = instantOf(project.device.start, 0)
  return {
    findings: [],
    fettle: '0',
    results: {
      project,
      purchase,
      orders: new Map(),
      meshes: null,
      network,
      schedule: {
        finish,
        tasks: new Map(),
        drivingChain: [],
        criticalChains: [],
        criticalChainCount: 0n,
        lowerBound: finish,
        schedulesTried: 0,
      },
      money: computeMoney(project, purchase, network),
      risk: null,
      sessions: [],
      readyAt: new Map(),
      inspection: [],
      joins: [],
      trialFits: [],
      chains: [],
      waysIn: new Map(),
      cautions: cautionsOf(project),
    },
  }
}
