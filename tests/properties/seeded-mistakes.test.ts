import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { check } from '../../src/compile.ts'
import type { Diagnostic } from '../../src/diagnostics/message.ts'

const projects = join(import.meta.dirname, '../../projects')
const sources = {
  chopper: { folder: join(projects, 'optical-chopper'), file: 'optical-chopper.yaml' },
  pump: { folder: join(projects, 'dosing-pump'), file: 'dosing-pump.yaml' },
} as const
type Demo = keyof typeof sources

const textOf = (demo: Demo): string => readFileSync(join(sources[demo].folder, sources[demo].file), 'utf8')

function findings(demo: Demo, text: string): readonly Diagnostic[] {
  const { folder } = sources[demo]
  return check('-', { folder, root: projects, stdin: Buffer.from(text) }).diagnostics
}

/** A slip of the pen in a sound project: what is typed instead of what, and what must be said of which line. */
interface Mistake {
  readonly slip: string
  readonly demo: Demo
  /** Text replaced, each found once; the step it stands in is named first where the text alone is not unique. */
  readonly edits: readonly (readonly [from: string, to: string, inStep?: string])[]
  readonly code: string
  /** The line that the message points at: the first one with this text after the edits, or after the step named. */
  readonly line: readonly [text: string, inStep?: string]
}

