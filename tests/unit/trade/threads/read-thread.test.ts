import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isThreadFault, readThread } from '../../../../src/trade/threads/read-thread.ts'
import { tapDrill } from '../../../../src/trade/threads/tap-drill.ts'
import { threadLimits } from '../../../../src/trade/threads/thread-limits.ts'

describe('a thread as the trade writes it', () => {
  it.each([
    ['M3', { majorMm: 3, pitchMm: 0.5, coarseByDefault: true, class: null, text: 'M3' }],
    ['M3-6g', { pitchMm: 0.5, text: 'M3-6g' }],
    ['M14x1-6H', { majorMm: 14, pitchMm: 1, coarseByDefault: false, text: 'M14x1-6H' }],
    ['M14x1-6H depth 6 mm', { depthMm: 6, text: 'M14x1-6H' }],
    ['M14x1-6H 6 mm deep', { depthMm: 6 }],
    ['M6 depth 1/4 in', { depthMm: 6.35 }],
    ['M14x1-6H depth 6mm LH', { depthMm: 6, hand: 'left', text: 'M14x1-6H-LH' }],
    ['M14x1 LH', { hand: 'left', class: null, text: 'M14x1-LH' }],
    ['M8×1.25−6g', { pitchMm: 1.25, text: 'M8x1.25-6g' }],
    ['M16 x Ph3 P1.5', { pitchMm: 1.5, leadMm: 3, starts: 2, text: 'M16xPh3P1.5' }],
    ['M16xPh3P1.5-6H (two starts)', { starts: 2 }],
    ['M6x1-5g6g-L', { engagement: 'L', text: 'M6x1-5g6g-L' }],
    ['M3 x0.5 - 6H through', { through: true, depthMm: null }],
    [
      '1/4-20 UNC-2B',
      { majorMm: 6.35, pitchMm: 1.27, threadsPerInch: 20, series: 'UNC', text: '1/4-20 UNC-2B' },
    ],
    ['#4-40 UNC-2A', { size: '#4', majorMm: 2.8448, text: '#4-40 UNC-2A' }],
    ['10-32', { size: '#10', majorMm: 4.826, series: 'UNF', text: '#10-32 UNF' }],
    ['1/4-20-2A-LH', { hand: 'left', series: 'UNC' }],
    ['1/4 UNF', { threadsPerInch: 28 }],
    ['1-8', { size: '1', majorMm: 25.4 }],
    ['1-64', { size: '#1' }],
    ['1 1/8-7', { size: '1 1/8', majorMm: 28.575, series: null }],
    ['.250-20', { size: '1/4' }],
  ])('%s is read', (text, wanted) => {
    expect(readThread(text)).toMatchObject(wanted)
  })

  it('has one class for both diameters or one for each', () => {
    expect(readThread('M6-6g')).toMatchObject({ class: { pitch: { grade: 6 }, crest: { grade: 6 } } })
    expect(readThread('M6-5g6g')).toMatchObject({
      class: { gender: 'external', pitch: { grade: 5 }, crest: { grade: 6 } },
    })
    expect(readThread('M6-5H6H')).toMatchObject({ class: { gender: 'internal' } })
  })
})

