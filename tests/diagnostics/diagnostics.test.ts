import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { check, plan } from '../../src/compile.ts'
import { messages } from '../../src/diagnostics/catalogue.ts'
import { renderGnu } from '../../src/diagnostics/render-gnu.ts'

const here = import.meta.dirname
const cases = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name)
  .sort()

/** What the comments `# expect CODE CODE` and the lines of `expect.txt` ask for, as `file:line code`. */
function wanted(folder: string): string[] {
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'))
  const fromComments = files.flatMap((file) =>
    readFileSync(join(folder, file), 'utf8')
      .split(/\r\n|\n|\r/)
      .flatMap((line, at) =>
        (/# expect ((?:[A-Z]{3}\d\d ?)+)/.exec(line)?.[1] ?? '')
          .split(' ')
          .filter((code) => code !== '')
          .map((code) => `${file}:${at + 1} ${code}`),
      ),
  )
  const list = join(folder, 'expect.txt')
  const lines = existsSync(list) ? readFileSync(list, 'utf8').trim().split('\n') : []
  return [
    ...fromComments,
    ...lines.map((line) => (line.includes(':') ? line : `project.yaml:${line}`)),
  ].sort()
}

/** A case with the line `# plan` is of something that shows only in a finished plan. */
function runOf(folder: string): typeof check {
  return /^# plan$/m.test(readFileSync(join(folder, 'project.yaml'), 'utf8')) ? plan : check
}

/** Codes that a folder of plain files cannot earn, or only with a very large one; unit tests of reading earn them. */
const shownElsewhere = ['SRC03', 'SRC04', 'SRC05', 'SRC30', 'SRC35', 'SHP20']

it.each([
  'src',
  'shp',
  'ref',
  'qty',
  'cal',
  'buy',
  'dep',
  'prc',
  'lim',
  'fit',
  'asmDoubts',
  'chn',
  'prcSetup',
  'srcAttached',
  'prcModel',
  'prcPrint',
  'prcBoard',
  'msh',
] as const)('every code of the family %s has a case', (family) => {
  const codes = Object.values<{ code: string }>(messages[family]).map(({ code }) => code)
  const shown = cases.map((name) => name.slice(0, 5).toUpperCase())
  expect(codes.filter((code) => !shown.includes(code) && !shownElsewhere.includes(code))).toEqual([])
})

describe('every case of a message', () => {
  for (const name of cases) {
    const folder = join(here, name)
    it(`${name} gives exactly the messages it asks for, in the words of expected.txt`, () => {
      const { diagnostics, texts } = runOf(folder)('project.yaml', { folder, root: '.', effort: 1 })
      const given = diagnostics.map(({ at, code }) => `${at.file}:${at.line} ${code}`).sort()
      expect(given).toEqual(wanted(folder))
      expect(given.some((each) => each.endsWith(name.slice(0, 5).toUpperCase()))).toBe(true)
      const printed = renderGnu(diagnostics, { colour: false, texts })
      const accepted = join(folder, 'expected.txt')
      if (process.env.FETTLE_ACCEPT === '1') writeFileSync(accepted, printed)
      expect(printed).toBe(readFileSync(accepted, 'utf8'))
    })
  }
})