const mistakes: readonly Mistake[] = [
  {
    slip: 'the cap shuts nothing',
    demo: 'chopper',
    edits: [[', by: snap, shut: bearing block.window', ', by: snap']],
    code: 'ASM05',
    line: ['through: window'],
  },
  {
    slip: 'the belly plate shuts nothing',
    demo: 'chopper',
    edits: [['      shut: base.underside\n', '']],
    code: 'ASM05',
    line: ['before_last_of: [base.underside]'],
  },
  {
    slip: 'the coupling is clamped through a window that has its cap on',
    demo: 'chopper',
    edits: [['after: [fit motor]\n      tool', 'after: [fit motor, fit cap]\n      tool']],
    code: 'ASM02',
    line: ['through: window'],
  },
  {
    slip: 'bearing and rotor each wait for the other',
    demo: 'chopper',
    edits: [['after: [fit washer]', 'after: [fit washer, fit rotor]']],
    code: 'ASM02',
    line: ['after: [fit washer, fit rotor]'],
  },
  {
    slip: 'the spindle is glued after the wheel that waits for it',
    demo: 'chopper',
    edits: [
      [
        '        within: 15 min                     # of',
        '        after: [lock wheel]\n        within: 15 min # of',
      ],
    ],
    code: 'ASM02',
    line: ['after: [lock wheel]'],
  },
  {
    slip: 'the guard is on before the test that comes before the guard',
    demo: 'chopper',
    edits: [['after: [plug sensor, fit cable holders', 'after: [fit guard, plug sensor, fit cable holders']],
    code: 'ASM02',
    line: ['after: [fit guard, plug sensor'],
  },
  {
    slip: 'nobody holds the loose bearing when the block is turned',
    demo: 'chopper',
    edits: [['; a thumb keeps bearing and wave washer in', '']],
    code: 'ASM14',
    line: ['- name: fit rotor'],
  },
  {
    slip: 'four screws for the three threads of the guard',
    demo: 'chopper',
    edits: [['with: screw M3x8 x3', 'with: screw M3x8 x4', 'fit guard']],
    code: 'ASM15',
    line: ['with: screw M3x8 x4', 'fit guard'],
  },
  {
    slip: 'three screws for the belly plate, and a thread of the base is left empty',
    demo: 'chopper',
    edits: [['with: screw M3x8 x4', 'with: screw M3x8 x3', 'shut belly']],
    code: 'ASM15',
    line: ['with: screw M3x8 x3'],
  },
  {
    slip: 'two screws for three cable holders',
    demo: 'chopper',
    edits: [['with: screw M3x8 x3', 'with: screw M3x8 x2', 'fit cable holders']],
    code: 'ASM15',
    line: ['with: screw M3x8 x2', 'fit cable holders'],
  },
  {
    slip: 'a belly plate glued, and turned up before it has cured',
    demo: 'chopper',
    edits: [['by: screw\n      with: screw M3x8 x4', 'by: glue', 'shut belly']],
    code: 'ASM13',
    line: ['name: fit washer'],
  },
  {
    slip: 'a motor glued in, with a bearing behind it that wears',
    demo: 'chopper',
    edits: [['by: screw\n      with: screw M4x20\n', 'by: glue\n      cure: 12 h\n', 'fit motor']],
    code: 'ASM16',
    line: ['  bearing:\n'],
  },
  {
    slip: 'the guard is pressed on, with the board in place',
    demo: 'chopper',
    edits: [['by: screw\n      with: screw M3x8 x3', 'by: press', 'fit guard']],
    code: 'ASM12',
    line: ['- name: fit guard'],
  },
  {
    slip: 'the coupling is adjusted when front, rear and window are shut',
    demo: 'chopper',
    edits: [
      ['do: tighten the coupling', 'do: adjust the coupling'],
      [
        '      in: bearing block\n      through: window                      # so it comes before the cap\n      after: [fit motor]',
        '      after: [fit cap]',
      ],
    ],
    code: 'ASM10',
    line: ['- name: clamp coupling'],
  },
  {
    slip: 'no step puts the bracket that the board goes on',
    demo: 'chopper',
    edits: [['put: sensor bracket', 'do: hold the bracket against', 'fit bracket']],
    code: 'ASM06',
    line: ['on: sensor bracket'],
  },
  {
    slip: 'two steps shut the same window',
    demo: 'chopper',
    edits: [
      [
        'after: [fit speed board]\n',
        'after: [fit speed board]\n      shut: bearing block.window\n',
        'fit guard',
      ],
    ],
    code: 'ASM04',
    line: ['shut: bearing block.window', 'fit guard'],
  },
  {
    slip: 'an opening that the base does not have',
    demo: 'chopper',
    edits: [['through: underside', 'through: top', 'fit loom']],
    code: 'REF06',
    line: ['through: top'],
  },
  {
    slip: 'a step misspelt',
    demo: 'chopper',
    edits: [['after: [shut belly]', 'after: [shut bely]']],
    code: 'REF01',
    line: ['after: [shut bely]'],
  },
  {
    slip: 'a screw of a length that nobody buys',
    demo: 'chopper',
    edits: [['with: screw M4x20 x4', 'with: screw M4x22 x4']],
    code: 'REF01',
    line: ['with: screw M4x22 x4'],
  },
  {
    slip: 'the lid shuts nothing',
    demo: 'pump',
    edits: [['      shut: housing.back\n', '']],
    code: 'ASM05',
    line: ['through: back', 'fit drive'],
  },
  {
    slip: 'the piston is coupled through the back when the back is shut',
    demo: 'pump',
    edits: [
      ['after: [fit wet end]\n      tool', 'after: [fit wet end, shut back]\n      tool', 'couple piston'],
    ],
    code: 'ASM02',
    line: ['after: [fit wet end, shut back]'],
  },
  {
    slip: 'the wet end waits for the electronics that wait for it',
    demo: 'pump',
    edits: [['after: [fit drive]', 'after: [fit drive, fit electronics]']],
    code: 'ASM02',
    line: ['after: [fit drive, fit electronics]'],
  },
  {
    slip: 'clip and feet each wait for the other',
    demo: 'pump',
    edits: [['by: glue, after: [shut back], turn', 'by: glue, after: [fit clip], turn']],
    code: 'ASM02',
    line: ['after: [fit clip], turn'],
  },
  {
    slip: 'five screws for the four threads of the head',
    demo: 'pump',
    edits: [['with: screw M3x30 x4', 'with: screw M3x30 x5']],
    code: 'ASM15',
    line: ['with: screw M3x30 x5'],
  },
  {
    slip: 'a lid glued on, and turned upright at once',
    demo: 'pump',
    edits: [['by: screw\n      with: screw M3x8 x4', 'by: glue', 'shut back']],
    code: 'ASM13',
    line: ['name: fit feet'],
  },
  {
    slip: 'a lid glued on over a drive with bushes that wear',
    demo: 'pump',
    edits: [['by: screw\n      with: screw M3x8 x4', 'by: glue\n      cure: 6 h', 'shut back']],
    code: 'ASM16',
    line: ['  bush:\n'],
  },
  {
    slip: 'the first strokes are made when the lid is glued on',
    demo: 'pump',
    edits: [
      ['by: screw\n      with: screw M3x8 x4', 'by: glue\n      cure: 6 h', 'shut back'],
      ['after: [first strokes]', 'after: [plug in]'],
      ['after: [plug in, fit tubing]', 'after: [shut back, plug in, fit tubing]'],
      ['      before_last_of: [housing.back]       # before the step that shuts the back\n', ''],
    ],
    // The leak test comes first of all tests then.
    code: 'ASM11',
    line: ['- name: leak test'],
  },
  {
    slip: 'the gland is glued over the seal that wears',
    demo: 'pump',
    edits: [['by: thread', 'by: glue\n        cure: 6 h', 'fit gland']],
    code: 'ASM16',
    line: ['  piston seal:\n'],
  },
  {
    slip: 'the inserts are pressed in cold over the electronics',
    demo: 'pump',
    edits: [
      [
        'fixture: cradle\n      tool: iron with tip',
        'after: [fit electronics]\n      tool: arbor press',
        'set inserts',
      ],
      ['after: [set inserts]', 'after: []', 'fit drive'],
    ],
    code: 'ASM12',
    line: ['- name: set inserts'],
  },
  {
    slip: 'the piston waits for the test that is made with it',
    demo: 'pump',
    edits: [['after: [fit gland]', 'after: [fit gland, water test]']],
    code: 'ASM02',
    line: ['after: [fit gland, water test]'],
  },
]

