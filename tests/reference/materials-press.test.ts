import { describe, expect, it } from 'vitest'
import { slideOnTemperatureK } from '../../src/trade/fits/fit-temperature.ts'
import { type PressFit, type PressJoint, pressFit } from '../../src/trade/fits/press-fit.ts'
import { interferenceAt } from '../../src/trade/materials/thermal.ts'

const near = (got: number | null, wanted: number, share: number): void => {
  expect(Math.abs((got ?? Number.NaN) / wanted - 1), `${got} against ${wanted}`).toBeLessThanOrEqual(share)
}
const pressed = (joint: PressJoint, interferenceUm: number): PressFit => {
  const found = pressFit(joint, interferenceUm)
  if ('fault' in found) throw new Error(JSON.stringify(found))
  return found
}

const steel = (modulusMpa: number) => ({ modulusMpa, poisson: 0.3 })
const hub80 = (modulusMpa: number, friction: number): PressJoint => ({
  jointMm: 50,
  hubOuterMm: 80,
  shaftBoreMm: 0,
  lengthMm: 40,
  hub: steel(modulusMpa),
  shaft: steel(modulusMpa),
  friction,
})
const pin: PressJoint = {
  jointMm: 6,
  hubOuterMm: 14,
  shaftBoreMm: 0,
  lengthMm: 8,
  hub: { modulusMpa: 97_000, poisson: 0.34 },
  shaft: { modulusMpa: 205_000, poisson: 0.29 },
  friction: 0.12,
}

describe('press fits, worked examples', () => {
  // two published pages on a 50 mm shaft in an 80 mm hub, 0.04 mm.
  it.each([
    [200_000, 0.15, 48.75, 111.3, 45_950, 1149],
    [210_000, 0.12, 51.19, 116.8, 38_590, 965],
  ])(
    'steel of %d MPa with friction %d: %d MPa, hoop %d, %d N, %d N m',
    (modulus, friction, p, hoop, force, torque) => {
      const found = pressed(hub80(modulus, friction), 40)
      near(found.pressureMpa, p, 0.005)
      near(found.hubHoopMpa, hoop, 0.005)
      near(found.forceN, force, 0.005)
      near(found.torqueNm, torque, 0.005)
    },
  )

  // computed: a steel pin in a brass ring, cold and at 80 C.
  it('a 6 mm pin in brass holds 1376 N cold and keeps 51.95 of 76.04 MPa at 80 C', () => {
    const cold = pressed(pin, 10)
    near(cold.pressureMpa, 76.04, 0.005)
    near(cold.hubHoopMpa, 110.26, 0.005)
    near(cold.forceN, 1376, 0.005)
    near(cold.torqueNm, 4.13, 0.005)
    const left = interferenceAt(
      { interferenceMm: 0.01, diameterMm: 6 },
      { shaftPerMK: 11.7, hubPerMK: 20.5 },
      80,
    )
    near(pressed(pin, left! * 1000).pressureMpa, 51.95, 0.005)
  })

  // A-09, computed.
  it('a steel hub of 50 mm slips on with 0.02 mm play when 102.6 K hotter', () => {
    const hot = slideOnTemperatureK({
      jointMm: 50,
      interferenceUm: 40,
      playUm: 20,
      hubExpansionPerK: 11.7e-6,
    })
    if ('fault' in hot) throw new Error('out of domain')
    near(hot.hotterK, 102.6, 0.005)
  })

  // A-11, computed: 25 H7/p6, 1 and 35 micrometres, E 205 GPa, hub 50 mm.
  it('25 H7/p6 in steel presses with 3.08 to 107.6 MPa', () => {
    const joint = { ...hub80(205_000, 0.12), jointMm: 25, hubOuterMm: 50 }
    near(pressed(joint, 1).pressureMpa, 3.08, 0.01)
    near(pressed(joint, 35).pressureMpa, 107.6, 0.01)
  })
})
