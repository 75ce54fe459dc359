import type { Device } from '../model/project.ts'

/** Foot of every printed page, at the left: which device in which revision; sheet and page stand beside it. */
export function footOf({ name, revision }: Device): string {
  return revision === null ? name : `${name}, revision ${revision}`
}
