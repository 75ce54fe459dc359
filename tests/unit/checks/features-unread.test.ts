import { describe, expect, it } from 'vitest'
import { featuresUnread } from '../../../src/checks/features-unread.ts'
import { bought, projectText, saidBy } from './bench-project.ts'

const codesOf = (text: string): string[] =>
  saidBy(featuresUnread, projectText([bought('hub', `x: "${text}"`)])).codes

describe('the text of a feature', () => {
  it.each([
    ...['6 H7', '4.2 ± 0.05 mm', 'M14x1-6H depth 6 mm', '12 +0.1/-0.02 mm', '25.021 / 25.000', '10-32'],
    ...['1/4-20 UNC-2B', '1/4 in H7', 'Ø6 H7', '25', '#4-40', '10-12 mm'],
  ])('`%s` is a thread or a size and earns no word', (text) => {
    expect(codesOf(text)).toEqual([])
  })

  it.each(['R2', 'Ra 0.8', 'knurled', '3 holes', '0.5 x 45°', '22 x 14 mm', 'G1/4', 'Tr8x1.5', '1/4 NPT'])(
    '`%s` is plainly neither and earns no word',
    (text) => {
      expect(codesOf(text)).toEqual([])
    },
  )

  it.each([
    ['M14-1', 'FIT01'],
    ['M14x1,5', 'FIT01'],
    ['M8x1-6H/6g', 'FIT01'],
    ['m6x1', 'FIT01'],
    ['6 H77', 'FIT02'],
    ['6 h6/H7', 'FIT02'],
    ['12 +0.1 mm', 'FIT02'],
    ['6 H7 reamed', 'FIT03'],
    ['8 j6', 'FIT04'],
    ['150 H7', 'FIT04'],
    ['M14x0.8-6H', 'FIT05'],
  ])('`%s` earns %s', (text, code) => {
    expect(codesOf(text)).toEqual([code])
  })

  it('is not called at fault for a letter of ISO 286 of which no table is held, but for one that it has not', () => {
    expect(codesOf('8 x8')).toEqual(['FIT04'])
    expect(codesOf('8 q6')).toEqual(['FIT02'])
  })
})
