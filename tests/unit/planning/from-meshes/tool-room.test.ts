import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { check } from '../../../../src/compile.ts'
import { memoryDisk } from '../../source/memory-disk.ts'

const folder = new URL('../../../diagnostics/msh20-no-room-for-the-driver/', import.meta.url)
const files = readdirSync(folder).map((name) => [`/b/${name}`, readFileSync(new URL(name, folder))] as const)
const text = readFileSync(new URL('project.yaml', folder), 'utf8')

/** What is told of the room for `hex 2` where the bench has such tools. */
function told(tools: string): readonly string[] {
  const disk = memoryDisk(
    Object.fromEntries([...files, ['/b/project.yaml', text.replace('parts:\n', `${tools}parts:\n`)]]),
  )
  const { diagnostics } = check('project.yaml', { folder: '/b', root: '.', read: disk })
  return diagnostics.filter(({ code }) => code === 'MSH20').map(({ says }) => says)
}

describe('room for a driver', () => {
  it('is that of a usual one where its tool does not say', () => {
    expect(told('')).toHaveLength(1)
    expect(told('tools: {hex 2: {qty: 1}}\n')).toHaveLength(1)
  })

  it('is what its tool says', () => {
    expect(told('tools: {hex 2: {diameter: 2.3 mm}}\n')).toEqual([])
    expect(told('tools: {hex 2: {diameter: 8 mm, reach: 25 mm}}\n')[0]).toMatch(
      /within 4 mm of its axis over 25 mm/,
    )
  })
})
