// Shows a workbook as a person will see it, or recomputes it: needs LibreOffice, and pdftoppm for pictures.
//   node .dev/render.mjs FILE.xlsx OUTDIR            PDF of all sheets, and one PNG for each page
//   node .dev/render.mjs --recalc FILE.xlsx OUTDIR   every sheet as CSV, after a forced recalculation
import { execFileSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'

const recalculate = process.argv.includes('--recalc')
const [file, out] = process.argv.slice(2).filter((word) => !word.startsWith('--'))
if (!file || !out) {
  console.error('usage: node .dev/render.mjs [--recalc] FILE.xlsx OUTDIR')
  process.exit(2)
}
if (!present('soffice', ['--version'])) {
  console.log('skipped: LibreOffice (soffice) is not here')
  process.exit(0)
}
mkdirSync(out, { recursive: true })
const profile = mkdtempSync(join(tmpdir(), 'render-'))
try {
  if (recalculate) convert(csvFilter())
  else drawPages(convert('pdf'))
} finally {
  rmSync(profile, { recursive: true, force: true })
}

function present(command, args) {
  try {
    execFileSync(command, args, { stdio: 'ignore' })
    return true
  } catch {
    return false
  }
}

/** Comma, double quote, UTF-8, from row 1, plain columns, quoted text, numbers as stored, all sheets (the last -1). */
function csvFilter() {
  return 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,true,false,false,false,false,-1'
}

function convert(to) {
  const user = join(profile, 'user')
  mkdirSync(user, { recursive: true })
  writeFileSync(join(user, 'registrymodifications.xcu'), settings())
  const where = `-env:UserInstallation=${pathToFileURL(profile).href}`
  const args = [where, '--headless', '--norestore', '--convert-to', to, '--outdir', out, resolve(file)]
  execFileSync('soffice', args, { stdio: 'ignore', timeout: 120_000 })
  return join(out, `${basename(file).replace(/\.[^.]*$/, '')}.pdf`)
}

/** American dates in CSV whatever the machine speaks; 0 recalculates always on load, 1 never, so that a PDF shows the values as the file holds them. */
function settings() {
  const path = '/org.openoffice.Office.Calc/Formula/Load'
  return `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="${path}"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>${recalculate ? 0 : 1}</value></prop></item>
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>en-US</value></prop></item>
</oor:items>
`
}

function drawPages(pdf) {
  if (!present('pdftoppm', ['-v'])) {
    console.log(`${pdf}; no pictures: pdftoppm is not here`)
    return
  }
  execFileSync('pdftoppm', ['-r', '70', '-png', pdf, join(out, 'page')])
  for (const name of readdirSync(out).sort()) if (name.endsWith('.png')) console.log(join(out, name))
}
