import { type Caution, caution } from './caution.ts'

/** What is done to a material that its cautions depend on. */
export interface MaterialWork {
  /** Chips are made: cut, sawn, drilled, filed. */
  readonly cut: boolean
  /** Cut or cured, so that what it is made of matters. */
  readonly changed: boolean
}

/** A material as cautions know it. */
export interface NamedMaterial {
  /** Name in the project. */
  readonly name: string
  /** Key of the table of materials; `null`: it is in none. */
  readonly like: string | null
  /** Whether its entry in the project brings cautions of its own. */
  readonly hasOwn: boolean
}

/** The usual caution of a material; `givesWay`: words of the project stand in place of ours, the signs stay. */
export interface MaterialCaution extends Caution {
  readonly givesWay: boolean
}

interface Entry extends MaterialCaution {
  readonly likes: readonly string[]
  readonly words: RegExp
}

const wood =
  /\b(wood|plywood|ply|mdf|hdf|chipboard|hardboard|oak|beech|birch|maple|walnut|spruce|pine|balsa|bamboo)\b/i
const laminate =
  /\bfr-?4\b|\bg-?1[01]\b|\bgarolite\b|\b[cg]frp\b|\b(carbon|glass)[- ]?fib(re|er)|\bfib(re|er)glass\b|\bcarbon (plate|sheet|tube|rod)\b/i

/**
 * Usual cautions of materials when they are cut.
 * Source: magnesium, T.O. 1-1A-9; titanium, Isakov 2009; beryllium copper, a maker's hazard bulletins; fluoropolymers,
 * an industry guide on handling them; acetal, from memory; the rest and the choice of signs: common practice, no source.
 */
const entries: readonly Entry[] = [
  {
    ...caution(
      ['M004', 'M002', 'W021', 'P003', 'P011'],
      'fine chips burn: sharp tool, full feed, little swarf and dry; class D agent or dry sand at hand, never water on the fire',
    ),
    ...{ likes: ['magnesium'], words: /\bmagnesium\b|\baz\d{2}b?\b/i, givesWay: false },
  },
  {
    ...caution(
      ['M004', 'M002', 'W021', 'P003', 'P011'],
      'hot fine swarf burns: sharp tool, plenty of coolant, clear it often; class D agent at hand, never water on the fire',
    ),
    ...{ likes: ['titanium', 'titanium-grade-2'], words: /\btitanium\b|\bti-?6al/i, givesWay: false },
  },
  {
    ...caution(
      ['M017', 'M002', 'W016', 'P022'],
      'its dust harms the lungs for good: buy it finished if you can; no dry dust, no grinding without expert air control',
    ),
    ...{
      likes: ['beryllium-copper'],
      words: /\bberyllium\b|\bbe-?cu\b|\bcube2\b|\bc17\d00\b/i,
      givesWay: false,
    },
  },
  {
    ...caution(
      ['M004', 'W016', 'P002'],
      'overheated, it gives off toxic fume: keep the swarf cool, never burn it',
    ),
    ...{ likes: ['PTFE'], words: /\bptfe\b|\bteflon\b|\bfep\b|\bpfa\b|\bfluoropolymer\b/i, givesWay: false },
  },
  {
    ...caution(
      ['M004', 'W016', 'P002'],
      'overheated, it gives off formaldehyde and burns with a flame hard to see: clear chips, keep them cool',
    ),
    ...{ likes: ['POM'], words: /\bpom\b|\bacetal\b|\bdelrin\b/i, givesWay: false },
  },
  {
    ...caution(['M004', 'M016', 'W022', 'P022'], 'its dust irritates skin and lungs: cut wet or extract'),
    ...{ likes: ['FR-4'], words: laminate, givesWay: false },
  },
  {
    ...caution(
      ['M004', 'M016', 'M003', 'W021', 'P003'],
      'extract: its dust burns, and that of some woods causes cancer or asthma',
    ),
    ...{ likes: [], words: wood, givesWay: false },
  },
  {
    ...caution(
      ['M004', 'W022', 'M011'],
      'fine needle chips fly far and stick in skin; clamp the work, drills grab; wash off the lead',
    ),
    ...{ likes: ['brass', 'brass-cuzn37'], words: /\bbrass\b/i, givesWay: true },
  },
]

const unknown: MaterialCaution = {
  ...caution(
    ['W001', 'M002'],
    'not in the tables: ask its seller for the data sheet before it is cut or cured',
  ),
  givesWay: true,
}

/**
 * The usual cautions of a material: those of its entry in the table or of the words of its name where it is cut; of
 * one that nothing is known of and that brings none of its own, a request for its data sheet where it is cut or cured.
 */
export function materialCautions(
  { name, like, hasOwn }: NamedMaterial,
  work: MaterialWork,
): readonly MaterialCaution[] {
  const found = entries.filter((one) => (like !== null && one.likes.includes(like)) || one.words.test(name))
  if (like === null && found.length === 0) return work.changed && !hasOwn ? [unknown] : []
  return work.cut ? found : []
}

/** Metals whose fine dust burns. Source: common practice, no source. */
export function isLightMetal({ name, like }: Pick<NamedMaterial, 'name' | 'like'>): boolean {
  return (
    /^(al-|aluminium|magnesium|titanium)/.test(like ?? '') ||
    /\b(alumini?um|magnesium|titanium)\b/i.test(name)
  )
}
