import { describe, expect, it } from 'vitest'
import { formatDay } from '../../src/base/clock.ts'
import { assemblyPlans } from '../../src/model/assembly-plans.ts'
import { whyDisordered } from '../../src/verify/why-disordered.ts'
import { whyInfeasible } from '../../src/verify/why-infeasible.ts'
import { whyUnbalanced } from '../../src/verify/why-unbalanced.ts'
import { projects, resultsOf } from './projects.ts'

const planned = projects.map((text) => resultsOf(text))

describe('every plan of a random project', () => {
  it.each([
    [1, 1],
    [4, 1],
    [4, 7],
    [30, 3],
  ])('keeps the rules of time, order and money at effort %i and seed %i', (effort, seed) => {
    for (const text of projects.slice(0, 6)) {
      const { project, network, schedule, purchase, money, orders } = resultsOf(text, { effort, seed })
      expect(whyInfeasible(project, network, schedule)).toBeNull()
      expect(whyUnbalanced(project, purchase, money)).toBeNull()
      for (const one of assemblyPlans(project))
        expect(whyDisordered(one, orders.get(one.of ?? '')?.order ?? [])).toBeNull()
    }
  })

  it('starts no task after its latest start, and has no float below 0 nor free float above it', () => {
    for (const { schedule } of planned) {
      for (const task of schedule.tasks.values()) {
        expect(task.latestStart, task.id).toBeGreaterThanOrEqual(task.start)
        expect(task.latestFinish, task.id).toBeLessThanOrEqual(schedule.finish)
        expect(task.float, task.id).toBeGreaterThanOrEqual(0)
        expect(task.freeFloat, task.id).toBeGreaterThanOrEqual(0)
        expect(task.freeFloat, task.id).toBeLessThanOrEqual(task.float)
        expect(task.earlyStart, task.id).toBeLessThanOrEqual(task.start)
      }
      expect(schedule.lowerBound).toBeLessThanOrEqual(schedule.finish)
    }
  })

  it('has critical tasks, and every critical chain ends at the end of the plain path', () => {
    for (const { schedule } of planned) {
      const tasks = [...schedule.tasks.values()]
      const critical = new Set(tasks.filter((task) => task.critical).map(({ id }) => id))
      const end = Math.max(...tasks.map(({ earlyFinish }) => earlyFinish))
      expect(critical.size).toBeGreaterThan(0)
      expect(schedule.criticalChains.length).toBeGreaterThan(0)
      for (const chain of schedule.criticalChains) {
        expect(chain.every((id) => critical.has(id))).toBe(true)
        expect(schedule.tasks.get(chain.at(-1)!)!.earlyFinish).toBe(end)
      }
    }
  })

  it('is driven by a chain from the project start to the finish, each element waiting for the one before', () => {
    for (const { project, schedule } of planned) {
      const chain = schedule.drivingChain
      expect(chain.at(-1)!.finish).toBe(schedule.finish)
      const [head] = chain
      expect(head!.because[0]!.kind, `${formatDay(project.device.start)} ${head!.task}`).toBe('start')
      for (const [at, step] of chain.entries()) {
        const [cause] = step.because
        const from = cause && 'from' in cause ? cause.from : null
        expect(from, step.task).toBe(at === 0 ? null : chain[at - 1]!.task)
      }
    }
  })

  it('tells the whole wait of each element of the chain: reasons follow each other up to its start', () => {
    for (const { schedule } of planned) {
      for (const { task, start, because } of schedule.drivingChain) {
        const ends = because.map(({ until }) => until)
        expect(ends, task).toEqual([...ends].sort((a, b) => a - b))
        expect(ends.at(-1), task).toBe(start)
        expect(because.map(({ kind }) => kind)).not.toContain('idle')
      }
    }
  })

  it('has sessions that hold exactly the pieces of hands work, and ready times no later than the finish', () => {
    for (const { network, schedule, sessions, readyAt } of planned) {
      const inSessions = sessions.flatMap(({ work }) => work).reduce((sum, w) => sum + w.close - w.open, 0)
      const hands = network.tasks.reduce((sum, { handsMinutes }) => sum + handsMinutes, 0)
      expect(inSessions).toBe(hands)
      for (const at of readyAt.values()) expect(at).toBeLessThanOrEqual(schedule.finish)
    }
  })
})
