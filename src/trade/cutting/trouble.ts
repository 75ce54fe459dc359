import type { CutterTool, MaterialGroup } from './kinds.ts'

/**
 * What a cut asks that cutter, work or machine cannot give, as facts with both numbers.
 * Gives: only finite numbers; no sentence, which is for the catalogue to say.
 */
export type Trouble =
  | { readonly trouble: 'above spindle'; readonly wantedRpm: number; readonly mostRpm: number }
  | { readonly trouble: 'below spindle'; readonly wantedRpm: number; readonly leastRpm: number }
  | { readonly trouble: 'feed above axis'; readonly wantedMmPerMin: number; readonly mostMmPerMin: number }
  | { readonly trouble: 'too little power'; readonly needsW: number; readonly hasW: number }
  | { readonly trouble: 'too little torque'; readonly needsNm: number; readonly hasNm: number }
  | { readonly trouble: 'power unknown'; readonly missing: readonly string[] }
  | { readonly trouble: 'past flutes'; readonly depthMm: number; readonly fluteMm: number }
  | { readonly trouble: 'past reach'; readonly depthMm: number; readonly reachMm: number }
  | {
      readonly trouble: 'cutter too large'
      readonly of: 'bore' | 'corner' | 'pocket' | 'thread'
      readonly cutterMm: number
      readonly roomMm: number
    }
  | { readonly trouble: 'cutter of another size'; readonly cutterMm: number; readonly wantedMm: number }
  | { readonly trouble: 'deep hole'; readonly ratio: number; readonly beyond: 3 | 5 | 10 }
  | { readonly trouble: 'chip too thin'; readonly chipMm: number; readonly leastMm: number }
  | { readonly trouble: 'chip too thick'; readonly chipMm: number; readonly mostMm: number }
  | {
      readonly trouble: 'feed is not the pitch'
      readonly statedMmPerMin: number
      readonly pitchMmPerMin: number
    }
  | { readonly trouble: 'cutter bends'; readonly byMm: number; readonly mostMm: number }
  | { readonly trouble: 'unsuited tool'; readonly tool: CutterTool; readonly group: MaterialGroup }
  | {
      readonly trouble: 'thin wall'
      readonly wallMm: number
      readonly leastMm: number
      readonly heightMm: number
    }
  | { readonly trouble: 'step wider than cutter'; readonly stepMm: number; readonly cutterMm: number }
  | {
      readonly trouble: 'pitch out of range'
      readonly pitchMm: number
      readonly fromMm: number
      readonly toMm: number
    }
  | { readonly trouble: 'wide thread mill'; readonly cutterMm: number; readonly mostMm: number }
