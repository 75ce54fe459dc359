import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'

type Schema = Readonly<Record<string, unknown>>
interface Property {
  readonly where: string
  readonly schema: Schema
}

const folder = join(import.meta.dirname, '../../schemas')
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.json'))
  .sort()
const schemas = new Map(
  files.map((file) => [file, JSON.parse(readFileSync(join(folder, file), 'utf8')) as Schema]),
)

const isObject = (value: unknown): value is Schema =>
  value !== null && typeof value === 'object' && !Array.isArray(value)

/** Every property of a schema, at any depth, with the way to it. */
function properties(schema: unknown, where: string): Property[] {
  if (Array.isArray(schema)) return schema.flatMap((each, at) => properties(each, `${where}/${at}`))
  if (!isObject(schema)) return []
  const own = isObject(schema.properties) ? Object.entries(schema.properties) : []
  const here = own.map(([key, each]) => ({ where: `${where}/${key}`, schema: each as Schema }))
  const deeper = Object.entries(schema)
    .filter(([key]) => key !== 'properties' && key !== 'examples')
    .flatMap(([key, each]) => properties(each, `${where}/${key}`))
  return [...here, ...own.flatMap(([key, each]) => properties(each, `${where}/${key}`)), ...deeper]
}

const all = [...schemas].flatMap(([file, schema]) => properties(schema, file))
const itsOwn = all.filter(({ schema }) => schema.$ref === undefined)

/** Words of which one must stand in the description of a quantity, by the quantity. */
const words: Readonly<Record<string, RegExp>> = {
  length: /\blengths?\b/i,
  area: /\barea\b/i,
  volume: /\bvolume\b/i,
  mass: /\bmass\b/i,
  density: /\bmass per volume\b|\bdensity\b/i,
  time: /\btime\b|\belapsed\b|\bhands\b|how long/i,
  'working days': /working days/i,
  'time or working days': /elapsed time.*working days/i,
  money: /\bmoney\b|\bcurrency\b/i,
  'money per time': /money per hour/i,
  ratio: /\bratio\b/i,
  current: /\bcurrent\b/i,
  temperature: /\btemperature\b/i,
  torque: /\btorque\b/i,
  power: /\bpower\b/i,
  speed: /length per time/i,
  'rotational speed': /\brpm\b/i,
  'volume per time': /volume per time/i,
  'area per time': /area per time/i,
  angle: /\bangle\b/i,
  'rotational speed or speed': /\brpm\b.*length per time/i,
  'speed or length per turn': /length per time.*length per turn/i,
}

describe('the schemas', () => {
  it('are more than a handful, so that these tests look at something', () => {
    expect(files.length).toBeGreaterThan(20)
    expect(itsOwn.length).toBeGreaterThan(300)
  })

  it('name, describe and show every property with an example, itself or where it refers to', () => {
    const bare = itsOwn.filter(({ schema }) => {
      const { title, description, examples, properties: inner } = schema
      const shown = Array.isArray(examples) && examples.length > 0
      return !title || !description || !(shown || isObject(inner))
    })
    expect(bare.map(({ where }) => where)).toEqual([])
  })

  it('name and describe every definition and every file', () => {
    const definitions = [...schemas].flatMap(([file, schema]) => [
      [file, schema] as const,
      ...Object.entries(isObject(schema.$defs) ? schema.$defs : {}).map(
        ([key, each]) => [`${file}/${key}`, each as Schema] as const,
      ),
    ])
    const bare = definitions.filter(([, schema]) => !schema.title || !schema.description)
    expect(bare.map(([where]) => where)).toEqual([])
  })

  it('describe a property in a sentence that begins with a capital and ends with a full stop', () => {
    const loose = itsOwn.filter(({ schema }) => !/^[A-Z`0-9].*[.)]$/s.test(String(schema.description)))
    expect(loose.map(({ where }) => where)).toEqual([])
  })

  it('name the dimension in the description of every quantity', () => {
    const silent = itsOwn.filter(({ schema }) => {
      const quantity = schema['x-quantity']
      return typeof quantity === 'string' && !words[quantity]?.test(String(schema.description))
    })
    expect(silent.map(({ where }) => where)).toEqual([])
  })

  it('give examples that their own schema accepts', () => {
    const ajv = new Ajv2020({
      discriminator: true,
      strict: true,
      strictRequired: false,
      allowUnionTypes: true,
    })
    ajv.addVocabulary(['x-quantity', 'x-date', 'x-unit'])
    for (const [file, schema] of schemas) ajv.addSchema({ ...schema, $id: `fettle://schemas/${file}` })
    const wrong = [...schemas].flatMap(([file, schema]) =>
      pointers(schema, '')
        .filter((at) => {
          const check = ajv.getSchema(`fettle://schemas/${file}#${at.pointer}`)
          return !check || at.examples.some((example) => !check(example))
        })
        .map(({ pointer }) => `${file}#${pointer}`),
    )
    expect(wrong).toEqual([])
  })
})

/** Every place in a schema that shows examples, as a pointer. */
function pointers(schema: unknown, at: string): { pointer: string; examples: readonly unknown[] }[] {
  if (Array.isArray(schema)) return schema.flatMap((each, index) => pointers(each, `${at}/${index}`))
  if (!isObject(schema)) return []
  const examples = schema.examples
  const here = Array.isArray(examples) ? [{ pointer: at, examples }] : []
  const inside = Object.entries(schema)
    .filter(([key]) => key !== 'examples')
    .flatMap(([key, each]) =>
      pointers(each, `${at}/${encodeURIComponent(key.replace(/~/g, '~0').replace(/\//g, '~1'))}`),
    )
  return [...here, ...inside]
}
