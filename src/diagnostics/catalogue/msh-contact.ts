import { nameList } from '../../base/near-names.ts'
import { message } from '../message.ts'
import { atPlace, firstOf, mm, type WhereSaid, waysList } from './msh-words.ts'
import type { Way } from './way-words.ts'

/** MSH: what meshes in assembled place say of what touches, overlaps, holds and is missing. */
export const mshContact = {
  noContact: message<{
    step: string
    part: string
    other: string
    touches: readonly string[]
    where: WhereSaid | null
    gapMm: number
  }>({
    code: 'MSH15',
    level: 'warning',
    says: ({ step, part, other, touches, where, gapMm }) =>
      `step \`${step}\` joins \`${part}\`${atPlace(where)} to \`${other}\`, but nowhere do they touch: they are ${mm(gapMm)} apart${touches.length > 0 ? `; it touches ${nameList(touches.slice(0, 4), 'and')}` : ''}`,
    mend: ({ touches }) =>
      touches.length > 0
        ? `write the part that it touches, or correct size or place`
        : 'correct the place of the mesh, or its unit',
    why: 'What is joined touches, but for some play. A part in another place, of another unit or an older revision does not.',
  }),
  contactWithoutJoin: message<{ step: string; part: string; touches: readonly string[] }>({
    code: 'MSH16',
    level: 'warning',
    says: ({ step, part, touches }) =>
      `\`${part}\` touches ${nameList(touches.slice(0, 4), 'and')}, but step \`${step}\` does not say what it goes on or how it is held`,
    mend: ({ touches }) => `add \`on: ${touches[0] ?? 'body'}\` and \`by\` to the step`,
    why: 'What holds a part is part of the plan: tools, torque, and what comes apart again.',
  }),
  overlap: message<{
    part: string
    other: string
    widthMm: number
    mostMm: number | null
    leaking: readonly string[]
    where: WhereSaid | null
  }>({
    code: 'MSH17',
    level: 'warning',
    says: ({ part, other, widthMm, mostMm, leaking, where }) =>
      `\`${part}\` and \`${other}\` lie in each other ${mm(widthMm)} wide${atPlace(where)}, ${
        mostMm === null ? 'and no join explains it' : `more than their join explains (${mm(mostMm)})`
      }${leaking.length > 0 ? `; the width is doubtful, as ${leaking.length > 1 ? 'both meshes leak' : `the mesh of ${nameList(leaking, 'and')} leaks`}` : ''}`,
    mend: ({ mostMm, leaking }) =>
      `${leaking.length > 0 ? 'repair the mesh, ' : ''}${
        mostMm === null
          ? 'correct size or place, or say how they are joined (`by: press` or `thread`; where a step joins the part to something else too, `mates` names a feature of each)'
          : 'draw the hole, or correct the place'
      }`,
    why: 'Press fits overlap by less than half a millimetre as drawn, threads and snaps by less than one. Anything else cannot be put together.',
  }),
  loose: message<{ step: string; part: string; directions: readonly Way[] }>({
    code: 'MSH18',
    level: 'warning',
    says: ({ step, part, directions }) =>
      `nothing holds \`${part}\` (step \`${step}\`) in the finished device: it leaves along ${waysList(directions)}`,
    mend: () => 'say what holds it (`by`, `with`), or give what holds it a mesh',
    why: 'With everything in place, its fasteners too, no part stands in its way and no join keeps it.',
  }),
  farOff: message<{ part: string; where: readonly WhereSaid[]; nearest: string; gapMm: number }>({
    code: 'MSH21',
    level: 'warning',
    says: ({ part, where, nearest, gapMm }) =>
      `the mesh of \`${part}\`${where.slice(0, 3).map(atPlace).join(' and')} touches nothing in the device: ${gapMm > 0 ? `nearest is \`${nearest}\`, ${mm(gapMm)} away` : `it is a speck in \`${nearest}\``}`,
    mend: () => 'correct its place; a mesh saved in metres or inches is to be saved again in millimetres',
    why: 'Every part of a device touches another.',
  }),
  noMesh: message<{
    parts: readonly string[]
    carries: readonly string[]
    isBase: boolean
    drawn: number
    steps: number
  }>({
    code: 'MSH22',
    level: 'warning',
    says: ({ parts, carries, isBase, drawn, steps }) => {
      const has = `${firstOf(parts, 6)} ${parts.length === 1 ? 'has' : 'have'} no mesh in place, while ${drawn} of ${steps} steps put parts that have one`
      const first = parts[0] ?? ''
      const goes = `${firstOf(carries, 4)} ${carries.length === 1 ? 'goes' : 'go'} on or in \`${first}\``
      if (isBase) return `${has}; \`${first}\` is the base, so the order may well be one that cannot be done`
      return carries.length > 0
        ? `${has}; ${goes}, so the order may well be one that cannot be done`
        : `${has}: where they come in the order rests on what is typed`
    },
    mend: ({ parts }) =>
      `give \`${parts[0] ?? ''}\` a \`model\` and a \`place\` (or an object of that name in the \`assembled\` file), or check its steps by hand`,
    why: "What has no mesh is in nobody's way. A plain block or cylinder of its size is enough.",
  }),
  oddScale: message<{
    why: 'small' | 'large' | 'apart'
    sizeMm: WhereSaid
    parts: number
    apart: number
  }>({
    code: 'MSH23',
    level: 'warning',
    says: ({ why, sizeMm, parts, apart }) => {
      const size = sizeMm.map((one) => Number(one.toPrecision(2))).join(' x ')
      if (why === 'apart') return `${apart} of ${parts} bodies touch nothing in the device`
      return why === 'small'
        ? `the whole device measures ${size} mm by its meshes, and none of its parts as much as 5 mm`
        : `the whole device measures ${size} mm by its meshes, and none of its ${parts} parts less than 120 mm`
    },
    mend: ({ why }) =>
      why === 'apart'
        ? 'save each mesh where it stands in the device, not as it is printed, or give it a `place`; all in millimetres'
        : 'save the meshes again in millimetres (an inch is 25.4, a metre 1000)',
    why: 'A mesh file has no unit, or the wrong one. The other findings on meshes are left out until that is put right.',
  }),
} as const
