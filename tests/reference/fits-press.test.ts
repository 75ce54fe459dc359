import { describe, expect, it } from 'vitest'
import { fitOf } from '../../src/trade/fits/fit.ts'
import { freeingTemperatureK, slideOnTemperatureK } from '../../src/trade/fits/fit-temperature.ts'
import { type PressJoint, pressFit, pressFitRange } from '../../src/trade/fits/press-fit.ts'
import { readSize } from '../../src/trade/fits/read-size.ts'
import { sizeLimits } from '../../src/trade/fits/size-limits.ts'

const steel = { modulusMpa: 200_000, poisson: 0.3 }
const joint: PressJoint = {
  ...{ jointMm: 50, hubOuterMm: 80, shaftBoreMm: 0, lengthMm: 40 },
  ...{ hub: steel, shaft: steel, friction: 0.15 },
}

function sound<T extends object>(value: T): Exclude<T, { readonly fault: string }> {
  if ('fault' in value) throw new Error(JSON.stringify(value))
  return value as Exclude<T, { readonly fault: string }>
}

const near = (found: number, wanted: number, share: number): void =>
  expect(Math.abs(found / wanted - 1)).toBeLessThan(share)

describe('press fits of thick cylinders', () => {
  it('of a 50 mm steel shaft in an 80 mm steel hub with 40 um agree with a printed case', () => {
    // Source: a public press-fit calculation: 48.75 MPa, 45 950 N, 1149 N m, 111.3 MPa.
    const found = sound(pressFit(joint, 40))
    near(found.pressureMpa, 48.75, 0.0005)
    near(found.forceN, 45_950, 0.0005)
    near(found.torqueNm, 1149, 0.0005)
    near(found.hubHoopMpa, 111.3, 0.0005)
  })

  it('of the same parts at 210 GPa and friction 0.12 agree with another', () => {
    // Source: a second public calculation: 51.2 MPa, 38.6 kN, 965 N m, 117 MPa; 25.6 MPa at 20 um.
    const stiffer = { modulusMpa: 210_000, poisson: 0.3 }
    const other = { ...joint, hub: stiffer, shaft: stiffer, friction: 0.12 }
    const found = sound(pressFit(other, 40))
    near(found.pressureMpa, 51.2, 0.002)
    near(found.forceN, 38_600, 0.002)
    near(found.torqueNm, 965, 0.002)
    near(sound(pressFit(other, 20)).pressureMpa, 25.6, 0.002)
  })

  it('of hollow shafts and mixed materials meet at the same diameter', () => {
    // Source: Lamé displacements worked out apart: u = A r + B / r with the boundary pressures (textbook elasticity).
    const mixed = {
      ...{ ...joint, shaftBoreMm: 20 },
      ...{ hub: { modulusMpa: 70_000, poisson: 0.33 }, shaft: { modulusMpa: 210_000, poisson: 0.3 } },
    }
    const { pressureMpa: p, shaftHoopMpa } = sound(pressFit(mixed, 30))
    const moves = (inner: number, outer: number, [pIn, pOut]: readonly [number, number], m: typeof steel) => {
      const span = outer ** 2 - inner ** 2
      const a = (pIn * inner ** 2 - pOut * outer ** 2) / span
      const b = ((pIn - pOut) * inner ** 2 * outer ** 2) / span
      return (((1 - m.poisson) * a + ((1 + m.poisson) * b) / 25 ** 2) * 25) / m.modulusMpa
    }
    const gap = moves(25, 40, [p, 0], mixed.hub) - moves(10, 25, [0, p], mixed.shaft)
    expect(2 * gap).toBeCloseTo(0.03, 9)
    // Hoop stress a + b / r^2 at the bore of the shaft, both parts alike there.
    expect(shaftHoopMpa).toBeCloseTo((2 * -p * 25 ** 2) / (25 ** 2 - 10 ** 2), 9)
  })

  it('run from nothing to the full pressure over a transition fit', () => {
    const of = (text: string) => sound(sizeLimits(sound(readSize(text))))
    const range = sound(
      pressFitRange(fitOf(of('6 H7'), of('6 m6')), { ...joint, jointMm: 6, hubOuterMm: 12, lengthMm: 6 }),
    )
    expect(range.least.pressureMpa).toBe(0)
    expect(range.most.pressureMpa).toBeGreaterThan(0)
  })
})

describe('temperature and fits', () => {
  it('frees an aluminium hub on a steel shaft on heating, a steel hub on aluminium on cooling', () => {
    // Source: computed: 0.02 mm / ((23 - 12) 1e-6 x 20 mm) = 90.9 K.
    const given = { jointMm: 20, interferenceUm: 20, hubExpansionPerK: 23e-6, shaftExpansionPerK: 12e-6 }
    const heated = freeingTemperatureK(given)
    if (!heated || 'fault' in heated) throw new Error('no answer')
    expect(heated.changeK).toBeCloseTo(90.9, 1)
    const cooled = freeingTemperatureK({ ...given, hubExpansionPerK: 12e-6, shaftExpansionPerK: 23e-6 })
    if (!cooled || 'fault' in cooled) throw new Error('no answer')
    expect(cooled.changeK).toBeCloseTo(-90.9, 1)
    expect(freeingTemperatureK({ ...given, shaftExpansionPerK: 23e-6 })).toBe(null)
  })

  it('lets a hub slide on when it is hot enough for interference and play', () => {
    // Source: computed: (48 + 12) um / (12e-6 x 30 mm) = 166.7 K.
    const given = { jointMm: 30, interferenceUm: 48, playUm: 12, hubExpansionPerK: 12e-6 }
    expect(sound(slideOnTemperatureK(given)).hotterK).toBeCloseTo(166.7, 1)
  })
})
