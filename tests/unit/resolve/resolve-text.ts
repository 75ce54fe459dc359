import { parseDay } from '../../../src/base/clock.ts'
import { collect } from '../../../src/diagnostics/collector.ts'
import type { Diagnostic } from '../../../src/diagnostics/message.ts'
import type { Project } from '../../../src/model/project.ts'
import { resolveProject } from '../../../src/resolve/resolve-project.ts'
import { loadSource } from '../../../src/source/load.ts'
import { memoryDisk } from '../source/memory-disk.ts'

/** A project read from texts: what it resolves to and everything that was said. Needs: texts of the right shape. */
export function resolveText(
  text: string,
  more: Readonly<Record<string, string | Uint8Array>> = {},
  date: string | null = null,
): { readonly project: Project; readonly diagnostics: readonly Diagnostic[] } {
  const files: Readonly<Record<string, string | Uint8Array>> = { 'project.yaml': text, ...more }
  const disk = memoryDisk(
    Object.fromEntries(Object.entries(files).map(([name, content]) => [`/bench/${name}`, content])),
  )
  const loaded = loadSource('project.yaml', { folder: '/bench', root: '.', read: disk })
  if (!loaded.source) throw new Error(loaded.diagnostics.map(({ says }) => says).join('; '))
  const { report, diagnostics } = collect()
  const project = resolveProject(loaded.source, report, date === null ? null : parseDay(date))
  return { project, diagnostics: [...loaded.diagnostics, ...diagnostics()] }
}

/** First line of a project, in euro. */
export const device = 'device: {name: Lamp, currency: EUR, start: 2026-02-02}\n'
/** Somebody with hours. */
export const people = 'people: {ana: {hours: {sat: "10:00-16:00"}}}\n'
