import { describe, expect, it } from 'vitest'
import { check, takeApart } from '../../../src/compile.ts'
import { directions } from '../../../src/geometry/relations/directions.ts'
import { stopWidth } from '../../../src/geometry/relations/relate-solids.ts'
import type { Project } from '../../../src/model/project.ts'
import { layOutBodies } from '../../../src/planning/from-meshes/lay-out-bodies.ts'
import { studyMeshes } from '../../../src/planning/from-meshes/study-meshes.ts'
import type { ReportRepair } from '../../../src/report/report-repair.ts'
import { binaryStl } from '../../unit/geometry/solids.ts'
import { device, people } from '../../unit/resolve/resolve-text.ts'
import { memoryDisk } from '../../unit/source/memory-disk.ts'
import { bearingDevice } from './bearing-device.ts'
import { chopperText, withChopper } from './chopper-files.ts'
import { block, cornersOf, kernel, type Manifold, rod } from './manifold-solids.ts'
import { stoppedByBooleans } from './stopped-by-booleans.ts'

/** Bodies by name; what stands before a figure is the part: `lower screw 2`. */
type Bodies = ReadonlyMap<string, Manifold>

const partOf = (name: string): string => name.replace(/ \d+$/, '')

function filesOf(bodies: Bodies, steps: string): Readonly<Record<string, string | Uint8Array>> {
  const parts = [...new Set([...bodies.keys()].map(partOf))]
  const stl = (part: string): Uint8Array => {
    const shells = [...bodies].flatMap(([name, body]) => (partOf(name) === part ? [...cornersOf(body)] : []))
    return binaryStl({ corners: Float64Array.from(shells) })
  }
  const listed = parts.map(
    (part) => `  ${part}: {kind: bought, have: 9, worth: 1, model: ${part}.stl, place: assembled}\n`,
  )
  return {
    '/b/project.yaml': `${device}${people}parts:\n${listed.join('')}assembly:\n  steps:\n${steps}`,
    ...Object.fromEntries(parts.map((part) => [`/b/${part}.stl`, stl(part)])),
  }
}

function apart(files: ReturnType<typeof filesOf>, part: string): readonly string[] {
  const { answer, diagnostics } = takeApart('project.yaml', part, {
    folder: '/b',
    root: '.',
    read: memoryDisk(files),
  })
  if (!answer || 'unknown' in answer) throw new Error(JSON.stringify(answer ?? diagnostics))
  const [way] = answer.ways
  expect(way!.legs.every(({ proved }) => proved)).toBe(true)
  return way!.legs.flatMap(({ steps }) => steps.map(({ step }) => step))
}

/** Screws first and one by one, then the rest of the step: each with a straight way past all that is still there. */
function stuckIn(undo: readonly string[], bodies: Bodies, brings: ReadonlyMap<string, readonly string[]>) {
  const present = new Set(bodies.keys())
  return undo.flatMap((step) => {
    const own = [...bodies.keys()].filter((name) => brings.get(step)!.includes(partOf(name)))
    const inTurn = own.sort((a, b) => Number(b.includes('screw')) - Number(a.includes('screw')))
    return inTurn.filter((name) => {
      present.delete(name)
      const others = [...present].map((other) => bodies.get(other)!)
      return !directions.some((way) =>
        others.every((other) => !stoppedByBooleans(bodies.get(name)!, other, way)),
      )
    })
  })
}

describe('a pot with a core and a screwed cap', () => {
  const pot = block([20, 20, 20], [-10, -10, 0]).subtract(block([14, 14, 20], [-7, -7, 4]))
  const bodies = new Map([
    ['pot', pot],
    ['core', rod(5, 12, [0, 0, 4])],
    ['cap', block([20, 20, 4], [-10, -10, 20])],
  ])
  const steps =
    '    - {name: screw cap, put: cap, on: pot, by: thread, time: 5 min}\n    - {name: fit core, put: core, in: pot, by: seat, time: 5 min}\n'

  it('gives up the core only once the cap is off', () => {
    expect(apart(filesOf(bodies, steps), 'core')).toEqual(['screw cap', 'fit core'])
    expect(apart(filesOf(bodies, steps), 'cap')).toEqual(['screw cap'])
  })

  it('warns of a core that wears where the cap is glued on', () => {
    const glued = filesOf(bodies, steps.replace('by: thread', 'by: glue, cure: 1 h'))
    const text = String(glued['/b/project.yaml']).replace('core: {', 'core: {wears: yes, ')
    const read = memoryDisk({ ...glued, '/b/project.yaml': text })
    const { diagnostics } = check('project.yaml', { folder: '/b', root: '.', read })
    expect(diagnostics.map(({ code }) => code).filter((code) => code.startsWith('ASM'))).toEqual(['ASM16'])
  })

  it('gives it up through its floor where that is open', () => {
    const holed = kernel.Manifold.difference([pot, rod(6, 30, [0, 0, -5])])
    expect(apart(filesOf(new Map([...bodies, ['pot', holed]]), steps), 'core')).toEqual(['fit core'])
  })
})

