/** What the label of a substance says: pictograms and hazard statements of GHS. */
export interface SubstanceLabel {
  readonly names: readonly string[]
  readonly pictograms: readonly PictogramCode[]
  /** Codes of hazard statements; the data sheet of what is bought rules. */
  readonly statements: readonly StatementCode[]
  /** Whether the codes were read in data sheets; else they are from memory. */
  readonly seen: boolean
}

/** Pictograms of GHS, each with what it stands for in our words. Source: public pages on GHS, three of them. */
export const pictograms = {
  GHS01: 'may explode',
  GHS02: 'burns',
  GHS03: 'feeds a fire',
  GHS04: 'gas under pressure',
  GHS05: 'burns skin and eyes, eats metal',
  GHS06: 'poison',
  GHS07: 'irritates, or may sensitise the skin',
  GHS08: 'harms health in the long run',
  GHS09: 'harms water life',
} as const

/** Code of a pictogram of GHS. */
export type PictogramCode = keyof typeof pictograms

/** Hazard statements named here, in our words. Source: GHS, from memory; H225, H319 and H336, data sheets of 2-propanol. */
export const statements = {
  H225: 'liquid and vapour catch fire very easily',
  H228: 'solid that burns easily',
  H252: 'large amounts may heat themselves and burn',
  H261: 'gives off flammable gas with water',
  H290: 'may eat metal',
  H302: 'harmful if swallowed',
  H314: 'burns skin and eyes severely',
  H315: 'irritates the skin',
  H317: 'may make the skin allergic',
  H318: 'harms the eyes severely',
  H319: 'irritates the eyes severely',
  H335: 'may irritate the airways',
  H336: 'may make drowsy or dizzy',
  H350i: 'may cause cancer if breathed in',
  H372: 'harms organs if met often or long',
  H411: 'toxic to water life, for long',
} as const

/** Code of a hazard statement. */
export type StatementCode = keyof typeof statements

/** Usual labels of substances of the bench. Source: data sheets of 2-propanol; the rest from memory. */
export const substanceLabels: readonly SubstanceLabel[] = [
  {
    names: ['isopropyl alcohol', 'isopropanol', '2-propanol', 'IPA'],
    pictograms: ['GHS02', 'GHS07'],
    statements: ['H225', 'H319', 'H336'],
    seen: true,
  },
  {
    names: ['acetone'],
    pictograms: ['GHS02', 'GHS07'],
    statements: ['H225', 'H319', 'H336'],
    seen: false,
  },
  {
    names: ['acrylate resin', 'photopolymer resin'],
    pictograms: ['GHS07', 'GHS09'],
    statements: ['H315', 'H317', 'H319', 'H335', 'H411'],
    seen: false,
  },
  {
    names: ['magnesium turnings', 'magnesium swarf'],
    pictograms: ['GHS02'],
    statements: ['H228', 'H252', 'H261'],
    seen: false,
  },
  {
    names: ['beryllium alloy dust'],
    pictograms: ['GHS08', 'GHS07'],
    statements: ['H317', 'H350i', 'H372'],
    seen: false,
  },
  { names: ['rosin flux', 'rosin'], pictograms: ['GHS07'], statements: ['H317'], seen: false },
  {
    names: ['ferric chloride'],
    pictograms: ['GHS05', 'GHS07'],
    statements: ['H290', 'H302', 'H315', 'H318'],
    seen: false,
  },
  {
    names: ['epoxy resin'],
    pictograms: ['GHS07', 'GHS09'],
    statements: ['H315', 'H317', 'H319', 'H411'],
    seen: false,
  },
  {
    names: ['amine hardener', 'epoxy hardener'],
    pictograms: ['GHS05', 'GHS07', 'GHS09'],
    statements: ['H314', 'H317', 'H411'],
    seen: false,
  },
]

/** The usual label of a substance by one of its names, in any case; `null`: it is not in the table. */
export function labelOf(name: string): SubstanceLabel | null {
  const folded = name.trim().toLowerCase()
  return substanceLabels.find(({ names }) => names.some((one) => one.toLowerCase() === folded)) ?? null
}
