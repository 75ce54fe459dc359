import { message } from '../message.ts'

/** A figure with three digits. */
const fig = (value: number): string =>
  Math.abs(value) >= 1000 ? String(Math.round(value)) : String(Number(value.toPrecision(3)))
const sizes = (all: readonly number[]): string => `${all.map(fig).join(' x ')} mm`

/** PRC: what the mesh of a part says against the rest. */
export const prcModel = {
  meshLeaks: message<{ file: string; found: readonly string[]; usable: boolean }>({
    code: 'PRC60',
    level: 'warning',
    says: ({ file, found, usable }) =>
      `the mesh \`${file}\` has ${found.join(' and ')}${usable ? '' : ', so its volume is not used'}`,
    mend: ({ usable }) =>
      usable ? 'repair the mesh where it is drawn' : 'repair the mesh, or state `finished: {volume: …}`',
    why: 'Only a closed surface with all faces outward has a volume.',
  }),
  statedDiffers: message<{ what: string; stated: string; mesh: string; percent: number }>({
    code: 'PRC61',
    level: 'warning',
    says: ({ what, stated, mesh, percent }) =>
      `the finished ${what} is stated as ${stated}, the mesh has ${mesh}: ${fig(percent)} % apart`,
    mend: ({ what }) => `remove \`${what}\` to take that of the mesh, or save the mesh again in millimetres`,
    why: 'What is stated is used. One of the two is of another revision, or in another unit.',
  }),
  pastStock: message<{ part: string; has: readonly number[]; stock: string; over: number }>({
    code: 'PRC62',
    level: 'warning',
    says: ({ part, has, stock, over }) =>
      `\`${part}\` is ${sizes(has)}, its stock is ${stock}: ${fig(over)} mm too small`,
    mend: ({ over }) => `take stock at least ${fig(over)} mm larger, or turn the mesh to lie along its stock`,
    why: 'A part cannot be larger than the piece it is cut from. The box is taken along the axes of the mesh.',
  }),
  moreThanStock: message<{ part: string; finished: number; stock: number }>({
    code: 'PRC63',
    level: 'error',
    says: ({ part, finished, stock }) =>
      `\`${part}\` has a finished volume of ${fig(finished / 1000)} cm3, its stock only ${fig(stock / 1000)} cm3`,
    mend: () => 'take larger stock, or correct the finished volume',
    why: 'Cutting only takes away.',
  }),
  figureOutside: message<{ of: string; what: string; value: number; must: string }>({
    code: 'PRC64',
    level: 'error',
    says: ({ of, what, value, must }) =>
      `${of} cannot be worked out: its ${what} is ${Number(value.toPrecision(3))}, but must be ${must}`,
    mend: ({ what }) => `correct the ${what}, or what it follows from`,
    why: 'A slip of a unit or of a nought makes times and amounts that mean nothing.',
  }),
} as const
