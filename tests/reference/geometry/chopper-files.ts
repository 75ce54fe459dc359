import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { check, plan } from '../../../src/compile.ts'
import { memoryDisk } from '../../unit/source/memory-disk.ts'

const projects = join(import.meta.dirname, '../../../projects')
const bytesAt = (path: string): Uint8Array => new Uint8Array(readFileSync(join(projects, path)))
const textAt = (path: string): string => readFileSync(join(projects, path), 'utf8')

/** The text of the shipped chopper. */
export const chopperText = textAt('optical-chopper/optical-chopper.yaml')

/** The meshes of the shipped chopper, by file name. */
export const chopperMeshes: ReadonlyMap<string, Uint8Array> = new Map(
  readdirSync(join(projects, 'optical-chopper/meshes')).map((name) => [
    name,
    bytesAt(`optical-chopper/meshes/${name}`),
  ]),
)

/** Checks or plans the chopper with another text or other meshes. */
export function withChopper(
  run: typeof check | typeof plan,
  text: string,
  meshes: Readonly<Record<string, Uint8Array>> = {},
): ReturnType<typeof plan> | ReturnType<typeof check> {
  const files = Object.fromEntries([
    ['/bench/.fettle-root', ''],
    ['/bench/shop/evening-bench.yaml', textAt('shop/evening-bench.yaml')],
    ['/bench/chopper/project.yaml', text],
    ...[...chopperMeshes, ...Object.entries(meshes)].map(([name, bytes]) => [
      `/bench/chopper/meshes/${name}`,
      bytes,
    ]),
  ])
  return run('project.yaml', {
    folder: '/bench/chopper',
    root: '/bench',
    read: memoryDisk(files),
    samples: 0,
    effort: 1,
  })
}
