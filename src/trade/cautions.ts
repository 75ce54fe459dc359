/** A usual caution: sign codes of ISO 7010 in text, and what to mind. */
export interface Caution {
  /** Sign codes with their meaning in our words. */
  readonly signs: readonly string[]
  readonly says: string
}

/**
 * Usual cautions by kind of work.
 * Source: sign numbers and meanings, ISO 7010:2019 as listed in open documentation, save W024, P028 and W026 to W028
 * (from memory); which signs go with which work: common practice, no source. Reminders, not a risk assessment.
 */
export const cautions = {
  cutting: {
    signs: [
      'M004 wear eye protection',
      'M002 read the manual',
      'W018 automatic start-up',
      'W022 sharp element',
      'P028 no gloves at the spindle',
    ],
    says: 'work clamped, guard shut, no loose sleeves or hair near a turning spindle; stop before reaching in',
  },
  sawing: {
    signs: [
      'M004 wear eye protection',
      'M003 wear ear protection',
      'W022 sharp element',
      'P028 no gloves at the blade',
    ],
    says: 'clamp the stock, push stick for short ends; the cut end is hot and sharp',
  },
  machine: {
    signs: ['M004 wear eye protection', 'M002 read the manual', 'W018 automatic start-up'],
    says: 'follow the manual of the machine; do not leave it running where the manual asks for somebody there',
  },
  edges: {
    signs: ['M004 wear eye protection', 'W022 sharp element'],
    says: 'fresh edges cut; file away from the hand',
  },
  abrasives: {
    signs: ['M004 wear eye protection', 'M016 wear a mask', 'W022 sharp element'],
    says: 'dust is the hazard: extract or work wet, and keep light-metal dust away from sparks',
  },
  resin: {
    signs: [
      'M009 wear protective gloves',
      'M004 wear eye protection',
      'W001 general warning',
      'P022 no eating or drinking',
    ],
    says: 'no skin contact with uncured resin; ventilate; cure waste before it is thrown away; see the data sheet of the resin',
  },
  solvent: {
    signs: [
      'M009 wear protective gloves',
      'W021 flammable material',
      'P003 no open flame or ignition source',
    ],
    says: 'small volumes, lids on, no ignition source, dry fully before heat; see the data sheet of the solvent',
  },
  lamp: {
    signs: ['M004 wear eye protection', 'W027 optical radiation'],
    says: 'lid closed while the lamp is on; do not look at it',
  },
  filament: {
    signs: ['M002 read the manual', 'W017 hot surface', 'W024 crushing of hands'],
    says: 'hot end and moving gantry; ventilate',
  },
  soldering: {
    signs: [
      'M004 wear eye protection',
      'M011 wash your hands',
      'W017 hot surface',
      'P022 no eating or drinking',
    ],
    says: 'extract the fume, park the iron, wash hands afterwards',
  },
  pressing: {
    signs: ['M004 wear eye protection', 'W024 crushing of hands'],
    says: 'start square, fingers clear, shield brittle parts',
  },
  adhesive: {
    signs: ['M009 wear protective gloves', 'M004 wear eye protection', 'W016 toxic material'],
    says: 'may sensitise skin; mix small amounts, mind the heat of curing; see the data sheet',
  },
  'first run': {
    signs: ['M004 wear eye protection', 'W018 automatic start-up', 'W024 crushing of hands'],
    says: 'low power first, hand on the switch, guard in place, limits checked before',
  },
} as const satisfies Record<string, Caution>

/** Name of a group of cautions. */
export type CautionKey = keyof typeof cautions

/** Printed under every block of cautions. Source: rule of this project. */
export const deferLine =
  'Reminder only: the safety data sheet of each substance, the manual of each machine, local codes and licensed practice rule. If unsure, stop and ask a competent person.'
