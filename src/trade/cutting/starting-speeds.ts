import type { CutterTool, MaterialGroup } from './types.ts'

/** How a cutter meets the work, as far as starting speeds tell it apart. */
export type CutterUse = 'drill' | 'turn' | 'mill'

/** Range of cutting speeds to begin in. */
export interface StartingSpeed {
  readonly leastMPerMin: number
  readonly mostMPerMin: number
  readonly source: string
}

const tutorial = 'tutorial tables of nominal cutting speeds, HSS'
const manual = 'operator manual of a small milling machine, HSS speeds'
const maker = 'solid carbide milling guide 2022 and general catalogue 2020-2021'
const memory = 'from memory'

type Row = readonly [least: number, most: number, source: string]
type Rows = Readonly<Partial<Record<MaterialGroup, Readonly<Partial<Record<CutterUse, Row>>>>>>

/**
 * Starting cutting speeds for high-speed steel.
 * Source: tutorial tables of nominal speeds; a milling machine's manual where they are silent; three groups from
 * memory.
 * The tutorial's 195 to 390 m/min for drills in aluminium are feet per minute left unconverted: 60 to 120 m/min.
 */
const hss: Rows = {
  aluminium: {
    drill: [60, 120, `${tutorial}, read as ft/min`],
    turn: [60, 150, tutorial],
    mill: [60, 150, tutorial],
  },
  brass: { drill: [60, 75, tutorial], turn: [45, 120, tutorial], mill: [60, 150, tutorial] },
  copper: { drill: [30, 60, memory], turn: [30, 60, memory], mill: [30, 60, memory] },
  'low-carbon steel': { drill: [30, 36, tutorial], turn: [25, 45, tutorial], mill: [25, 35, tutorial] },
  'medium-carbon steel': { drill: [20, 25, memory], turn: [20, 30, memory], mill: [18, 25, memory] },
  'alloy steel': { drill: [14, 20, memory], turn: [15, 20, memory], mill: [14, 20, memory] },
  'austenitic stainless': { drill: [6, 15, tutorial], turn: [9, 18, tutorial], mill: [9, 20, tutorial] },
  'tool steel': { drill: [15, 15, manual], turn: [15, 15, manual], mill: [15, 15, manual] },
  titanium: { drill: [15, 15, manual], turn: [15, 15, manual], mill: [15, 15, manual] },
  'cast iron': { drill: [25, 35, tutorial], turn: [22, 30, tutorial], mill: [15, 30, tutorial] },
  plastic: { drill: [20, 75, tutorial], turn: [9, 120, tutorial], mill: [20, 160, tutorial] },
}

/** Starting cutting speeds for solid carbide end mills. Source: makers' guides; where marked, trade usage or memory. */
const carbide: Rows = {
  aluminium: { mill: [300, 750, maker] },
  brass: { mill: [150, 300, 'common practice, no source (small machines; charts print 245 to 455)'] },
  copper: { mill: [100, 200, memory] },
  'low-carbon steel': { mill: [140, 300, maker] },
  'medium-carbon steel': { mill: [100, 200, memory] },
  'alloy steel': { mill: [80, 150, memory] },
  'austenitic stainless': { mill: [60, 110, maker] },
  'tool steel': { mill: [70, 130, `${maker}, quenched and tempered`] },
  titanium: { mill: [20, 90, maker] },
  'cast iron': { mill: [150, 275, maker] },
  plastic: { mill: [100, 300, 'common practice, no source'] },
}

/**
 * Cutting speeds to begin with for an edge, a use and a work material, or `null` where no table gives one.
 * HSS end mills run 40 % below the milling table (it is for plain and face cutters); carbide turns at three times HSS.
 * Source: both rules stand in the tutorial tables; the range is theirs, whoever starts takes its low end.
 */
export function startingSpeed(tool: CutterTool, use: CutterUse, group: MaterialGroup): StartingSpeed | null {
  const row = (tool === 'hss' ? hss : carbide)[group]?.[use]
  if (row)
    return tool === 'hss' && use === 'mill' ? scaled(row, 0.6, '40 % off for end mills') : scaled(row, 1, '')
  const turned = tool === 'carbide' && use === 'turn' ? hss[group]?.turn : undefined
  return turned ? scaled(turned, 3, 'three times for carbide') : null
}

function scaled([least, most, source]: Row, factor: number, why: string): StartingSpeed {
  return {
    leastMPerMin: least * factor,
    mostMPerMin: most * factor,
    source: why === '' ? source : `${source}, ${why}`,
  }
}

/** Whether an edge is of a stuff that can cut a work material at all. Source: common practice, no source. */
export function toolSuits(tool: CutterTool, group: MaterialGroup): boolean {
  return tool === 'carbide' || (group !== 'hardened steel' && group !== 'laminate')
}
