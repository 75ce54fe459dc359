import { describe, expect, it } from 'vitest'
import { generateProject } from '../../.dev/generate-project.mjs'
import type { AssemblyPlan } from '../../src/model/assembly.ts'
import { assemblyPlans } from '../../src/model/assembly-plans.ts'
import type { PlanTask } from '../../src/model/tasks.ts'
import { buildReport } from '../../src/report/build-report.ts'
import { buildWorkbook } from '../../src/report/index.ts'
import { sayAction } from '../../src/report/say-step.ts'
import { projects, resultsOf } from './projects.ts'

const more = Array.from({ length: 12 }, (_, at) => generateProject({ tasks: 40 + 6 * at, seed: 3000 + at }))
const planned = [...projects, ...more].map((text) => resultsOf(text))

/** The actions of each checklist, as the sheet prints them. */
function printed(results: (typeof planned)[number]): ReadonlyMap<string, readonly string[]> {
  const facts = { results, findings: [], fettle: '0' }
  const { tables } = buildReport(facts, buildWorkbook(facts).sheets)
  return new Map(
    tables
      .filter(({ table }) => /^assembly\/.*\/steps$/.test(table))
      .map(({ table, rows }) => [
        table.slice('assembly/'.length, -'/steps'.length),
        rows.filter(([number]) => /^\d+$/.test(`${number ?? ''}`)).map(([, action]) => `${action}`),
      ]),
  )
}

/** Actions that only one step of the assembly does: others cannot be told apart by their words. */
const told = (of: AssemblyPlan): ReadonlySet<string> => {
  const all = of.steps.map(sayAction)
  return new Set(all.filter((action) => all.indexOf(action) === all.lastIndexOf(action)))
}

describe('the checklists of every plan', () => {
  it('list each step once, in the order in which the schedule comes to it', () => {
    let lists = 0
    for (const results of planned) {
      const { project, schedule, network } = results
      const sheets = printed(results)
      for (const of of assemblyPlans(project)) {
        const actions = sheets.get(of.of ?? project.device.name)
        if (!actions) continue
        lists++
        const starts = new Map(
          of.steps.map((step) => {
            const tasks = network.tasks.filter(
              ({ subject, kind }) =>
                subject.assembly === of.of && subject.step === step.id && kind !== 'cure',
            )
            return [sayAction(step), Math.min(...tasks.map(({ id }) => schedule.tasks.get(id)!.start))]
          }),
        )
        expect([...actions].sort()).toEqual(of.steps.map(sayAction).sort())
        const own = told(of)
        const times = actions.filter((action) => own.has(action)).map((action) => starts.get(action)!)
        expect(times).toEqual([...times].sort((a, b) => a - b))
      }
    }
    expect(lists).toBeGreaterThan(15)
  })

  it('keep, as the schedule does for every device, each wait that the order of assembly needs', () => {
    let waits = 0
    for (const results of planned) {
      const { project, schedule, network, orders } = results
      const sheets = printed(results)
      for (const of of assemblyPlans(project)) {
        const actions = sheets.get(of.of ?? project.device.name)
        if (!actions) continue
        const own = told(of)
        const say = (id: string) => sayAction(of.steps.find((step) => step.id === id)!)
        const tasks = (id: string) =>
          network.tasks
            .filter(({ subject }) => subject.assembly === of.of && subject.step === id)
            .map((task) => ({ ...task, ...schedule.tasks.get(task.id)! }))
        for (const { before, after } of orders.get(of.of ?? '')!.links) {
          if ([before, after].every((id) => own.has(say(id)))) {
            waits++
            expect(actions.indexOf(say(before))).toBeLessThan(actions.indexOf(say(after)))
          }
          for (const then of tasks(after)) {
            const piece = ({ subject }: Pick<PlanTask, 'subject'>) => subject.device ?? subject.lot
            const first = tasks(before).filter(
              (one) => piece(one) === piece(then) || tasks(before).length === 1,
            )
            for (const one of first) expect(one.finish).toBeLessThanOrEqual(then.start)
          }
        }
      }
    }
    expect(waits).toBeGreaterThan(100)
  })

  it('agree with the report of facts', () => {
    for (const results of planned) {
      const facts = { results, findings: [], fettle: '0' }
      const { assembly } = buildReport(facts, [])
      const sheets = printed(results)
      for (const { of, steps, feasibleOrders } of assembly) {
        const at = assemblyPlans(results.project).find((one) => one.of === of)!
        const actions = steps.map(({ step }) => sayAction(at.steps.find(({ id }) => id === step)!))
        const sheet = sheets.get(of ?? results.project.device.name)
        if (sheet) expect(sheet).toEqual(actions)
        expect(feasibleOrders === null || BigInt(feasibleOrders) > 0n).toBe(true)
      }
    }
  })
})
