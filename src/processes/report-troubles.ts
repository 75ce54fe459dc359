import type { Place } from '../base/place.ts'
import { prcCutting } from '../diagnostics/catalogue/prc-cutting.ts'
import type { Message, Report } from '../diagnostics/message.ts'
import type { Trouble } from '../trade/cutting/trouble.ts'

type Kind = Trouble['trouble']
type Of<K extends Kind> = Extract<Trouble, { trouble: K }>
/** The message of a trouble and its facts; `null`: not worth a word. */
type Told = readonly [Message<never>, object] | null
type Tellers = { readonly [K in Kind]: (trouble: Of<K>) => Told }

const told = <Facts>(entry: Message<Facts>, facts: Omit<Facts, 'op' | 'part'>): Told => [
  entry as Message<never>,
  facts,
]

/** What an edge is made of, in words. */
const edges = { hss: 'high-speed steel', carbide: 'carbide' } as const

const tellers: Tellers = {
  'above spindle': (t) =>
    told(prcCutting.spindleSpeed, { wanted: t.wantedRpm, limit: t.mostRpm, above: true }),
  'below spindle': (t) =>
    told(prcCutting.spindleSpeed, { wanted: t.wantedRpm, limit: t.leastRpm, above: false }),
  'feed above axis': (t) =>
    told(prcCutting.feedAboveAxis, { wanted: t.wantedMmPerMin, most: t.mostMmPerMin }),
  'too little power': (t) => told(prcCutting.tooLittlePower, { needs: t.needsW, has: t.hasW, unit: 'W' }),
  'too little torque': (t) =>
    told(prcCutting.tooLittlePower, { needs: t.needsNm, has: t.hasNm, unit: 'N m' }),
  // No force is known of it: the sums say so, and nothing can be checked.
  'power unknown': () => null,
  'past flutes': (t) => told(prcCutting.pastFlutes, { depth: t.depthMm, flutes: t.fluteMm }),
  'past reach': (t) => told(prcCutting.pastReach, { depth: t.depthMm, reach: t.reachMm }),
  'cutter too large': (t) =>
    told(prcCutting.cutterTooLarge, { of: t.of, cutter: t.cutterMm, room: t.roomMm }),
  'cutter of another size': (t) =>
    told(prcCutting.cutterOtherSize, { cutter: t.cutterMm, wanted: t.wantedMm }),
  'deep hole': (t) => told(prcCutting.deepHole, { ratio: t.ratio, beyond: t.beyond }),
  'chip too thin': (t) => told(prcCutting.chipOutOfRange, { chip: t.chipMm, limit: t.leastMm, thin: true }),
  'chip too thick': (t) => told(prcCutting.chipOutOfRange, { chip: t.chipMm, limit: t.mostMm, thin: false }),
  'feed is not the pitch': (t) =>
    told(prcCutting.feedNotPitch, { stated: t.statedMmPerMin, pitch: t.pitchMmPerMin }),
  'cutter bends': (t) => told(prcCutting.cutterBends, { by: t.byMm, most: t.mostMm }),
  'unsuited tool': (t) => told(prcCutting.unsuitedTool, { tool: edges[t.tool], material: t.group }),
  'thin wall': (t) => told(prcCutting.thinWall, { wall: t.wallMm, least: t.leastMm, height: t.heightMm }),
  'step wider than cutter': (t) => told(prcCutting.stepTooWide, { step: t.stepMm, cutter: t.cutterMm }),
  'pitch out of range': (t) =>
    told(prcCutting.pitchOutOfRange, { pitch: t.pitchMm, from: t.fromMm, to: t.toMm }),
  'wide thread mill': (t) => told(prcCutting.wideThreadMill, { cutter: t.cutterMm, most: t.mostMm }),
}

/** Says what stands against a cut, each trouble once. */
export function reportTroubles(
  troubles: readonly Trouble[],
  of: { readonly op: string; readonly part: string; readonly at: Place },
  report: Report,
): void {
  const { op, part, at } = of
  for (const trouble of troubles) {
    const teller = tellers[trouble.trouble] as (one: Trouble) => Told
    const said = teller(trouble)
    if (said) report(said[0], at, { op, part, ...said[1] } as never)
  }
}
