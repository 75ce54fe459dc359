import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Built, buildFettle, chopper, root } from './run-fettle.ts'

let built: Built
beforeAll(async () => {
  built = await buildFettle('report')
})
afterAll(() => built.done())

const schema = JSON.parse(readFileSync(join(root, 'schemas/report.schema.json'), 'utf8')) as object
const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true })
ajv.addVocabulary(['x-unit'])
const valid = ajv.compile(schema)

describe('plan --json', () => {
  it.each(['chopper', 'minimal', 'board', 'shop'])('of %s keeps the published shape', (name) => {
    const file = name === 'chopper' ? chopper : join(root, `templates/${name}/project.yaml`)
    const given = built.run(['plan', file, '--json'])
    expect(given.exit).toBe(0)
    const report = JSON.parse(given.out) as Record<string, unknown>
    valid(report)
    expect(
      (valid.errors ?? []).slice(0, 10).map(({ instancePath, message }) => `${instancePath} ${message}`),
    ).toEqual([])
    expect((report.parts as unknown[]).length).toBeGreaterThan(0)
    expect((report.tasks as unknown[]).length).toBeGreaterThan(0)
  })

  it('is refused by the shape once a value is missing or has another type, so that the check can fail', () => {
    const report = JSON.parse(built.run(['plan', chopper, '--json']).out) as Record<string, unknown>
    expect(valid({ ...report, finish: undefined })).toBe(false)
    expect(valid({ ...report, finish: 7 })).toBe(false)
    expect(valid({ ...report, more: true })).toBe(false)
  })
})
