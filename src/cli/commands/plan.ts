import { basename, extname } from 'node:path'
import { picturedReport, planReport } from '../../compile.ts'
import { renderGnu } from '../../diagnostics/render-gnu.ts'
import { reportJson } from '../../emit/json/report-json.ts'
import { svgToPng } from '../../emit/pictures/svg-to-png.ts'
import { summary } from '../../emit/terminal/summary.ts'
import { writeWorkbook } from '../../emit/workbook/write-workbook.ts'
import { progressLine } from '../progress-line.ts'
import { compileOptions, type SharedOptions } from '../read-options.ts'
import { refuseToOverwrite, refuseToOverwriteSource, saveWhole } from '../save.ts'
import { exitOf, sayCounts } from '../say-counts.ts'
import { type Exit, exits, type Terminal, UsageError } from '../terminal.ts'

/** Options of `fettle plan`, as commander hands them over. */
export interface PlanOptions extends SharedOptions {
  readonly out?: string
  readonly json?: boolean
  readonly force?: boolean
}

/** The workbook's name: as asked for, else the project file's own with another ending; none with `--json` alone. */
function outputOf(file: string, { out, json }: PlanOptions): string | null {
  if (out !== undefined) return out
  if (json) return null
  return file === '-' ? 'plan.xlsx' : `${basename(file, extname(file))}.xlsx`
}

/** `fettle plan FILE`: checks, plans, writes the workbook. Nothing is written where there is an error. */
export async function runPlan(file: string, options: PlanOptions, terminal: Terminal): Promise<Exit> {
  const out = outputOf(file, options)
  const piped = out === '-'
  if (piped && options.json)
    throw new UsageError('--out - and --json would mix workbook and JSON; ask for one of them')
  if (out !== null && !piped)
    refuseToOverwrite(out, { folder: terminal.folder, force: options.force === true })
  const progress = progressLine(terminal)
  const asked = {
    ...compileOptions(file, options, terminal.folder),
    ...(terminal.live ? { progress: progress.told } : {}),
  }
  const { diagnostics, texts, report, workbook } =
    out === null
      ? planReport(file, asked)
      : await picturedReport(file, { ...asked, canShow: () => svgToPng() !== null })
  progress.end()
  terminal.err(renderGnu(diagnostics, { colour: terminal.colour, texts }))
  if (!report || !workbook) {
    terminal.err(`${sayCounts(file, diagnostics)}; nothing was written\n`)
    return exits.errors
  }
  if (out !== null) {
    if (!piped) refuseToOverwriteSource(out, texts.keys(), terminal.folder)
    const bytes = await writeWorkbook(workbook)
    if (piped) process.stdout.write(bytes)
    else saveWhole(out, bytes, terminal.folder)
  }
  if (options.json) terminal.out(reportJson(report))
  else if (!piped) terminal.out(summary(report, out))
  return exitOf(diagnostics, exits)
}
