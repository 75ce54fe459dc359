import { dirname, isAbsolute, join, relative, resolve, sep, win32 } from 'node:path'
import type { Disk } from './disk.ts'

/** The folder that a plan may not leave: the one asked for, else the nearest above with a mark, else its own. */
export function rootOf(file: string, asked: string | null, folder: string, disk: Disk): string {
  if (asked !== null) return resolve(folder, asked)
  const own = dirname(file)
  for (let here = own; ; here = dirname(here)) {
    if (disk.standing(join(here, '.fettle-root')).what === 'file') return here
    if (dirname(here) === here) return own
  }
}

/** Whether a path lies in a folder or is it. Needs: both absolute, links followed. */
export function isInside(path: string, folder: string): boolean {
  const way = relative(folder, path)
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way))
}

/** Whether a path names its place from the top of a disk or the network, on any system. */
export function isAbsolutePath(path: string): boolean {
  return (
    isAbsolute(path) || win32.isAbsolute(path) || /^[A-Za-z]:/.test(path) || /^[A-Za-z][\w+.-]+:/.test(path)
  )
}