/** Where a text stands, at or after the step of a name. */
function placeOf(text: string, wanted: string, inStep?: string): number {
  const from = inStep === undefined ? 0 : text.indexOf(`name: ${inStep}\n`)
  const at = from < 0 ? -1 : text.indexOf(wanted, from)
  if (at < 0) throw new Error(`not in the project: ${wanted}`)
  return at
}

function slipped({ demo, edits }: Mistake): string {
  return edits.reduce((text, [from, to, inStep]) => {
    const at = placeOf(text, from, inStep)
    if (inStep === undefined && text.indexOf(from, at + 1) >= 0) throw new Error(`more than once: ${from}`)
    return text.slice(0, at) + to + text.slice(at + from.length)
  }, textOf(demo))
}

describe('the shipped projects', () => {
  it.each(Object.keys(sources) as Demo[])('earn no finding of their own: %s', (demo) => {
    expect(findings(demo, textOf(demo))).toEqual([])
  })
})

describe('a seeded mistake is told on its line', () => {
  it.each(mistakes.map((mistake) => [`${mistake.demo}: ${mistake.slip}`, mistake] as const))(
    '%s',
    (_, mistake) => {
      const text = slipped(mistake)
      const [wanted, inStep] = mistake.line
      const line = text.slice(0, placeOf(text, wanted, inStep)).split('\n').length
      const said = findings(mistake.demo, text).map(({ code, at, notes }) => ({
        code,
        lines: [at.line, ...(code === 'ASM01' || code === 'ASM02' ? notes.map((note) => note.at.line) : [])],
      }))
      const fitting = said.filter(({ code, lines }) => code === mistake.code && lines.includes(line))
      expect(fitting.length, `${mistake.code} on ${line}, but ${JSON.stringify(said)}`).toBeGreaterThan(0)
    },
  )
})
