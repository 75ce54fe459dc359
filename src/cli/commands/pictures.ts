import { existsSync, mkdirSync, readdirSync, readFileSync, statSync } from 'node:fs'
import { basename, join, resolve } from 'node:path'
import { draw } from '../../compile.ts'
import { renderGnu } from '../../diagnostics/render-gnu.ts'
import { namedPictures, type PictureFile } from '../../emit/pictures/named-pictures.ts'
import { isOurPicture, stampSvg } from '../../emit/pictures/stamp-svg.ts'
import { pngPackage, svgToPng, type ToPng } from '../../emit/pictures/svg-to-png.ts'
import { compileOptions, type SharedOptions } from '../read-options.ts'
import { asUsage, refuseToOverwriteSource, saveWhole } from '../save.ts'
import { exitOf, sayCounts } from '../say-counts.ts'
import { type Exit, exits, type Terminal, UsageError } from '../terminal.ts'

/** Options of `fettle pictures`, as commander hands them over. */
export interface PicturesOptions extends SharedOptions {
  readonly out: string
  readonly oneScale?: boolean
  readonly png?: boolean
  readonly force?: boolean
}

/** A file to be written, with its bytes. */
interface Written {
  readonly path: string
  readonly bytes: Uint8Array
}

/** `fettle pictures FILE --out DIR`: a line drawing of every step that has meshes, and one of each assembly taken apart. */
export async function runPictures(file: string, options: PicturesOptions, terminal: Terminal): Promise<Exit> {
  const { folder } = terminal
  refuseOddFolder(options.out, folder)
  const toPng = options.png ? svgToPng() : null
  if (options.png && !toPng)
    throw new UsageError(
      `PNG needs the package ${pngPackage}, which is not installed here; install it (npm install ${pngPackage}) or leave out --png`,
    )
  const { diagnostics, texts, pictures } = await draw(file, {
    ...compileOptions(file, options, folder),
    oneScale: options.oneScale === true,
  })
  terminal.err(renderGnu(diagnostics, { colour: terminal.colour, texts }))
  const exit = exitOf(diagnostics, exits)
  if (exit !== exits.fine) {
    terminal.err(`${sayCounts(file, diagnostics)}; nothing was written\n`)
    return exit
  }
  if (pictures?.beyond) {
    const { what, found, most } = pictures.beyond
    terminal.err(`fettle: ${found} ${what} are too many to draw, at most ${most}; nothing was written\n`)
    return exits.errors
  }
  const files = pictures ? namedPictures(pictures) : []
  if (files.length === 0) {
    terminal.out(
      'there is nothing to draw: two parts or more need a mesh that stands in its assembled place (`place` beside `model`, or `assembled`)\n',
    )
    return exit
  }
  const written = files.flatMap((one) => filesOf(one, options.out, toPng))
  for (const { path } of written) {
    refuseForeign(path, folder, options.force === true)
    refuseToOverwriteSource(path, texts.keys(), folder)
  }
  const left = picturesBesides(options.out, folder, written)
  makeFolder(options.out, folder)
  for (const { path, bytes } of written) saveWhole(path, bytes, folder)
  terminal.out(`${files.length === 1 ? '1 picture' : `${files.length} pictures`} in ${options.out}\n`)
  const without = (pictures?.without ?? []).map(({ step }) => `  ${step}\n`)
  if (without.length > 0)
    terminal.out(`no mesh, so no picture, of what these steps put:\n${without.join('')}`)
  if (left.length > 0) terminal.out(`pictures of an earlier run are still there: ${left.join(', ')}\n`)
  return exit
}

function filesOf({ name, svg, sizeMm }: PictureFile, out: string, toPng: ToPng | null): readonly Written[] {
  const bytes = new TextEncoder().encode(stampSvg(svg))
  const own = { path: join(out, `${name}.svg`), bytes }
  return toPng ? [own, { path: join(out, `${name}.png`), bytes: toPng(svg, sizeMm) }] : [own]
}

function refuseOddFolder(out: string, folder: string): void {
  if (out.trim() === '') throw new UsageError('--out wants a folder, such as pictures')
  const path = resolve(folder, out)
  if (existsSync(path) && !statSync(path).isDirectory())
    throw new UsageError(`${out} is there already and is no folder; nothing was written`)
}

function makeFolder(out: string, folder: string): void {
  try {
    mkdirSync(resolve(folder, out), { recursive: true })
  } catch (cause) {
    throw asUsage(cause, out)
  }
}

/** A PNG bears no stamp: it is ours where the SVG beside it is. */
function refuseForeign(file: string, folder: string, force: boolean): void {
  const path = resolve(folder, file)
  if (!existsSync(path)) return
  if (!statSync(path).isFile()) throw new UsageError(`${file} is not a file that could be written`)
  if (force) return
  const beside = path.replace(/\.png$/, '.svg')
  const state = existsSync(beside) ? isOurPicture(readFileSync(beside)) : 'not ours'
  if (state === 'untouched') return
  const why = state === 'changed' ? 'was changed since fettle wrote it' : 'was not written by fettle'
  throw new UsageError(`${file} ${why}; give another folder with --out, or --force to write over it`)
}

/** Pictures of ours in the folder that this run does not write. */
function picturesBesides(out: string, folder: string, written: readonly Written[]): readonly string[] {
  const path = resolve(folder, out)
  if (!existsSync(path)) return []
  const now = new Set(written.map((one) => basename(one.path)))
  return readdirSync(path)
    .filter((name) => name.endsWith('.svg') && !now.has(name))
    .filter((name) => isOurPicture(readFileSync(join(path, name))) !== 'not ours')
    .sort()
}
