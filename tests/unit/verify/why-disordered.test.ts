import { describe, expect, test } from 'vitest'
import type { AssemblyPlan, Step } from '../../../src/model/assembly.ts'
import { whyDisordered } from '../../../src/verify/why-disordered.ts'
import {
  waiting as after,
  here,
  into,
  onto,
  ordersOf as orders,
  plan,
  put,
  step,
  toOpening,
  toStep,
} from '../planning/assembly/bench-steps.ts'

const opening = (body: string, name: string) => ({ body, opening: name, at: here })

const kept = (of: AssemblyPlan) =>
  orders(of.steps.map(({ id }) => id)).filter((order) => !whyDisordered(of, order))

describe('published products', () => {
  // The ball-point pen, liaisons 1 cap-body, 2 head-body, 3 head-tube, 4 ink-tube, 5 button-body: 12 sequences.
  // Source: A. Bourjault, thesis, Universite de Franche-Comte, 1984; count from memory, rules reconstructed.
  const pen = (rule: (...of: string[]) => Partial<Step>) =>
    plan([
      step('1'),
      step('2', { before: [toStep('1')] }),
      step('3', { before: [toStep('4')], ...rule('2', '5') }),
      step('4', rule('2', '5')),
      step('5'),
    ])

  test('the ball-point pen has its twelve orders', () => {
    const twelve = '21345 23145 23415 23451 32145 32415 32451 34215 34251 34521 35421 53421'
    // Order of liaisons 2 before 3 needs "before the last of 2 and 5" and not "before each".
    const found = kept(pen((...of) => ({ beforeLastOf: of.map(toStep) }))).map((order) => order.join(''))
    expect(found.sort()).toEqual(twelve.split(' ').sort())
  })

  test('the pen flattened to "before each" keeps three orders only', () => {
    const each = plan([
      step('1'),
      step('2', { before: [toStep('1')] }),
      step('3', { before: ['4', '2', '5'].map(toStep) }),
      step('4', { before: ['2', '5'].map(toStep) }),
      step('5'),
    ])
    expect(kept(each)).toHaveLength(3)
  })

  // Source: L. S. Homem de Mello and A. C. Sanderson, AAAI-86 (product from memory): of its ten sequences those that
  // build on the receptacle one part at a time are cap stick handle, handle stick cap, stick cap handle, stick
  // handle cap.
  test('the stick goes into the receptacle before both its ends are shut', () => {
    const product = plan(
      [
        step('cap', { ...put('cap'), ...onto('receptacle'), shuts: [opening('receptacle', 'left')] }),
        step('stick', { ...put('stick'), ...into('receptacle') }),
        step('handle', { ...put('handle'), ...onto('receptacle'), shuts: [opening('receptacle', 'right')] }),
      ],
      { receptacle: ['left', 'right'] },
    )
    expect(kept(product).map((order) => order.join(' '))).toEqual([
      'cap stick handle',
      'stick cap handle',
      'stick handle cap',
      'handle stick cap',
    ])
  })
})

describe('the stirrer goes together as written, and each statement is missed when it is broken:', () => {
  const stirrer = plan(
    [
      step('bearing', { ...put('bearing'), ...into('base', 'top') }),
      step('hub', { ...put('hub'), ...into('base', 'top') }),
      step('pin', { ...put('pin'), ...into('hub'), within: 10 }),
      step('board', { ...put('board'), ...into('base', 'bottom') }),
      step('trim', { action: 'trim', reaches: [{ text: 'board', at: here }] }),
      step('screw', { ...put('screw'), ...onto('board'), needs: [toStep('trim')] }),
      step('cover', { ...put('cover'), ...onto('base'), shuts: [opening('base', 'bottom')] }),
      step('lid', { ...put('lid'), ...into('base', 'top'), shuts: [opening('base', 'top')] }),
      step('seal', { action: 'seal', after: [after(toStep('lid'))] }),
      step('test', { test: 'turns', beforeLastOf: [toOpening('base', 'bottom'), toOpening('base', 'top')] }),
      step('mark', { action: 'mark', before: [toOpening('base', 'bottom')] }),
    ],
    { base: ['top', 'bottom'], hub: ['bore'] },
  )
  const good = 'mark bearing hub pin board trim screw test cover lid seal'.split(' ')

  const moved = (id: string, behind: string | null): string[] => {
    const rest = good.filter((other) => other !== id)
    rest.splice(behind === null ? 0 : rest.indexOf(behind) + 1, 0, id)
    return rest
  }

  test('the order itself', () => {
    expect(whyDisordered(stirrer, good)).toBeNull()
  })

  test('the step that shuts may put something in, and a test may follow the first of two covers', () => {
    expect(whyDisordered(stirrer, moved('test', 'cover'))).toBeNull()
  })

  test.each<[string, string[], RegExp]>([
    ['a step left out', good.slice(1), /`mark` is missing/],
    ['a step twice', [...good, 'lid'], /`lid` stands twice/],
    ['a step unknown', [...good, 'nap'], /`nap` is in the order but not/],
    ['pin without hub', moved('pin', null), /`pin` needs `hub`, which is not there yet/],
    ['screw without board', moved('screw', null), /`screw` needs `board`, which is not there yet/],
    [
      'board through a shut bottom',
      moved('cover', 'mark'),
      /`board` goes into `base`, but `base.bottom` is shut/,
    ],
    ['hub behind its pin', moved('hub', 'lid'), /`pin` needs `hub`/],
    [
      'pin into a hub inside a shut base',
      moved('pin', 'seal'),
      /`pin` goes into `hub`, but `base` is shut all round/,
    ],
    ['screw before trim', moved('trim', 'screw'), /`screw` comes before `trim`, against `needs`/],
    ['seal before lid', moved('seal', 'mark'), /`seal` comes before `lid`, against `after`/],
    ['mark after cover', moved('mark', 'cover'), /`mark` comes after `cover`, against `before`/],
    [
      'test after both covers',
      moved('test', 'lid'),
      /`test` comes after `lid`, the last of `before_last_of`/,
    ],
    ['trim without board', moved('trim', null), /`trim` must reach `board`, which is not there yet/],
    ['trim after cover', moved('cover', 'board'), /`trim` must reach `board`, which is shut in/],
  ])('%s', (_name, order, sentence) => {
    expect(String(whyDisordered(stirrer, order))).toMatch(sentence)
  })

  test('a step with a longest wait comes after the step written before it', () => {
    const glued = plan([step('glue'), step('join', { within: 10 })])
    expect(whyDisordered(glued, ['join', 'glue'])).toMatch(/`join` comes before `glue`, against `within`/)
  })
})

