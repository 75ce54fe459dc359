/** The workbooks of everything that ships, held against the format's own schemas and two independent engines. */
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { picturedReport } from '../../src/compile.ts'
import { isOurs, readStamp } from '../../src/emit/workbook/stamp.ts'
import { writeWorkbook } from '../../src/emit/workbook/write-workbook.ts'
import { shippedProjects, shippedTemplates } from '../golden/projects.ts'
import {
  expectLiveCellsAgree,
  expectNoSlips,
  expectOfficeAgrees,
  officePresent,
  schemaFaults,
  schemaPlace,
} from './harness.ts'

const root = new URL('../..', import.meta.url).pathname
const place = schemaPlace()

async function written(file: string): Promise<Uint8Array> {
  const { workbook } = await picturedReport(file, { folder: root, canShow: () => true })
  return writeWorkbook(workbook!)
}

describe.each([...shippedProjects, ...shippedTemplates])('the workbook of %s', (file) => {
  let bytes: Uint8Array
  beforeAll(async () => {
    bytes = await written(file)
  })

  it('gives the written value in every live cell when an independent engine recomputes it', async () => {
    // Orders, money and parts are live wherever something is bought.
    expect(await expectLiveCellsAgree(bytes)).toBeGreaterThan(30)
  })

  it('holds no words of a slip and only whole fonts', () => {
    expectNoSlips(bytes)
  })

  it('carries the fingerprint of its source and is known as untouched', () => {
    expect(readStamp(bytes)?.fingerprint).toMatch(/^[0-9a-f]{64}$/)
    expect(isOurs(bytes)).toBe('untouched')
  })

  it.skipIf('missing' in place)(
    `is valid against the format's schemas${'missing' in place ? ` (skipped: ${place.missing})` : ''}`,
    () => {
      if ('folder' in place) expect(schemaFaults(bytes, place.folder)).toEqual([])
    },
  )
})

describe('the workbook of the demonstration', () => {
  afterEach(() => {
    vi.useRealTimers()
    vi.unstubAllEnvs()
  })

  it.skipIf(!officePresent())(
    'is recomputed alike by an office program (skipped where there is none)',
    async () => {
      expect(await expectOfficeAgrees(await written(shippedProjects[0]!))).toBeGreaterThan(500)
    },
  )

  it('has the same bytes in another year and another time zone', async () => {
    const first = await written(shippedProjects[0]!)
    vi.stubEnv('TZ', 'Asia/Tokyo')
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2031-07-04T05:06:07Z') })
    expect(Buffer.from(await written(shippedProjects[0]!)).equals(Buffer.from(first))).toBe(true)
  })
})
