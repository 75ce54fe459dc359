import { describe, expect, it } from 'vitest'
import { calledByWords, isHighVoltage } from '../../../../src/trade/cautions/called-by-words.ts'

const nothing = { means: '', deed: '', aside: '', thing: '' }
const byMeans = (means: string) => calledByWords({ ...nothing, means })
const byDeed = (deed: string) => calledByWords({ ...nothing, deed })
const byThing = (thing: string) => calledByWords({ ...nothing, thing })

describe('words that call for cautions', () => {
  it('are found in the machine or tool: laser, oven, hot plate, lamp, solvent', () => {
    expect(byMeans('laser')).toEqual(['laser'])
    expect(byMeans('drying oven')).toEqual(['heat'])
    expect(byMeans('hot plate')).toEqual(['heat'])
    expect(byMeans('UV lamp')).toEqual(['lamp'])
    expect(byMeans('lint-free wipe, isopropyl alcohol')).toEqual(['solvent'])
    expect(byMeans('leak rig')).toEqual(['pressure'])
  })

  it('are found in what is done', () => {
    expect(byDeed('etch the mask in ferric chloride')).toEqual(['etching'])
    expect(byDeed('sand the layer lines, wash with IPA')).toEqual(['abrasives', 'solvent'])
    expect(byDeed('holds 3 bar for 5 min, no leak')).toEqual(['pressure'])
    expect(byDeed('glue the foot')).toEqual(['adhesive'])
    expect(byDeed('charge the li-ion pack')).toEqual(['lithium cell'])
  })

  it('are found in the thing that is put', () => {
    expect(byThing('battery 18650, 3.7 V')).toEqual(['lithium cell'])
    expect(byThing('inlet with mains filter')).toEqual(['high voltage'])
  })

  it('are not seen where a word only looks alike', () => {
    expect(byDeed('fill with lithium grease, lithium complex grease at the seal')).toEqual([])
    expect(byDeed('cut the bar, press by hand, check leakage current of the sensor')).toEqual([])
    expect(byDeed('align it with the laser pointer')).toEqual([])
    expect(byMeans('spirit level')).toEqual([])
    expect(byDeed('stretch the belt, sandwich the plate')).toEqual([])
  })

  it('of a note call for solvents alone, since a note may speak of other work', () => {
    expect(calledByWords({ ...nothing, aside: 'anodising comes later, then no leak at 3 bar' })).toEqual([])
    expect(calledByWords({ ...nothing, aside: 'wipe with acetone' })).toEqual(['solvent'])
  })
})

describe('high voltage', () => {
  it('is the mains, above 50 V ac, or above 120 V dc', () => {
    for (const words of [
      'on mains',
      '230 V',
      '115V',
      '60 V ac',
      '250 VAC',
      '150 V dc',
      '1.2 kV',
      '400 volts',
    ])
      expect(isHighVoltage(words), words).toBe(true)
  })

  it('is not what a bench supply gives', () => {
    for (const words of [
      '24 V limited to 300 mA',
      '48 V',
      '120 V dc',
      '48 V ac',
      '1000 views',
      'M12 vice',
      '',
    ])
      expect(isHighVoltage(words), words).toBe(false)
  })
})
