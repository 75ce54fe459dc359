import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'

/** PRC: what processes need and can do. */
export const prc = {
  noPrintTime: message<{ part: string; filament: boolean }>({
    code: 'PRC01',
    level: 'error',
    says: ({ part, filament }) =>
      `\`${part}\` has no print time, and no ${filament ? 'volume and height' : 'height'} to work it out from`,
    mend: ({ filament }) =>
      filament
        ? 'add `model:`, or `volume:` with `height:`, or `time:` to the part or its plate'
        : 'add `height:` or `model:` to the part, or `time:` to it or its plate',
    why: 'The print must be given minutes somehow. A printer that says what it `deposits` times a part by its `volume`.',
  }),
  plateDiffers: message<{ part: string; key: string; has: string; plate: string; wants: string }>({
    code: 'PRC02',
    level: 'error',
    says: ({ part, key, has, plate, wants }) =>
      `\`${part}\` has \`${key}: ${has}\`, but its plate \`${plate}\` has \`${wants}\``,
    mend: ({ part }) => `give \`${part}\` the same, or another plate`,
    why: 'One print job runs on one printer with one material.',
  }),
  nothingToMake: message<{ part: string; kind: string }>({
    code: 'PRC03',
    level: 'error',
    says: ({ part, kind }) => `\`${part}\` is ${kind} but nothing says from what`,
    mend: () => 'add `stock:` with a bar, plate or block',
    why: 'A machined part begins as a piece of stock that must be bought or on the shelf.',
  }),
  twoShapes: message<{ what: string; found: readonly string[]; shapes: readonly string[] }>({
    code: 'PRC04',
    level: 'error',
    says: ({ what, found, shapes }) =>
      `${what} must have one of ${nameList(shapes, 'or')}, but has ${found.length === 0 ? 'none' : nameList(found, 'and')}`,
    mend: ({ found, shapes }) =>
      found.length === 0
        ? `add one of ${nameList(shapes, 'or')}, such as \`bar: 20 mm\` with \`length: 18 mm\``
        : `keep ${nameList(found, 'or')}`,
    why: 'A piece of stock has one shape.',
  }),
  barWithoutLength: message<{ what: string; bar: string }>({
    code: 'PRC08',
    level: 'error',
    says: ({ what, bar }) => `${what} is a bar of ${bar}, but has no \`length\``,
    mend: () => 'add `length:`, such as `length: 18 mm`',
    why: 'A bar is cut, bought and paid by its length.',
  }),
  materialNotCounted: message<{ part: string; missing: 'material' | 'volume' }>({
    code: 'PRC09',
    level: 'warning',
    says: ({ part, missing }) =>
      `\`${part}\` has no \`${missing}\`, so what it is printed from is not counted and every total with it is incomplete`,
    mend: ({ missing }) =>
      missing === 'volume' ? 'add `volume:`, such as `volume: 8.5 cm3`' : 'add `material:`',
    why: 'The resin or filament of a print is money, and a bottle that runs out stops the work.',
  }),
  notComputed: message<{ what: string }>({
    code: 'PRC05',
    level: 'warning',
    says: ({ what }) => `${what} is kept but not computed by this version`,
    mend: () => 'check it by hand for now',
    why: 'Saying nothing would look like a passed check.',
  }),
  wrongMaterialForm: message<{ part: string; material: string }>({
    code: 'PRC06',
    level: 'error',
    says: ({ part, material }) =>
      `\`${part}\` uses a volume of \`${material}\`, which has no form sold by volume or mass`,
    mend: () => 'add a form with `volume:` (bottle) or `mass:` (spool) to the material',
    why: 'Printed parts draw on a bottle or spool that must be bought or on the shelf.',
  }),
  noDensity: message<{ material: string; part: string }>({
    code: 'PRC07',
    level: 'error',
    says: ({ material, part }) =>
      `\`${material}\` is sold by mass, \`${part}\` uses a volume, and its density is missing`,
    mend: () => 'add `density:` to the material, such as `1.24 g/cm3`',
    why: 'A spool by mass serves a volume only through the density.',
  }),
} as const
