import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../..')
const generator = join(root, '.dev/generate.mjs')

describe('what npm run generate writes', async () => {
  const { generate } = (await import(generator)) as { generate: () => Promise<ReadonlyMap<string, string>> }
  const files = await generate()

  it.each([...files.keys()])('%s is what the schemas and test cases give today', (path) => {
    expect(readFileSync(join(root, path), 'utf8') === files.get(path), `${path}: run npm run generate`).toBe(
      true,
    )
  })

  it('is the same text each time', async () => {
    expect([...(await generate())]).toEqual([...files])
  })

  it('holds a validator that loads no module', () => {
    const code = files.get('src/source/generated/validate-project.js') ?? ''
    expect(code).toMatch(/export const project/)
    expect(code).not.toMatch(/\brequire\(|\bimport\b/)
  })
})