describe('a bearing block of 23 parts, every one of them taken out', () => {
  const bodies = bearingDevice({ facets: 24, over: 0 })
  const written: readonly (readonly [step: string, says: string, ...brings: string[]])[] = [
    ['close holder', 'put: cap, on: holder, by: thread', 'cap'],
    ['fit core', 'put: core, in: cup, by: seat', 'core'],
    ['press cup', 'put: cup, in: holder, by: press, light: yes', 'cup'],
    ['mount holder', 'put: holder, on: block, by: seat', 'holder'],
    ['press dowels', 'put: dowel x2, in: block, by: press, light: yes', 'dowel'],
    ['fit ring', 'put: ring, on: shaft, by: snap', 'ring'],
    ['fit pulley', 'put: pulley, on: shaft, by: seat', 'pulley'],
    ['fit key', 'put: key, in: shaft, by: press, light: yes', 'key'],
    ['close top', 'put: upper lid, on: block, by: screw, with: upper screw x4', 'upper screw', 'upper lid'],
    [
      'close bottom',
      'put: lower lid, on: block, by: screw, with: lower screw x4',
      'lower screw',
      'lower lid',
    ],
    ['press upper', 'put: upper bearing, in: block, by: press, light: yes', 'upper bearing'],
    ['press lower', 'put: lower bearing, in: block, by: press, light: yes', 'lower bearing'],
    ['fit shaft', 'put: shaft, in: block, by: seat', 'shaft'],
  ]
  const steps = written.map(([name, says]) => `    - {name: ${name}, ${says}, time: 5 min}\n`).join('')
  const files = filesOf(bodies, steps)
  const brings = new Map(written.map(([step, , ...parts]) => [step, parts]))

  it('frees the shaft upwards, since its collar stands on the upper bearing', () => {
    expect([...apart(files, 'shaft')].sort()).toEqual(
      ['close top', 'fit key', 'fit pulley', 'fit ring', 'fit shaft'].sort(),
    )
  })

  it('frees the core by the cap alone', () => {
    expect(apart(files, 'core')).toEqual(['close holder', 'fit core'])
  })

  // Source: stepped booleans of manifold-3d.
  it.each(written.map(([step, , ...parts]) => [parts.at(-1)!, step]))(
    'leaves %s and all before it a straight way out, by stepped booleans',
    (part, step) => {
      const undo = apart(files, part)
      expect(undo.at(-1)).toBe(step)
      // The slotted ring springs over the shaft: no straight way, so that typed facts alone hold for it.
      expect(stuckIn(undo, bodies, brings)).toEqual(undo.includes('fit ring') ? ['ring'] : [])
    },
  )
})

describe('the shipped chopper taken apart', () => {
  const { project } = withChopper(check, chopperText) as { project: Project }
  const { relations, plans } = studyMeshes(project)!
  const { there, moves } = plans.get('')!
  const parts = [...new Set(layOutBodies(project).bodies.map(({ part }) => part))]
  const answerFor = (part: string, text = chopperText): ReportRepair => {
    const { answer } = withChopper(
      ((file: string, options: object) => takeApart(file, part, options)) as unknown as typeof check,
      text,
    ) as unknown as { answer: ReportRepair }
    return answer
  }
  const onTheDevice = ({ ways }: ReportRepair) =>
    ways.map(({ legs }) => legs.filter(({ assembly }) => assembly === null).flatMap(({ steps }) => steps))

  /** By the geometry: what was undone in this order finds a way past what is still there and lies not under its seat. */
  function stuckOf(undo: readonly string[]): readonly string[] {
    const present = new Set([...there, ...moves.flatMap(({ bodies }) => bodies)])
    return undo.flatMap((step) =>
      (['fastener', 'put'] as const).flatMap((role) => {
        const own = moves.filter((move) => move.step === step && move.role === role)
        for (const body of own.flatMap(({ bodies }) => bodies)) present.delete(body)
        const stuck = own.filter(
          ({ bodies }) =>
            !directions.some((way) =>
              bodies.every((one) =>
                [...present].every((other) => stopWidth(relations, one, other, way) === 0),
              ),
            ),
        )
        return stuck.map(({ part }) => `${part} of ${step}`)
      }),
    )
  }

  it('gives up every part that has a mesh with a straight way past the rest', { timeout: 120_000 }, () => {
    const undone = parts.flatMap((part) => onTheDevice(answerFor(part)))
    expect(undone.length).toBeGreaterThan(25)
    expect(undone.flatMap((steps) => stuckOf(steps.map(({ step }) => step)))).toEqual([])
  })

  it('needs coupling and motor off before the rear bearing, also where no word of order says so', () => {
    const silent = chopperText.replace(/^ {6}after: \[fit (?:rotor|coupling|washer|rear bearing)\].*\n/gm, '')
    const steps = onTheDevice(answerFor('bearing', silent))[1]!
    const off = steps.map(({ step }) => step)
    expect(off).toContain('fit coupling')
    expect(off).toContain('fit motor')
    expect(off.at(-1)).toBe('fit rear bearing')
    expect(steps.find(({ step }) => step === 'fit coupling')!.because).toMatch(/^stops what /)
  })
})