describe('enclosures', () => {
  const nested = (facts: Partial<Step> = {}) =>
    plan(
      [
        step('inner', { ...put('inner'), ...into('outer') }),
        step('pin', { ...put('pin'), ...into('inner'), ...facts }),
        step('lid', { ...put('lid'), ...onto('outer'), shuts: [opening('outer', 'top')] }),
      ],
      { inner: ['bore'], outer: ['top'] },
    )

  test('what goes into a body passes the enclosure around it', () => {
    expect(whyDisordered(nested(), ['inner', 'lid', 'pin'])).toBe(
      'step `pin` goes into `inner`, but `outer` is shut all round (line 1)',
    )
    expect(whyDisordered(nested(), ['inner', 'pin', 'lid'])).toBeNull()
  })

  test('`through` names the way into the body, not into what is around it', () => {
    expect(whyDisordered(nested(into('inner', 'bore')), ['inner', 'pin', 'lid'])).toBeNull()
    expect(whyDisordered(nested(into('inner', 'bore')), ['inner', 'lid', 'pin'])).toMatch(/`outer` is shut/)
  })

  test('an enclosure not yet placed around it restricts nothing', () => {
    const loose = plan(
      [
        step('lid', { ...put('lid'), ...onto('outer'), shuts: [opening('outer', 'top')] }),
        step('pin', { ...put('pin'), ...into('inner') }),
      ],
      { inner: ['bore'], outer: ['top'] },
    )
    expect(whyDisordered(loose, ['lid', 'pin'])).toBeNull()
  })

  test('an opening that nothing shuts restricts nothing', () => {
    const open = plan([step('lid', put('lid')), step('pin', { ...put('pin'), ...into('base', 'top') })], {
      base: ['top'],
    })
    expect(kept(open)).toHaveLength(2)
  })

  test('with two steps that shut it an opening is open until the last of them', () => {
    const half = (id: string) => step(id, { ...put(id), ...onto('base'), shuts: [opening('base', 'top')] })
    const two = plan([half('left'), half('right'), step('pin', { ...put('pin'), ...into('base') })], {
      base: ['top'],
    })
    expect(whyDisordered(two, ['left', 'pin', 'right'])).toBeNull()
    expect(whyDisordered(two, ['left', 'right', 'pin'])).toMatch(/`base` is shut all round/)
  })
})

describe('a written `open` step', () => {
  const reopened = plan(
    [
      step('cover', { ...put('cover'), ...onto('base'), shuts: [opening('base', 'top')] }),
      step('uncover', { action: 'lift the cover', opens: [opening('base', 'top')] }),
      step('pin', { ...put('pin'), ...into('base') }),
    ],
    { base: ['top'] },
  )

  test.each([
    ['cover uncover pin', null],
    ['pin cover uncover', null],
    ['cover pin uncover', /`pin` goes into `base`, but `base` is shut all round/],
    ['uncover cover pin', /`uncover` opens `base.top`, which is not shut/],
  ])('%s', (order, sentence) => {
    const says = whyDisordered(reopened, order.split(' '))
    if (sentence === null) expect(says).toBeNull()
    else expect(says).toMatch(sentence)
  })
})
