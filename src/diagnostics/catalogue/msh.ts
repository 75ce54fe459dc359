import { nameList, nearNames } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message } from '../message.ts'

/** Words of the six directions, by number. */
const ways = ['+x', '-x', '+y', '-y', '+z', '-z'] as const
const way = (direction: number): string => ways[direction] ?? '?'
const waysList = (directions: readonly number[]): string => nameList(directions.map(way), 'or')
/** Things to do, the last after `or`. */
const nameOr = (all: readonly string[]): string =>
  all.length > 1 ? `${all.slice(0, -1).join(', ')}, or ${all.at(-1)}` : (all[0] ?? '')
const mm = (value: number): string => `${Number(value.toFixed(value < 10 ? 1 : 0))} mm`

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
      `\`${file}\` holds ${objects.length === 1 ? 'an object' : 'objects'} of which no part has the name: ${nameList(objects.slice(0, 8), 'and')}`,
    mend: ({ objects, parts }) => {
      const near = nearNames(objects[0] ?? '', parts)
      return near.length > 0
        ? `name each object like its part, such as ${nameList(near, 'or')}`
        : 'name each object like its part'
    },
    why: 'Objects are known by the names of parts; an object with another name stands for nothing.',
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
    direction: number
    by: Blocker
    broughtBy: string | null
    free: readonly number[]
  }>({
    code: 'MSH10',
    level: 'warning',
    says: ({ step, part, from, direction, by }) =>
      `\`${part}\` cannot go in from \`${from}\` (${way(direction)}) in step \`${step}\`: \`${by.part}\` is in the way, ${mm(by.widthMm)} wide`,
    mend: ({ step, free, broughtBy }) =>
      nameOr([
        ...(free.length > 0
          ? [`write \`from: "${way(free[0]!)}"\`${free.length > 1 ? ` (free are ${waysList(free)})` : ''}`]
          : []),
        ...(broughtBy === null ? [] : [`put \`${step}\` before \`${broughtBy}\``]),
        'say how much the part `gives`',
      ]),
    why: "The meshes show something in the way at the step's turn. What is typed is kept in the plan.",
  }),
  noOpening: message<{
    step: string
    part: string
    body: string
    opening: string | null
    direction: number | null
    widthMm: number
  }>({
    code: 'MSH11',
    level: 'warning',
    says: ({ step, part, body, opening, direction, widthMm }) =>
      direction === null
        ? `\`${part}\` goes into \`${body}\` in step \`${step}\`, but the meshes show no way out of it in any of six directions`
        : `\`${opening}\` is no opening of \`${body}\` for \`${part}\` (step \`${step}\`): \`${body}\` itself is in the way at ${way(direction)}, ${mm(widthMm)} wide`,
    mend: () => 'name the opening that it passes, or correct the mesh or its place',
    why: 'A part leaves a body through an opening where nothing of the body stops it.',
  }),
  shutsMore: message<{ lid: string; part: string; step: string; direction: number; widthMm: number }>({
    code: 'MSH12',
    level: 'warning',
    says: ({ lid, part, step, direction, widthMm }) =>
      `step \`${lid}\` shuts more than was said: it also keeps \`${part}\` (step \`${step}\`) from going in, at ${way(direction)} ${mm(widthMm)} wide`,
    mend: ({ lid }) => `add the opening that \`${lid}\` covers to its \`shut\`, or correct the mesh`,
    why: 'The plan heeds it: the part goes in before. Typed openings are what a reader of the checklist sees.',
  }),
  cannotLeave: message<{
    step: string
    part: string
    travel: readonly { direction: number; mm: number | null; by: string | null }[]
    together: readonly string[]
  }>({
    code: 'MSH13',
    level: 'warning',
    says: ({ step, part, travel }) =>
      `\`${part}\` (step \`${step}\`) cannot go in by any straight way: it is free for ${travel
        .map(
          (one) =>
            `${one.mm === null ? 'any way' : mm(one.mm)} along ${way(one.direction)}${one.by === null ? '' : ` (\`${one.by}\`)`}`,
        )
        .join(', ')}`,
    mend: ({ together }) =>
      together.length > 0
        ? `fit it together with ${nameList(together, 'and')} beforehand, as a part of kind assembly; or say \`from\` and how much it \`gives\`; or it is tilted in`
        : 'say `from` and how much it `gives` where it bends; where it is tilted or turned in, leave this as it is; else correct the mesh or its place',
    why: 'Straight moves along the six directions are tried. The order of this step rests on what is typed.',
  }),
  orderBlocked: message<{
    step: string
    part: string
    by: readonly { part: string; step: string; direction: number; widthMm: number }[]
  }>({
    code: 'MSH14',
    level: 'warning',
    says: ({ step, part, by }) =>
      `the typed order leaves \`${part}\` no way in at step \`${step}\`: ${by
        .map((one) => `${way(one.direction)} \`${one.part}\` (\`${one.step}\`), ${mm(one.widthMm)} wide`)
        .join('; ')}`,
    mend: ({ step, by }) =>
      `put \`${step}\` before ${nameList([...new Set(by.map((one) => one.step))], 'or')}`,
    why: 'Typed facts win, so the plan keeps this order; the meshes show that it cannot be done as drawn.',
  }),
  noContact: message<{ step: string; part: string; other: string; touches: readonly string[] }>({
    code: 'MSH15',
    level: 'warning',
    says: ({ step, part, other, touches }) =>
      `step \`${step}\` joins \`${part}\` to \`${other}\`, but nowhere do they touch${touches.length > 0 ? `; it touches ${nameList(touches.slice(0, 4), 'and')}` : ''}`,
    mend: ({ touches }) =>
      touches.length > 0
        ? `write the part that it touches, or correct its place`
        : 'correct the place of the mesh, or its unit',
    why: 'What is joined touches. A part in another place, of another unit or an older revision does not.',
  }),
  contactWithoutJoin: message<{ step: string; part: string; touches: readonly string[] }>({
    code: 'MSH16',
    level: 'warning',
    says: ({ step, part, touches }) =>
      `\`${part}\` touches ${nameList(touches.slice(0, 4), 'and')}, but step \`${step}\` does not say what it goes on or how it is held`,
    mend: ({ touches }) => `add \`on: ${touches[0] ?? 'body'}\` and \`by\` to the step`,
    why: 'What holds a part is part of the plan: tools, torque, and what comes apart again.',
  }),
  overlap: message<{ part: string; other: string; widthMm: number; joined: boolean }>({
    code: 'MSH17',
    level: 'warning',
    says: ({ part, other, widthMm, joined }) =>
      joined
        ? `\`${part}\` and \`${other}\` lie in each other ${mm(widthMm)} wide, more than their join explains`
        : `\`${part}\` and \`${other}\` lie in each other ${mm(widthMm)} wide, and no join explains it`,
    mend: ({ joined }) =>
      joined
        ? 'draw the hole, or correct the place'
        : 'correct size or place, or say how they are joined (press, thread)',
    why: 'Threads and press fits overlap by less than a millimetre as drawn. Anything else cannot be put together.',
  }),
  loose: message<{ step: string; part: string; directions: readonly number[] }>({
    code: 'MSH18',
    level: 'warning',
    says: ({ step, part, directions }) =>
      `nothing holds \`${part}\` (step \`${step}\`) in the finished device: it leaves along ${waysList(directions)}`,
    mend: () => 'say what holds it (`by`, `with`), or give what holds it a mesh',
    why: 'With everything in place, its fasteners too, no part stands in its way and no join keeps it.',
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
        ? 'save all copies in one file, or give one mesh and a `place` for each'
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
  farOff: message<{ part: string; at: Place }>({
    code: 'MSH21',
    level: 'warning',
    says: ({ part }) => `the mesh of \`${part}\` touches nothing in the device`,
    mend: () => 'correct its place; a mesh saved in metres or inches is to be saved again in millimetres',
    why: 'Every part of a device touches another.',
  }),
} as const
