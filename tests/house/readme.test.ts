import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { plan, planReport } from '../../src/compile.ts'
import { messageOf } from '../../src/diagnostics/catalogue.ts'
import { root } from './source-files.ts'

const text = readFileSync(join(root, 'README.md'), 'utf8')
const blocks = [...text.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, block]) => block ?? '')
const projects = blocks.filter((block) => /^device:/m.test(block))

describe('the README', () => {
  it('shows at least one whole project', () => {
    expect(projects.length).toBeGreaterThan(0)
  })

  it.each(projects.map((block) => [block.split('\n')[0] ?? '', block]))(
    'plans `%s` without a warning',
    (_, block) => {
      const planned = plan('-', { folder: root, stdin: Buffer.from(block) })
      expect(planned.diagnostics).toEqual([])
      expect(planned.results).not.toBe(null)
    },
  )

  it('shows sums that the program prints', () => {
    const told = planReport('projects/worked-numbers/worked-numbers.yaml', { folder: root, effort: 2 })
    const { making, assembly, chains } = told.report!
    const joins = assembly.flatMap(({ steps }) => steps).flatMap(({ join }) => join?.worked ?? [])
    const printed = new Set([
      ...making.flatMap(({ worked }) => worked),
      ...joins,
      ...chains.flatMap(({ worked }) => worked),
    ])
    const sums = [...text.matchAll(/^\| [^|]+ \| [^|]+ \| `([^`]+)` \|$/gm)].map(([, sum]) => sum ?? '')
    expect(sums.length).toBeGreaterThanOrEqual(21)
    expect(sums.filter((sum) => !printed.has(sum))).toEqual([])
  })

  it('names only commands, codes and files that are there', () => {
    const commands = [...text.matchAll(/\bfettle (new|check|plan|why|apart|explain)\b/g)].map(
      ([, name]) => name,
    )
    expect([...new Set(commands)].sort()).toEqual(['apart', 'check', 'explain', 'new', 'plan', 'why'])
    const codes = [...text.matchAll(/\b[A-Z]{3}\d\d\b/g)].map(([code]) => code)
    expect(codes.filter((code) => messageOf(code) === null)).toEqual([])
    for (const [, path] of text.matchAll(/`((?:schemas|projects)\/[\w./-]+)`/g))
      expect(existsSync(join(root, path ?? '')), path).toBe(true)
  })
})
