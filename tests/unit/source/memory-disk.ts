import { posix } from 'node:path'
import type { Disk } from '../../../src/source/disk.ts'

/** What a test puts at a path: a text, bytes, a link to another path, or something that is no ordinary file. */
export type Content = string | Uint8Array | { readonly link: string } | 'special!' | 'denied!'

/** A disk in memory: files by absolute path; folders are what the paths imply. */
export function memoryDisk(files: Readonly<Record<string, Content>>): Disk & { readonly reads: string[] } {
  const reads: string[] = []
  const real = (path: string): string | null => {
    let walked = '/'
    for (const step of posix.normalize(path).split('/').filter(Boolean)) {
      walked = posix.join(walked, step)
      const content = files[walked]
      if (content && typeof content === 'object' && 'link' in content)
        walked = real(posix.resolve(posix.dirname(walked), content.link)) ?? '/nowhere'
    }
    return exists(walked) ? walked : null
  }
  const isFolder = (path: string): boolean =>
    path === '/' || Object.keys(files).some((file) => file.startsWith(`${path}/`))
  const exists = (path: string): boolean => path in files || isFolder(path)
  const bytesAt = (path: string): Uint8Array => {
    const content = files[path]
    return typeof content === 'string' ? new TextEncoder().encode(content) : (content as Uint8Array)
  }
  return {
    reads,
    real,
    standing: (path) => {
      const content = files[real(path) ?? '']
      if (content === 'special!') return { what: 'special' }
      if (content === 'denied!') return { what: 'denied' }
      if (content === undefined) return { what: isFolder(path) ? 'folder' : 'missing' }
      return { what: 'file', size: bytesAt(real(path)!).length }
    },
    bytes: (path) => {
      reads.push(path)
      return bytesAt(real(path)!)
    },
    names: (folder) =>
      Object.keys(files)
        .filter((file) => posix.dirname(file) === folder)
        .map((file) => posix.basename(file)),
  }
}
