import { basename } from 'node:path'
import { describe, expect, it } from 'vitest'
import { placesOf, type SourceFile, sourceFiles } from './source-files.ts'

const files = sourceFiles()

/** Files named after their subject: each holds a family of small exports with no main one among them. */
const namedAfterSubject: Readonly<Record<string, string>> = {
  'index.ts': 'lists of a folder or its front door',
  'types.ts': 'types of a folder',
}
/** Single exports that begin with a verb; the file is named after the subject. To be renamed or agreed by the lead. */
const verbFirst: readonly string[] = [
  'cli/commands/check.ts',
  'cli/commands/explain.ts',
  'cli/commands/why.ts',
  'cli/program.ts',
  'planning/assembly/constraints.ts',
  'planning/schedule/latest.ts',
  'planning/tasks/assemblies.ts',
  'planning/tasks/parts.ts',
  'planning/tasks/prints.ts',
  'planning/tasks/routes.ts',
  'planning/tasks/work.ts',
  'planning/timing/sessions.ts',
  'planning/timing/too-long.ts',
  'source/route-shape.ts',
  'source/syntax.ts',
  'source/yes-and-no.ts',
]
const isModelOrTable = ({ folder, path }: SourceFile): boolean =>
  folder === 'model' || folder === 'base' || folder === 'trade' || path.startsWith('diagnostics/catalogue')

const exporting =
  /^export (?:async )?(?:declare )?(?:abstract )?(const|function\*?|class|interface|type|enum|let|var) (\w+)/gm

interface Exported {
  readonly name: string
  readonly line: number
  readonly documented: boolean
}

function exportsOf({ text }: SourceFile): readonly Exported[] {
  return [...text.matchAll(exporting)].map((found) => {
    const before = text.slice(0, found.index)
    const isOverload = new RegExp(`export function ${found[2]}\\b[^\\n]*\\n$`).test(before)
    return {
      name: found[2] ?? '',
      line: before.split('\n').length,
      documented: isOverload || /\*\/\s*$/.test(before),
    }
  })
}

const kebab = (name: string): string =>
  name
    .replace(/([a-z0-9])([A-Z])/g, '$1-$2')
    .replace(/([A-Z])([A-Z][a-z])/g, '$1-$2')
    .toLowerCase()

describe('names and exports', () => {
  it('are read at all: most files export something', () => {
    expect(files.flatMap(exportsOf).length).toBeGreaterThan(300)
  })

  it('have no default export', () => {
    // A .d.ts describes what another library exports.
    expect(
      files
        .filter(({ path }) => !path.endsWith('.d.ts'))
        .flatMap((file) => placesOf(file, /\bexport default\b|\bas default\b/)),
    ).toEqual([])
  })

  it('have no enum, no namespace, no inherited class', () => {
    const pattern =
      /^\s*(?:export )?(?:const )?enum \w|^\s*(?:export )?namespace \w|\bclass \w+ extends (?!Error\b)/
    expect(files.flatMap((file) => placesOf(file, pattern))).toEqual([])
  })

  it('have no `any` and silence no checker', () => {
    // The linter bars it by parsing; this catches a linter that was silenced.
    const any = /(?::|<|\bas)\s*any\s*(?:[;,)>=|&}]|\[\]|$)/
    expect(files.flatMap((file) => placesOf(file, any))).toEqual([])
    const silenced = files.filter(({ text }) => /@ts-(?:ignore|nocheck|expect-error)|biome-ignore/.test(text))
    expect(silenced.map(({ path }) => path)).toEqual([])
  })

  it('stand in files with kebab-case names', () => {
    const odd = files.filter(
      ({ path }) => !/^(?:[a-z0-9]+(?:-[a-z0-9]+)*\/)*[a-z0-9]+(?:-[a-z0-9]+)*(?:\.d)?\.ts$/.test(path),
    )
    expect(odd.map(({ path }) => path)).toEqual([])
  })

  it('are in no folder called utils, helpers or common', () => {
    const vague = /(?:^|\/)(?:utils?|helpers?|common|misc|shared)(?:\/|\.ts)/
    expect(files.filter(({ path }) => vague.test(path)).map(({ path }) => path)).toEqual([])
  })

  it('share the name of their file where the file has a single export', () => {
    const wrong = files.filter((file) => {
      const names = exportsOf(file).map(({ name }) => name)
      if (names.length !== 1 || isModelOrTable(file) || namedAfterSubject[basename(file.path)]) return false
      if (verbFirst.includes(file.path)) return false
      return kebab(names[0] ?? '') !== basename(file.path).replace(/(?:\.d)?\.ts$/, '')
    })
    expect(wrong.map((file) => `${file.path} exports ${exportsOf(file)[0]?.name}`)).toEqual([])
  })
})

describe('docstrings', () => {
  it('stand on every exported function, constant, class and type', () => {
    const bare = files.flatMap((file) =>
      exportsOf(file)
        .filter(({ documented }) => !documented)
        .map(({ name, line }) => `${file.path}:${line} ${name}`),
    )
    expect(bare).toEqual([])
  })

  it('open with a code where the export is a check', () => {
    const loose = files
      .filter(({ folder }) => folder === 'checks')
      .flatMap((file) =>
        [...file.text.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export const (\w+): \w*Check\b/g)]
          .filter(([, says]) => !/^\s*\*?\s*[A-Z]{3}\d\d/.test(says ?? ''))
          .map(([, , name]) => `${file.path} ${name}`),
      )
    expect(loose).toEqual([])
  })
})
