import { nameList, nearNames } from '../../base/near-names.ts'
import { message } from '../message.ts'
import { atPlace, firstOf, mm, nameOr, type WhereSaid, way, waysList } from './msh-words.ts'
import type { Way } from './way-words.ts'

/** What to type for `from` where other ways are free; a tilted way has no word for it. */
const freeInstead = (free: readonly Way[]): string =>
  typeof free[0] === 'number'
    ? `write \`from: "${way(free[0])}"\`${free.length > 1 ? ` (free are ${waysList(free)})` : ''}`
    : `take \`from\` out (free ${free.length > 1 ? 'are' : 'is'} ${waysList(free)})`

const sayTyped = (from: string | null, givesMm: number | null): string => {
  if (from === null && givesMm === null) return ''
  const said = [
    from === null ? 'no `from`' : `\`from: ${from}\``,
    givesMm === null ? 'no `gives`' : `\`gives: ${mm(givesMm)}\``,
  ]
  return `; typed: ${said.join(', ')}`
}

interface Blocker {
  readonly part: string
  readonly widthMm: number
}

/** MSH: what meshes in assembled place say against what is typed. */
export const msh = {
  noSuchPart: message<{ file: string; objects: readonly string[]; parts: readonly string[] }>({
    code: 'MSH02',
    level: 'warning',
    says: ({ file, objects }) =>
      `\`${file}\` holds ${objects.length === 1 ? 'an object' : 'objects'} of which no part has the name: ${firstOf(objects, 8)}`,
    mend: ({ objects, parts }) => {
      const near = objects.slice(0, 8).flatMap((object) => {
        const names = nearNames(object, parts)
        return names.length > 0 ? [{ object, names }] : []
      })
      if (near.length === 0) return 'name each object like its part'
      const said = near.map(({ object, names }) => `\`${object}\` ${nameList(names, 'or')}`)
      return objects.length === 1
        ? `did you mean ${nameList(near[0]!.names, 'or')}? Name each object like its part`
        : `name each object like its part: for ${said.join(', for ')}`
    },
    why: 'Objects are known by the names of parts; an object with another name stands for nothing. Upper case, `_` for a space and the number of a copy behind the name are no hindrance.',
  }),
  placeOfNothing: message<{ part: string }>({
    code: 'MSH03',
    level: 'warning',
    says: ({ part }) => `\`${part}\` has a \`place\` but no \`model\` that could stand there`,
    mend: () => 'add `model:` with the mesh, or take `place` out',
    why: 'A place is where the mesh of a part stands in the device.',
  }),
  objectLeaks: message<{ file: string; object: string; found: readonly string[] }>({
    code: 'MSH04',
    level: 'warning',
    says: ({ file, object, found }) => `the object \`${object}\` of \`${file}\` has ${found.join(' and ')}`,
    mend: () => 'repair the object where it is drawn',
    why: 'Leaks are bridged from what lies beside them, so small ones do no harm; large ones hide what is in the way.',
  }),
  fromBlocked: message<{
    step: string
    part: string
    from: string
    direction: Way
    by: Blocker
    broughtBy: string | null
    free: readonly Way[]
  }>({
    code: 'MSH10',
    level: 'warning',
    says: ({ step, part, from, direction, by }) =>
      `\`${part}\` cannot go in from \`${from}\` (${way(direction)}) in step \`${step}\`: \`${by.part}\` is in the way, ${mm(by.widthMm)} wide`,
    mend: ({ step, free, broughtBy }) =>
      nameOr([
        ...(free.length === 0 ? [] : [freeInstead(free)]),
        ...(broughtBy === null ? [] : [`put \`${step}\` before \`${broughtBy}\``]),
        'say how much the part `gives`',
      ]),
    why: "The meshes show something in the way at the step's turn. What is typed is kept in the plan.",
  }),
  fromMisspelt: message<{ step: string; from: string; near: readonly string[] }>({
    code: 'MSH24',
    level: 'warning',
    says: ({ step, from }) => `\`from: ${from}\` of step \`${step}\` names no direction`,
    mend: ({ near }) => `did you mean ${nameList(near, 'or')}?`,
    why: 'Directions are the axes (`-y`) and the words front, rear, left, right, top and bottom. Other words are for the reader alone.',
  }),
  noOpening: message<{
    step: string
    part: string
    body: string
    opening: string | null
    direction: Way | null
    widthMm: number
  }>({
    code: 'MSH11',
    level: 'warning',
    says: ({ step, part, body, opening, direction, widthMm }) =>
      direction === null
        ? `\`${part}\` goes into \`${body}\` in step \`${step}\`, but the meshes show no straight way out of it`
        : `\`${opening}\` is no opening of \`${body}\` for \`${part}\` (step \`${step}\`): \`${body}\` itself is in the way at ${way(direction)}, ${mm(widthMm)} wide`,
    mend: () => 'name the opening that it passes, or correct the mesh or its place',
    why: 'A part leaves a body through an opening where nothing of the body stops it.',
  }),
  shutsMore: message<{
    lid: string
    part: string
    step: string
    body: string
    direction: Way
    widthMm: number
    opening: string | null
    isShut: boolean
    through: 'on' | 'said' | 'silent'
  }>({
    code: 'MSH12',
    level: 'warning',
    says: ({ lid, part, step, body, direction, widthMm, isShut, through }) =>
      isShut && through !== 'on'
        ? `step \`${lid}\` keeps \`${part}\` (step \`${step}\`) from going into \`${body}\`, at ${way(direction)} ${mm(widthMm)} wide, and \`${step}\` does not say so`
        : `step \`${lid}\` shuts more than was said: it also keeps \`${part}\` (step \`${step}\`) from going in, at ${way(direction)} ${mm(widthMm)} wide`,
    mend: ({ lid, step, body, opening, isShut, through }) => {
      const passes =
        through === 'on'
          ? `add \`before: [${lid}]\` to \`${step}\``
          : opening === null
            ? `say in \`through\` of \`${step}\` which opening of \`${body}\` it passes`
            : `write \`through: ${opening}\` in \`${step}\``
      if (isShut || opening === null || through === 'on') return `${passes}, or correct the mesh`
      const shut = `add \`${body}.${opening}\` to the \`shut\` of \`${lid}\``
      return through === 'said' ? `${shut}, or correct the mesh` : `${shut}, and ${passes}`
    },
    why: 'The plan heeds it: the part goes in before. Typed openings are what a reader of the checklist sees.',
  }),
  cannotLeave: message<{
    step: string
    part: string
    where: WhereSaid | null
    travel: readonly { direction: Way; mm: number | null; by: string | null; widthMm: number }[]
    together: readonly string[]
    from: string | null
    givesMm: number | null
  }>({
    code: 'MSH13',
    level: 'warning',
    says: ({ step, part, where, travel, from, givesMm }) =>
      `\`${part}\`${atPlace(where)} (step \`${step}\`) cannot go in by any straight way: it is free for ${travel
        .map(
          (one) =>
            `${one.mm === null ? 'any way' : mm(one.mm)} along ${way(one.direction)}${one.by === null ? '' : ` (\`${one.by}\`, ${mm(one.widthMm)} wide)`}`,
        )
        .join(', ')}${sayTyped(from, givesMm)}`,
    mend: ({ together, givesMm }) =>
      together.length > 0
        ? `fit it together with ${nameList(together, 'and')} beforehand, as a part of kind assembly; or say \`from\` and how much it \`gives\`; or it is tilted in`
        : givesMm === null
          ? 'say `from` and how much it `gives` where it bends (as wide as the stop on that side); where it is tilted or turned in, leave this as it is; else correct the mesh or its place'
          : 'let `from` name the side and `gives` be as wide as the stop there; where it is tilted or turned in, leave this as it is; else correct the mesh or its place',
    why: 'Straight moves are tried, along the axes of the device and of tilted parts. The order of this step rests on what is typed.',
  }),
  orderBlocked: message<{
    step: string
    part: string
    where: WhereSaid | null
    by: readonly { part: string; step: string; direction: Way; widthMm: number }[]
    typed: boolean
  }>({
    code: 'MSH14',
    level: 'warning',
    says: ({ step, part, where, by, typed }) =>
      `${typed ? 'the typed order leaves' : 'no order was found that leaves'} \`${part}\`${atPlace(where)} ${typed ? 'no way' : 'a way'} in at step \`${step}\`: ${by
        .map((one) => `${way(one.direction)} \`${one.part}\` (\`${one.step}\`), ${mm(one.widthMm)} wide`)
        .join('; ')}`,
    mend: ({ step, by, typed }) =>
      typed
        ? `put \`${step}\` before ${nameList([...new Set(by.map((one) => one.step))], 'or')}`
        : `correct the mesh or the place of what is in the way; where the part bends, say \`from\` and how much it \`gives\``,
    why: 'Typed facts win over meshes, and where the meshes leave no order either, the plan keeps one that cannot be done as drawn.',
  }),
  count: message<{ part: string; drawn: number; put: number; shells: boolean }>({
    code: 'MSH19',
    level: 'warning',
    says: ({ part, drawn, put, shells }) =>
      shells
        ? `the mesh of \`${part}\` has ${drawn} ${drawn === 1 ? 'shell' : 'shells'}, the steps of one device put ${put}`
        : `\`${part}\` stands in ${drawn} ${drawn === 1 ? 'place' : 'places'}, the steps of one device put ${put}`,
    mend: ({ shells }) =>
      shells
        ? 'save all copies in one file, or give one mesh of one copy and a `place` for each'
        : 'give a `place` for each copy, or correct the count of the step',
    why: 'Copies without a mesh are not in the way of anything and in no picture.',
  }),
  toolRoom: message<{ step: string; part: string; by: readonly string[]; radiusMm: number; reachMm: number }>(
    {
      code: 'MSH20',
      level: 'warning',
      says: ({ step, part, by, radiusMm, reachMm }) =>
        `no room for the driver on \`${part}\` in step \`${step}\`: ${nameList(by.slice(0, 4), 'and')} ${by.length === 1 ? 'stands' : 'stand'} within ${mm(radiusMm)} of its axis over ${mm(reachMm)}`,
      mend: ({ step, by }) =>
        `put \`${step}\` before what is in the way (\`${by[0] ?? ''}\`), or take a thinner or shorter driver: \`tools\` of the bench may say its \`diameter\` and \`reach\``,
      why: 'A driver stands on the head of the screw, along its axis.',
    },
  ),
} as const
