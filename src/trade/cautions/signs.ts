/**
 * Safety signs that cautions name, each with its meaning in our words.
 * Source: ISO 7010:2019, numbers and titles as listed in open documentation; W024, W026, W027 and P028 from memory.
 */
export const signs = {
  M002: 'read the manual',
  M003: 'wear ear protection',
  M004: 'wear eye protection',
  M006: 'disconnect the mains plug',
  M009: 'wear protective gloves',
  M010: 'wear protective clothing',
  M011: 'wash your hands',
  M013: 'wear a face shield',
  M016: 'wear a mask',
  M017: 'wear respiratory protection',
  W001: 'general warning',
  W004: 'laser beam',
  W012: 'electricity',
  W016: 'toxic material',
  W017: 'hot surface',
  W018: 'automatic start-up',
  W021: 'flammable material',
  W022: 'sharp element',
  W023: 'corrosive substance',
  W024: 'crushing of hands',
  W026: 'battery charging',
  W027: 'optical radiation',
  P002: 'no smoking',
  P003: 'no open flame or ignition source',
  P010: 'do not touch',
  P011: 'do not extinguish with water',
  P022: 'no eating or drinking',
  P028: 'do not wear gloves',
} as const satisfies Readonly<Record<string, string>>

/** Code of a safety sign: M must do, W warning, P prohibition. */
export type SignCode = keyof typeof signs
