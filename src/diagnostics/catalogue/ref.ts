import { nameList } from '../../base/near-names.ts'
import type { Place } from '../../base/place.ts'
import { message } from '../message.ts'

/** A kind with its article. */
function aKind(kind: string): string {
  if (kind === 'work') return 'a piece of work'
  return kind === 'work, part or step' ? 'a piece of work, a part or a step' : `a ${kind}`
}

/** REF: names. */
export const ref = {
  unknownName: message<{ name: string; wanted: string; near: readonly string[]; known: readonly string[] }>({
    code: 'REF01',
    level: 'error',
    says: ({ name, wanted }) => `there is no ${wanted} \`${name}\``,
    mend: ({ near, known, wanted }) => {
      if (near.length > 0) return `did you mean ${nameList(near, 'or')}?`
      if (known.length > 0)
        return `known here: ${nameList(known.slice(0, 6), 'and')}${known.length > 6 ? ' and others' : ''}`
      return `add the ${wanted}, or take the name out`
    },
    why: 'Every name must stand for something in the project or in a shop file it uses.',
  }),
  doubledName: message<{ name: string; kind: string; first: { kind: string; at: Place } }>({
    code: 'REF02',
    level: 'error',
    says: ({ name, kind, first }) =>
      kind === first.kind
        ? `two ${kind}s are called \`${name}\``
        : `\`${name}\` is ${aKind(kind)} here and ${aKind(first.kind)} elsewhere`,
    mend: ({ name }) => `rename one of the two, such as \`${name} 2\``,
    notes: ({ name, first }) => [{ at: first.at, says: `\`${name}\` is ${aKind(first.kind)} here` }],
    why: 'Names are unique over the whole project, so that `after: [x]` can mean one thing only.',
  }),
  unusedName: message<{ name: string; kind: string }>({
    code: 'REF03',
    level: 'warning',
    says: ({ name, kind }) => `the ${kind} \`${name}\` is not used`,
    mend: ({ name }) => `use \`${name}\` or take it out`,
    why: 'An entry that nothing uses is often a name spelled differently somewhere else.',
  }),
  countInName: message<{ name: string }>({
    code: 'REF04',
    level: 'error',
    says: ({ name }) => `the name \`${name}\` ends like a count`,
    mend: () => 'rename it so that it does not end in ` x` and digits',
    why: 'In `screw M2x4 x3` the end is a count. A name that ends in ` x3` could not be told from three of something.',
  }),
  wrongKind: message<{ name: string; wanted: string; is: string }>({
    code: 'REF05',
    level: 'error',
    says: ({ name, wanted, is }) => `\`${name}\` is ${aKind(is)}, not ${aKind(wanted)}`,
    mend: ({ wanted }) => `name ${aKind(wanted)} here`,
    why: 'The key says what kind of thing it points at.',
  }),
  unknownOpening: message<{ body: string; opening: string; known: readonly string[] }>({
    code: 'REF06',
    level: 'error',
    says: ({ body, opening }) => `\`${body}\` has no opening \`${opening}\``,
    mend: ({ body, known }) =>
      known.length > 0
        ? `name one of ${nameList(
            known.map((name) => `${body}.${name}`),
            'or',
          )}`
        : `add \`openings: {${body}: [top]}\` to the assembly`,
    why: 'Openings are listed once, under `openings`, so that a misspelt one cannot silently leave a part free to go in.',
  }),
  unknownFeature: message<{ feature: string; part: string; near: readonly string[] }>({
    code: 'REF07',
    level: 'error',
    says: ({ feature, part }) => `\`${part}\` has no feature \`${feature}\``,
    mend: ({ near, feature, part }) =>
      near.length > 0
        ? `did you mean ${nameList(near, 'or')}?`
        : `add \`features: {${feature}: …}\` to \`${part}\``,
    why: 'An inspection of a feature that nobody defined has no limits to check against.',
  }),
  nearMiss: message<{ text: string; near: readonly string[]; kind: string }>({
    code: 'REF08',
    level: 'warning',
    says: ({ text, near, kind }) =>
      `\`${text}\` is taken as words, but the ${kind} ${nameList(near, 'or')} is spelled nearly alike`,
    mend: ({ near }) => `write \`${near[0] ?? ''}\` if that is meant`,
    why: 'Words are allowed here, so a misspelt name would silently lose the link to the fixture or tool.',
  }),
  doubledCopy: message<{ name: string; is: 'copy' | 'part'; first: Place }>({
    code: 'REF10',
    level: 'error',
    says: ({ name, is }) =>
      is === 'copy' ? `two copies are called \`${name}\`` : `a copy is called \`${name}\`, as a part is`,
    mend: ({ name }) => `call it something else, such as \`${name} 2\``,
    notes: ({ name, first, is }) => [{ at: first, says: `\`${name}\` is a ${is} here` }],
    why: 'The names under `as` tell copies of one part apart, so each must stand for one thing.',
  }),
  notPartFeature: message<{ text: string; near: readonly string[] }>({
    code: 'REF12',
    level: 'error',
    says: ({ text }) => `\`${text}\` names no feature of a part`,
    mend: ({ near, text }) =>
      near.length > 0
        ? `did you mean ${nameList(near, 'or')}?`
        : `write part and feature with a point between, such as \`part.${text}\``,
    why: 'Two parts may have features of the same name, so the part stands before it.',
  }),
  ambiguousStep: message<{ name: string; assemblies: readonly string[] }>({
    code: 'REF09',
    level: 'error',
    says: ({ name, assemblies }) => `\`${name}\` names a step in ${nameList(assemblies, 'and')}`,
    mend: () => 'give the step a `name:` of its own and point at that',
    why: 'A link needs one target.',
  }),
  openingOfWhat: message<{ text: string; near: readonly string[] }>({
    code: 'REF11',
    level: 'error',
    says: ({ text }) => `\`${text}\` does not say of which body it is an opening`,
    mend: ({ text, near }) =>
      near.length > 0
        ? `write ${nameList(near.slice(0, 3), 'or')}`
        : `write \`body.${text}\`, such as \`base.top\``,
    why: 'Several bodies may have a side of that name; a lid shuts one of them.',
  }),
} as const