describe('a text that is no thread', () => {
  it.each([
    ['', 'empty', '', 0, []],
    ['m3', 'not a thread', 'm3', 0, ['M3']],
    ['M14x1,5', 'comma', ',', 5, ['M14x1.5']],
    ['M13', 'no coarse pitch', 'M13', 0, ['M12', 'M14']],
    ['M5.5', 'no coarse pitch', 'M5.5', 0, ['M5.5x0.5']],
    ['M8-1.25', 'pitch', '-1.25', 2, ['M8x1.25']],
    ['M3x6', 'pitch', 'M3x6', 0, ['M3x0.5', 'M3x0.35']],
    ['M16xPh4P1.5', 'lead', 'M16xPh4P1.5', 0, []],
    ['M6-6H/6g', 'pair of classes', '6H/6g', 3, ['6H', '6g']],
    ['M6-5g', 'class', '5g', 3, ['5g6g', '5G', '5H']],
    ['M8x1 LH LH', 'twice', 'LH', 8, []],
    ['M8x1 depht 6 mm', 'left over', 'depht', 5, ['depth']],
    ['M10 depth 6', 'depth', '6', 10, ['6 mm']],
    ['1/4-20 UNF', 'series', '1/4-20 UNF', 0, ['1/4-20 UNC', '1/4-28 UNF']],
    ['1/4-20 NC', 'series', 'NC', 7, ['UNC']],
    ['#4-40 UNC-2C', 'class', '2C', 10, ['2A', '2B']],
  ])('%s: %s', (typed, fault, text, at, near) => {
    expect(readThread(typed)).toEqual({ fault, text, at, length: text.length, near })
  })
})

const pieces = [
  'M',
  'm',
  '#',
  '1/4',
  '-',
  ' ',
  'x',
  'Ph',
  'P',
  '1',
  '3',
  '10',
  '20',
  '32',
  '0.5',
  '6H',
  '6g',
  '2B',
  'UNC',
]
const texts = fc.oneof(
  fc.string({ maxLength: 30 }),
  fc
    .array(fc.constantFrom(...pieces, 'LH', 'depth', '6 mm', '1.25', '0', ','), { maxLength: 8 })
    .map((all) => all.join('')),
)

describe('any text', () => {
  it('is a thread of finite sizes or a fault inside the text', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const read = readThread(text)
        if (isThreadFault(read)) {
          expect(text.slice(read.at, read.at + read.length)).toBe(read.text)
          return
        }
        const sizes = [read.majorMm, read.pitchMm, read.leadMm, read.starts, read.depthMm ?? 1]
        expect(sizes.every((size) => Number.isFinite(size) && size > 0)).toBe(true)
        expect(isThreadFault(readThread(read.text))).toBe(false)
      }),
      { numRuns: 3000 },
    )
  })

  it('that names a thread has sound limits and a drill inside it, or a fault', () => {
    const diameters = fc.integer({ min: 3, max: 4000 }).map((tenths) => tenths / 10)
    const pitches = fc.integer({ min: 1, max: 160 }).map((twentieths) => twentieths / 20)
    const classes = fc.constantFrom(
      '4H',
      '5H',
      '6H',
      '7H',
      '8H',
      '6G',
      '4h',
      '6g',
      '6f',
      '6e',
      '8g',
      '5g6g',
      '9g8g',
    )
    fc.assert(
      fc.property(diameters, pitches, classes, (diameter, pitch, name) => {
        const read = readThread(`M${diameter}x${pitch}-${name}`)
        if (isThreadFault(read)) return
        const limits = threadLimits(read)
        if ('fault' in limits) return
        for (const { minMm, maxMm } of [limits.major, limits.pitch, limits.minor]) {
          for (const size of [minMm ?? 1, maxMm ?? 1]) expect(Number.isFinite(size)).toBe(true)
          if (minMm !== null && maxMm !== null) expect(minMm).toBeLessThan(maxMm)
        }
        expect(limits.worked.join()).not.toMatch(/NaN|Infinity/)
        const drill = tapDrill({ ...read, class: null })
        if (!('fault' in drill)) expect(drill.drillMm > 0 && drill.drillMm < diameter).toBe(true)
      }),
      { numRuns: 2000 },
    )
  })

  it('spelled anew is read as the same thread', () => {
    for (const text of [
      'M16 x Ph3 P1.5 LH',
      'M6x1-5g6g-L',
      '10-32 UNF-2B LH',
      '1 1/8-7',
      '0.3-20',
      'M3 - 6g',
    ])
      expect(readThread((readThread(text) as { text: string }).text)).toMatchObject({
        text: (readThread(text) as { text: string }).text,
      })
  })
})
