import { describe, expect, it } from 'vitest'
import { check } from '../../../src/compile.ts'
import { binaryStl, box, moved, together } from '../../unit/geometry/solids.ts'
import { chopperMeshes, chopperText, withChopper } from './chopper-files.ts'

/** The text with one thing changed; it must be there just once. */
function changed(from: string, to: string): string {
  expect(chopperText.split(from)).toHaveLength(2)
  return chopperText.replace(from, to)
}

/** A step with lines put behind its name. */
const step = (name: string, more: string): string =>
  changed(`    - name: ${name}\n`, `    - name: ${name}\n${more}`)

function told(text: string, meshes: Readonly<Record<string, Uint8Array>> = {}): readonly string[] {
  const { diagnostics } = withChopper(check, text, meshes)
  return diagnostics.filter(({ code }) => code.startsWith('MSH')).map(({ code, says }) => `${code} ${says}`)
}

/** A binary STL file with every coordinate passed through a map. */
function remade(name: string, map: (coordinate: number, axis: number) => number): Record<string, Uint8Array> {
  const bytes = chopperMeshes.get(name)!.slice()
  const view = new DataView(bytes.buffer)
  for (let start = 84; start < bytes.length; start += 50)
    for (let i = 0; i < 9; i++) {
      const at = start + 12 + 4 * i
      view.setFloat32(at, map(view.getFloat32(at, true), i % 3), true)
    }
  return { [name]: bytes }
}

/** A box where the bearing block is, with walls of 5 mm and no opening. */
const hollowBlock = together(
  moved(box(60, 58, 51), ([x, y, z]) => [x - 30, y, z]),
  // Turned over by the mirror: its faces look inward.
  moved(box(50, 48, 41), ([x, y, z]) => [25 - x, y + 5, z + 5]),
)

describe('the shipped chopper', () => {
  it('has nothing in which the meshes and the text differ', () => {
    expect(told(chopperText)).toEqual([])
  })
})

describe('a mistake put into the chopper is told', () => {
  it.each<[string, RegExp, () => readonly string[]]>([
    [
      'a motor from the front',
      /^MSH10 `motor` cannot go in from `front` \(-y\)/,
      () => told(step('fit motor', '      from: front\n')),
    ],
    [
      'a washer through the front',
      /^MSH11 `front` is no opening of `bearing block` for `wave washer`/,
      () =>
        told(
          changed(
            'put: wave washer, in: bearing block, through: rear',
            'put: wave washer, in: bearing block, through: front',
          ),
        ),
    ],
    [
      'a cover that nobody said keeps the screws of the block out',
      /^MSH12 step `shut belly` shuts more than was said: it also keeps `screw M4x20`/,
      () =>
        told(
          changed(
            '      before_last_of: [base.underside]     # the heads are in the pocket: before the last step that shuts it\n',
            '',
          ),
        ),
    ],
    [
      'a bearing block saved hollow and closed',
      /^MSH13 `bearing` at \[0, 32, 26\] mm \(step `fit rear bearing`\) cannot go in by any straight way: it is free for [\d.]+ mm along \+x/,
      () => told(chopperText, { 'motor-block.stl': binaryStl(hollowBlock) }),
    ],
    [
      'a rotor after its guard',
      /^MSH14 the typed order leaves `rotor head` no way in at step `fit rotor`/,
      () =>
        told(
          changed(
            '      after: [fit speed board]\n      tool: torque driver\n      torque: 0.5 N m\n      time: 6 min',
            '      before: [fit rotor]\n      tool: torque driver\n      torque: 0.5 N m\n      time: 6 min',
          )
            .replace('      before: [fit guard]\n', '')
            .replace(
              '      after: [fit rotor]                   # the fork slides over the rim from the side\n',
              '',
            ),
        ),
    ],
    [
      'a bracket 3 mm above the base',
      /^MSH15 step `fit bracket` joins `sensor bracket` to `base`, but nowhere do they touch/,
      () =>
        told(
          chopperText,
          remade('sensor-bracket.stl', (x, axis) => (axis === 2 ? x + 3 : x)),
        ),
    ],
    [
      'a step that does not say what a board goes on',
      /^MSH16 `speed board` touches `sensor bracket`/,
      () => told(changed('      put: speed board\n      on: sensor bracket\n', '      put: speed board\n')),
    ],
    [
      'a screw where no hole is',
      /^MSH17 `(motor block|screw M4x20|base)` and `(motor block|screw M4x20|base)` lie in each other (3\.\d|4) mm wide/,
      () => told(changed('{at: [22 mm, 10 mm, -10 mm], turn', '{at: [15 mm, 10 mm, -10 mm], turn')),
    ],
    [
      'a cap that nothing holds',
      /^MSH18 nothing holds `window cap`/,
      () =>
        told(
          changed(
            'put: window cap, on: bearing block, by: snap',
            'put: window cap, on: bearing block, by: seat',
          ),
        ),
    ],
    [
      'a foot forgotten',
      /^MSH19 `foot` stands in 3 places, the steps of one device put 4/,
      () => told(changed('      - {at: [-35 mm, 108 mm, -21 mm]}\n', '')),
    ],
    [
      'a motor saved in metres',
      /^MSH21 the mesh of `motor` touches nothing/,
      () =>
        told(
          chopperText,
          remade('motor.stl', (x) => x / 1000),
        ),
    ],
    [
      'a guard saved the other way round',
      /^MSH17 `(guard|motor block)` and/,
      () =>
        told(
          chopperText,
          remade('guard.stl', (x, axis) => (axis === 1 ? 24 - x : x)),
        ),
    ],
  ])('%s', (_, words, tell) => {
    const all = tell()
    expect(
      all.filter((one) => words.test(one)),
      all.join('\n'),
    ).not.toEqual([])
  })
})
