import { describe, expect, it } from 'vitest'
import { benchTold } from '../../report/bench-told.ts'

const { cautions } = benchTold().results
const topics = (all: readonly { readonly topic: string }[] = []) => all.map(({ topic }) => topic)

describe('the cautions of a plan', () => {
  it('name each kind of work of a route once, then its material', () => {
    expect(topics(cautions.parts.get('base'))).toEqual(['cutting', 'edges', 'brass'])
  })

  it('call for resin, solvent and lamp at a vat print that is washed and cured', () => {
    expect(topics(cautions.plates.get('p1'))).toEqual(['resin', 'solvent', 'lamp', 'resin'])
  })

  it('name the steps of a checklist that call for them', () => {
    const said = cautions.assemblies.get('')!.map(({ topic, steps }) => [topic, steps])
    expect(said).toEqual([
      ['adhesive', ['glue ring']],
      ['tube', ['glue ring']],
      ['pressing', ['close']],
      ['first run', ['spin']],
    ])
  })
})
