/** What the edge of a cutter is made of. */
export type CutterTool = 'hss' | 'carbide'

/** Family of work materials that share starting speeds and chip loads. */
export type MaterialGroup =
  | 'aluminium'
  | 'magnesium'
  | 'brass'
  | 'copper'
  | 'low-carbon steel'
  | 'medium-carbon steel'
  | 'alloy steel'
  | 'tool steel'
  | 'hardened steel'
  | 'austenitic stainless'
  | 'titanium'
  | 'cast iron'
  | 'plastic'
  | 'laminate'
