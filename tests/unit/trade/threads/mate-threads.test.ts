import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { engagementGroup } from '../../../../src/trade/threads/engagement.ts'
import { type MatingFacts, mateThreads } from '../../../../src/trade/threads/mate-threads.ts'
import { isThreadFault, readThread } from '../../../../src/trade/threads/read-thread.ts'
import { tighteningTorque } from '../../../../src/trade/threads/screw-strength.ts'
import { stripStrength } from '../../../../src/trade/threads/strip-strength.ts'
import type { Thread } from '../../../../src/trade/threads/thread.ts'
import { threadLimits } from '../../../../src/trade/threads/thread-limits.ts'
import { centreFeed, threadMillingTime } from '../../../../src/trade/threads/thread-milling.ts'

function thread(text: string): Thread {
  const read = readThread(text)
  if (isThreadFault(read)) throw new Error(JSON.stringify(read))
  return read
}

const mate = (a: string, b: string, facts: MatingFacts = {}) => mateThreads(thread(a), thread(b), facts)
const kinds = (a: string, b: string, facts?: MatingFacts): string[] =>
  mate(a, b, facts).mismatches.map(({ kind }) => kind)

describe('two threads', () => {
  it('go together when one is inside the other and all else is alike', () => {
    expect(mate('M14x1-6H', 'M14x1-6g')).toEqual({
      mates: true,
      mismatches: [],
      cautions: [],
      engagement: null,
    })
    expect(kinds('M8', 'M8x1.25', { firstGender: 'internal', secondGender: 'external' })).toEqual([])
    expect(kinds('1/4-20 UNC-2B', '1/4-20-3A')).toEqual([])
  })

  it.each([
    ['M14x1-6H', 'M14x1.5-6g', ['pitch']],
    ['M14x1-6H', 'M12x1-6g', ['diameter']],
    ['M14x1-6H', 'M14x1-6g-LH', ['hand']],
    ['M16xPh3P1.5-6H', 'M16x1.5-6g', ['starts']],
    ['M14x1-6H', 'M14x1-5H', ['gender']],
    ['M5-6H', '10-32 UNF-2A', ['system', 'diameter', 'pitch']],
    ['M14x1-6H', 'M12x1.5-6H-LH', ['diameter', 'pitch', 'hand', 'gender']],
  ])('%s and %s differ in %j', (a, b, wanted) => {
    expect(kinds(a, b)).toEqual(wanted)
    expect(kinds(b, a)).toEqual(wanted)
    expect(mate(a, b).mates).toBe(false)
  })

  it('say what each is where they differ', () => {
    expect(mate('M14x1-6H', 'M14x1.5-6g').mismatches).toEqual([
      { kind: 'pitch', first: '1 mm', second: '1.5 mm' },
    ])
  })

  it('nearly alike in two systems are pointed out', () => {
    expect(mate('M5-6H', '10-32 UNF-2A').cautions).toEqual([{ kind: 'looks alike' }])
    expect(mate('M5-6H', '1/4-20 UNC-2A').cautions).toEqual([])
  })

  it('of unknown gender are a caution, not a mismatch', () => {
    expect(mate('M3', 'M3-6g').cautions).toEqual([{ kind: 'gender unknown', which: 'first' }])
    expect(mate('M3', 'M3').cautions).toEqual([{ kind: 'gender unknown', which: 'both' }])
  })

  it('engaged for less than one turn, or deeper than the hole, are cautions', () => {
    const found = mate('M6-6H depth 5 mm', 'M6-6g', { engagementMm: 6 })
    expect(found.cautions).toEqual([{ kind: 'not deep enough', lengthMm: 6, depthMm: 5 }])
    expect(found.engagement?.group).toBe('N')
    expect(mate('M6-6H', 'M6-6g', { engagementMm: 0.8 }).cautions.map(({ kind }) => kind)).toEqual([
      'short engagement',
      'under one turn',
    ])
    expect(mate('M6-6H', 'M6-6g', { engagementMm: 20 }).cautions.map(({ kind }) => kind)).toEqual([
      'long engagement',
    ])
  })

  it('that go together always leave play at the flanks', () => {
    for (const text of ['M3', 'M6x0.75', 'M14x1', 'M30'])
      for (const nut of ['4H', '6H', '6G'])
        for (const screw of ['4h', '6g', '6e']) {
          const [hole, pin] = [
            threadLimits(thread(`${text}-${nut}`)),
            threadLimits(thread(`${text}-${screw}`)),
          ]
          if ('fault' in hole || 'fault' in pin) throw new Error(text)
          expect(hole.pitch.minMm!).toBeGreaterThanOrEqual(pin.pitch.maxMm!)
        }
  })
})

