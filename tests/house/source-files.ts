import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, posix, relative, sep } from 'node:path'

/** Top of the repository. */
export const root = join(import.meta.dirname, '../..')

/** One file of `src/`, as the house tests look at it. */
export interface SourceFile {
  /** Path from `src/`, with slashes: `base/clock.ts`. */
  readonly path: string
  /** Folder of the table in which it stands; the file itself at the top level. */
  readonly folder: string
  readonly text: string
  /** The text with comments and the inside of strings blanked; lines stay where they are. */
  readonly code: string
  readonly imports: readonly Import[]
}

/** One import: what it names, where it leads. */
export interface Import {
  readonly from: string
  /** Path from `src/` for a file of our own, else `null`. */
  readonly to: string | null
  readonly typeOnly: boolean
}

/** Files of a folder at any depth, with slashes, sorted by code unit. */
export function filesUnder(folder: string, ending: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.split(sep).join('/'))
    .filter((path) => path.endsWith(ending) && !path.includes('node_modules/'))
    .sort()
}

// One pass: comments and strings compete for the same signs, so whichever begins first wins.
const tokens =
  /\/\*[\s\S]*?\*\/|\/\/[^\n]*|'(?:\\.|[^'\\\n])*'|"(?:\\.|[^"\\\n])*"|(?<=[=(,:[!&|?{};\n]\s*)\/(?![*/])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\\n[])+\/[a-z]*/g

const blanked = (text: string): string => text.replace(/[^\n]/g, ' ')

/** The code of a text without comments, regular expressions and what stands between quotes. */
export function onlyCode(text: string): string {
  return text.replace(tokens, (found) => {
    const quote = found[0]
    return quote === "'" || quote === '"' ? `${quote}${blanked(found.slice(1, -1))}${quote}` : blanked(found)
  })
}

const importing =
  /\b(?:import|export)\s+(type\s+)?(?:[\w*\s{},]+?\s+from\s+)?'([^']+)'|\bimport\('([^']+)'\)/g

function importsOf(path: string, text: string): readonly Import[] {
  const plain = text.replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, blanked)
  return [...plain.matchAll(importing)].map((found) => {
    const from = found[2] ?? found[3] ?? ''
    const to = from.startsWith('.') ? posix.join(dirname(path), from) : null
    return { from, to, typeOnly: found[1] !== undefined }
  })
}

function folderOf(path: string): string {
  const first = path.split('/')[0] ?? path
  return first === path ? path : first
}

/** Every file of `src/` that is written by hand. */
export function sourceFiles(): readonly SourceFile[] {
  const folder = join(root, 'src')
  return filesUnder(folder, '.ts')
    .filter((path) => !path.includes('/generated/'))
    .map((path) => {
      const text = readFileSync(join(folder, path), 'utf8')
      return { path, folder: folderOf(path), text, code: onlyCode(text), imports: importsOf(path, text) }
    })
}

/** `path:line` of every place where a pattern stands in the code of a file. */
export function placesOf(file: Pick<SourceFile, 'path' | 'code'>, pattern: RegExp): readonly string[] {
  return file.code.split('\n').flatMap((line, at) => (pattern.test(line) ? [`${file.path}:${at + 1}`] : []))
}

/** A path of the repository, for messages. */
export const short = (path: string): string => relative(root, path).split(sep).join('/')
