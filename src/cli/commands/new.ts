import { cpSync, existsSync, mkdirSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs'
import { basename, dirname, join, resolve } from 'node:path'
import { nameList, nearNames } from '../../base/near-names.ts'
import { packageFolder } from '../package-folder.ts'
import { asUsage } from '../save.ts'
import { type Exit, exits, type Terminal, UsageError } from '../terminal.ts'

/** Names of the templates that ship. */
export function templateNames(): readonly string[] {
  return readdirSync(join(packageFolder(), 'templates'), { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
}

function chosen(name: string): string {
  const names = templateNames()
  if (names.includes(name)) return join(packageFolder(), 'templates', name)
  const near = nearNames(name, names)
  throw new UsageError(
    `there is no template ${name}; ${near.length > 0 ? `did you mean ${nameList(near, 'or')}` : `there are ${nameList(names, 'and')}`}`,
  )
}

/** `fettle new DIR`: a folder with a project to begin from, and the schemas beside it for the editor. */
export function runNew(folder: string, options: { readonly template: string }, terminal: Terminal): Exit {
  const template = chosen(options.template)
  const target = resolve(terminal.folder, folder)
  if (folder.trim() === '') throw new UsageError('give the folder a name, such as my-device')
  if (existsSync(target) && !statSync(target).isDirectory())
    throw new UsageError(`${folder} is there already and is no folder; nothing was written`)
  if (existsSync(target) && readdirSync(target).length > 0)
    throw new UsageError(`${folder} is there already and is not empty; nothing was written`)
  const beside = join(dirname(target), `.${basename(target)}.${process.pid}.part`)
  try {
    mkdirSync(dirname(target), { recursive: true })
    cpSync(template, beside, { recursive: true })
    cpSync(join(packageFolder(), 'schemas'), join(beside, '.fettle'), { recursive: true })
    if (existsSync(target)) rmSync(target, { recursive: true })
    renameSync(beside, target)
  } catch (cause) {
    rmSync(beside, { recursive: true, force: true })
    throw asUsage(cause, folder)
  }
  const project = readdirSync(target).find((file) => /\.ya?ml$/.test(file) && !file.startsWith('shop'))
  terminal.out(
    `${join(folder, project ?? '')} is yours to edit; then: fettle plan ${join(folder, project ?? 'PROJECT.yaml')}\n`,
  )
  return exits.fine
}