describe('length of engagement', () => {
  it('of M6 is normal from about 3 to 9 mm', () => {
    // Source: ISO 965-1 prints 3 to 9 mm for pitch 1 in the step of 5.6 to 11.2 mm, from memory.
    const found = engagementGroup(thread('M6'), 6)!
    expect(Math.round(found.normalFromMm)).toBe(3)
    expect(Math.round(found.normalToMm)).toBe(9)
    expect([2, 6, 12].map((length) => engagementGroup(thread('M6'), length)?.group)).toEqual(['S', 'N', 'L'])
  })

  it('is unknown outside the steps of the standard and for no length', () => {
    expect(engagementGroup({ majorMm: 0.5, pitchMm: 0.1 }, 1)).toBe(null)
    expect(engagementGroup(thread('M6'), 0)).toBe(null)
    expect(engagementGroup(thread('M6'), Number.NaN)).toBe(null)
  })
})

describe('limits of a thread', () => {
  it('need to know whether it is a screw or a hole, and do not take both', () => {
    expect(threadLimits(thread('M3'))).toEqual({ fault: 'gender unknown' })
    expect(threadLimits(thread('M3-6g'), 'internal')).toEqual({ fault: 'gender differs' })
    expect(threadLimits(thread('M0.5x0.1'), 'internal')).toEqual({ fault: 'outside the tables' })
  })
})

describe('numbers of any size', () => {
  const any = fc.double()
  const finite = (value: object): boolean =>
    Object.values(value).every((field) => typeof field !== 'number' || (Number.isFinite(field) && field >= 0))

  it('give no torque, feed, time or strength that is not finite, or a fault', () => {
    fc.assert(
      fc.property(
        fc.array(any, { minLength: 8, maxLength: 8 }),
        fc.constantFrom('internal', 'external'),
        (n, gender) => {
          const [a, b, c, d, e, f, g, h] = n as [
            number,
            number,
            number,
            number,
            number,
            number,
            number,
            number,
          ]
          const torque = tighteningTorque({
            majorMm: a,
            stressAreaMm2: b,
            proofMpa: c,
            shareOfProof: d,
            nutFactor: e,
          })
          expect('fault' in torque || finite(torque)).toBe(true)
          const feed = centreFeed({ gender, diameterMm: a, cutterMm: b }, c)
          expect(typeof feed !== 'number' || (Number.isFinite(feed) && feed >= 0)).toBe(true)
          const time = threadMillingTime({
            ...{ gender, diameterMm: a, cutterMm: b, pitchMm: c, lengthMm: d, teeth: e, cuttingMPerMin: f },
            ...{ feedPerToothMm: g, passes: h, linkSecondsPerPass: a, spindleMaxRpm: b },
          })
          expect('fault' in time || finite(time)).toBe(true)
          const joint = {
            thread: thread('M6'),
            diameters: null,
            engagementMm: a,
            screwStrengthMpa: b,
            holeStrengthMpa: c,
          }
          const strip = stripStrength({ ...joint, shearShare: d })
          expect('fault' in strip || finite(strip)).toBe(true)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('within reach of a shop are answered', () => {
    const size = fc.double({ min: 0.01, max: 1000, noNaN: true })
    fc.assert(
      fc.property(size, size, size, (a, b, c) => {
        const torque = tighteningTorque({
          majorMm: a,
          stressAreaMm2: b,
          proofMpa: c,
          shareOfProof: 0.7,
          nutFactor: 0.2,
        })
        expect('fault' in torque).toBe(false)
      }),
    )
  })

  it('a cutter as wide as the thread is a fault', () => {
    expect(centreFeed({ gender: 'internal', diameterMm: 6, cutterMm: 6 }, 100)).toMatchObject({
      what: 'cutterMm',
    })
  })
})
