import { describe, expect, it } from 'vitest'
import { isThreadFault, readThread } from '../../src/trade/threads/read-thread.ts'
import { stressAreaMm2, tighteningTorque } from '../../src/trade/threads/screw-strength.ts'
import { shearDiameters, stripStrength } from '../../src/trade/threads/strip-strength.ts'
import type { Thread } from '../../src/trade/threads/thread.ts'
import { threadLimits } from '../../src/trade/threads/thread-limits.ts'
import {
  centreFeed,
  threadMillEngagementMm,
  threadMillingTime,
} from '../../src/trade/threads/thread-milling.ts'

function thread(text: string): Thread {
  const read = readThread(text)
  if (isThreadFault(read)) throw new Error(JSON.stringify(read))
  return read
}

function sound<T>(value: T): Exclude<T, { readonly fault: string }> {
  if (typeof value === 'object' && value !== null && 'fault' in value) throw new Error(JSON.stringify(value))
  return value as Exclude<T, { readonly fault: string }>
}

const near = (found: number, wanted: number, share: number): void =>
  expect(Math.abs(found / wanted - 1)).toBeLessThan(share)

describe('milled threads', () => {
  it('of 9/16-18 feed the centre of the cutter slower inside and faster outside (T-10)', () => {
    // Source: a public worked example prints 2.8 and 13.8 in/min.
    const inch = { diameterMm: 0.562, cutterMm: 0.37 }
    expect(centreFeed({ gender: 'internal', ...inch }, 8.3)).toBeCloseTo(2.84, 2)
    expect(Math.abs(sound(centreFeed({ gender: 'external', ...inch }, 8.3)) - 13.76)).toBeLessThan(0.02)
  })

  it('of M10x1.5, 15 mm deep, take 188 s in two passes (T-11)', () => {
    // Source: computed from the helix length and the feed formulas of a tool maker's threading handbook.
    const time = sound(
      threadMillingTime({
        ...{ gender: 'internal', diameterMm: 10, cutterMm: 7.5, pitchMm: 1.5, lengthMm: 15, teeth: 3 },
        ...{
          cuttingMPerMin: 60,
          feedPerToothMm: 0.03,
          passes: 2,
          linkSecondsPerPass: 2,
          spindleMaxRpm: null,
        },
      }),
    )
    near(time.rpm, 2546, 0.005)
    near(time.edgeFeedMmPerMin, 229.2, 0.005)
    near(time.feedMmPerMin, 57.3, 0.005)
    expect(time.turns).toBeCloseTo(11, 9)
    near(time.turnMm, 7.996, 0.0005)
    near(time.seconds, 188.2, 0.005)
    expect(time.worked[0]).toBe('n = 1000 x 60 m/min / (pi x 7.5 mm) = 2546 rpm')
  })

  it('of a single pass engage the whole thread depth where the cutter is small', () => {
    // Source: geometry: a cutter of no size feels half the difference of the diameters times (Dm + Dw)/(2 Dm).
    const found = sound(threadMillEngagementMm({ gender: 'internal', diameterMm: 10, cutterMm: 7.5 }, 8.376))
    expect(found).toBeCloseTo((100 - 8.376 ** 2) / 10, 9)
    expect(found).toBeGreaterThan((10 - 8.376) / 2)
  })
})

describe('tightening', () => {
  it('of M12 8.8 to 70 % of proof is 34 kN and 82 N m (T-13)', () => {
    // Source: a public worked example.
    const found = sound(
      tighteningTorque({
        majorMm: 12,
        stressAreaMm2: 84.3,
        proofMpa: 580,
        shareOfProof: 0.7,
        nutFactor: 0.2,
      }),
    )
    near(found.forceN, 34_230, 0.005)
    near(found.torqueNm, 82.1, 0.005)
  })
})

describe('stripping', () => {
  // Source: a public thread engagement calculation (basic sizes, shear at 0.6 of tension): M10 8.8 at 830 MPa in a
  // 310 MPa
  // aluminium hole, 10 mm deep: hole 51.13 kN, screw thread 98.29 kN, screw 48.13 kN, 9.414 mm are enough.
  const joint = {
    thread: thread('M10'),
    diameters: null,
    ...{ engagementMm: 10, screwStrengthMpa: 830, holeStrengthMpa: 310, shearShare: 0.6 },
  }

  it('of an 8.8 screw in aluminium agrees with a printed case', () => {
    const found = sound(stripStrength(joint))
    near(found.holeStripsN, 51_130, 0.001)
    near(found.screwStripsN, 98_290, 0.001)
    near(found.screwBreaksN, 48_130, 0.001)
    near(found.enoughEngagementMm, 9.414, 0.001)
    expect(found.first).toBe('screw breaks')
  })

  it('is likelier at the least sizes that the classes allow', () => {
    const [screw, hole] = [threadLimits(thread('M10-6g')), threadLimits(thread('M10-6H'))]
    if ('fault' in screw || 'fault' in hole) throw new Error('no limits')
    const least = sound(stripStrength({ ...joint, diameters: shearDiameters(screw, hole) }))
    expect(least.holeStripsN).toBeLessThan(sound(stripStrength(joint)).holeStripsN)
    expect(least.screwStripsN).toBeLessThan(sound(stripStrength(joint)).screwStripsN)
    expect(shearDiameters(hole, screw)).toBe(null)
  })

  it('comes first where the thread is shorter than enough', () => {
    expect(sound(stripStrength({ ...joint, engagementMm: 9 })).first).toBe('hole strips')
  })

  it('uses a stress area that agrees with the printed one', () => {
    near(stressAreaMm2(thread('M10')), 57.99, 0.0005)
  })
})
