// Writes src/source/generated/ from schemas/, and the examples of `fettle explain` from tests/diagnostics/.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import Ajv2020 from 'ajv/dist/2020.js'
import standaloneCode from 'ajv/dist/standalone/index.js'
import { compile } from 'json-schema-to-typescript'

const root = fileURLToPath(new URL('..', import.meta.url))
const head = '// Written by `npm run generate`; do not edit.\n'
const readJson = (path) => JSON.parse(readFileSync(join(root, path), 'utf8'))
const camel = (words) => words.replace(/[^A-Za-z0-9]+(.)/g, (_, letter) => letter.toUpperCase())
const pascal = (words) => camel(words).replace(/^./, (letter) => letter.toUpperCase())

/** Every operation's file name without its ending, in order. */
export function operationNames() {
  return readdirSync(join(root, 'schemas/operations'))
    .map((file) => file.replace(/\.json$/, ''))
    .sort()
}

/** All schema files, each under its path from the root. */
export function readSchemas() {
  const paths = ['schemas/common.json', 'schemas/project.schema.json', 'schemas/shop.schema.json']
  const operations = operationNames().map((name) => `schemas/operations/${name}.json`)
  return new Map([...paths, ...operations].map((path) => [path, readJson(path)]))
}

/** Copies a schema, giving every object to `change` first (children after their parent). */
function mapSchema(schema, change) {
  if (Array.isArray(schema)) return schema.map((each) => mapSchema(each, change))
  if (schema === null || typeof schema !== 'object') return schema
  const changed = change(schema)
  return Object.fromEntries(
    Object.entries(changed).map(([key, value]) => [
      key,
      key === 'examples' || key === 'enum' || key === 'const' ? value : mapSchema(value, change),
    ]),
  )
}

/** References to files become references into the one bundle. */
function localRef(ref) {
  const operation = /operations\/([^/]+)\.json$/.exec(ref)
  if (operation) return `#/$defs/${operationDef(operation[1])}`
  return ref.replace(/^[^#]*#/, '#')
}
const operationDef = (name) => `${camel(name)}Operation`

/** One schema document that holds every definition once; `project` and `shop` are two of them. */
export function bundle(schemas) {
  const project = schemas.get('schemas/project.schema.json')
  const shop = schemas.get('schemas/shop.schema.json')
  if (
    Object.entries(shop.$defs).some(
      ([key, def]) => JSON.stringify(def) !== JSON.stringify(project.$defs[key]),
    )
  )
    throw new Error('project.schema.json and shop.schema.json define the same thing differently')
  const operations = operationNames().map((name) => [
    operationDef(name),
    schemas.get(`schemas/operations/${name}.json`),
  ])
  const roots = [project, shop].map(({ $defs, ...rest }) => rest)
  const all = {
    ...schemas.get('schemas/common.json').$defs,
    ...project.$defs,
    ...Object.fromEntries(operations),
    project: roots[0],
    shop: roots[1],
  }
  const local = mapSchema(all, (part) =>
    typeof part.$ref === 'string' ? { ...part, $ref: localRef(part.$ref) } : part,
  )
  for (const def of Object.values(local)) delete def.$schema
  return { $id: 'fettle', $defs: withInnerObjectsNamed(local) }
}

/** Objects written inside a property become definitions of their own, one for all that are the same. */
function withInnerObjectsNamed(defs) {
  const inner = {}
  const named = mapSchema(defs, (part) => {
    if (!part.properties || Array.isArray(part.properties)) return part
    const properties = Object.entries(part.properties).map(([key, value]) => {
      if (value.type !== 'object' || !value.properties) return [key, value]
      const name = innerNames[key] ?? camel(key)
      if (defs[name] || (inner[name] && JSON.stringify(inner[name]) !== JSON.stringify(value)))
        throw new Error(`two different definitions want the name ${name}`)
      inner[name] = value
      return [key, { $ref: `#/$defs/${name}` }]
    })
    return { ...part, properties: Object.fromEntries(properties) }
  })
  return { ...inner, ...named }
}
/** Names of inner objects whose key is taken by a definition. */
const innerNames = { assembly: 'mainAssembly' }

const newAjv = () =>
  new Ajv2020({
    discriminator: true,
    allErrors: true,
    strict: true,
    strictRequired: false,
    allowUnionTypes: true,
    inlineRefs: false,
    ownProperties: true,
    code: { source: true, esm: true },
    keywords: ['x-quantity', 'x-date'],
  })

/** Counts characters as JSON Schema does: by code point. Stands in for the one module the validator would load. */
const lengthFunction =
  'const characters = (text) => { let count = 0; for (const _ of text) count += 1; return count };\n'

/** A schema without what only people read: the validator carries its schemas along. */
const withoutWords = ({ title, description, examples, ...part }) => ({
  ...(typeof title === 'string' ? {} : title && { title }),
  ...(typeof description === 'string' ? {} : description && { description }),
  ...(Array.isArray(examples) ? {} : examples && { examples }),
  ...part,
})

/** Shapes that many properties share become one definition each: a third of the validator's size. */
function withSharedShapes(bundled) {
  const uses = new Map()
  const isShape = (value) =>
    value !== null && typeof value === 'object' && !value.$ref && value.const === undefined
  const eachProperty = (change) => (part) => {
    if (!part.properties || Array.isArray(part.properties)) return part
    const properties = Object.entries(part.properties).map(([key, value]) => [
      key,
      isShape(value) ? change(value) : value,
    ])
    return { ...part, properties: Object.fromEntries(properties) }
  }
  const count = (value) => {
    const text = JSON.stringify(value)
    uses.set(text, (uses.get(text) ?? 0) + 1)
    return value
  }
  mapSchema(bundled.$defs, eachProperty(count))
  const shared = [...uses].filter(([, times]) => times > 2).map(([text]) => text)
  const replace = (value) => {
    const at = shared.indexOf(JSON.stringify(value))
    return at < 0 ? value : { $ref: `#/$defs/shape${at}` }
  }
  const $defs = mapSchema(bundled.$defs, eachProperty(replace))
  shared.forEach((text, at) => {
    $defs[`shape${at}`] = JSON.parse(text)
  })
  return { ...bundled, $defs }
}

function validatorCode(bundled) {
  const ajv = newAjv()
  ajv.addSchema(withSharedShapes(mapSchema(bundled, withoutWords)))
  for (const name of ['project', 'shop'])
    ajv.addSchema({ $id: `fettle-${name}`, $ref: `fettle#/$defs/${name}` })
  const code = standaloneCode.default(ajv, { project: 'fettle-project', shop: 'fettle-shop' })
  const alone = code.replace(/require\("ajv\/dist\/runtime\/ucs2length"\)\.default/g, 'characters')
  if (/\brequire\(/.test(alone)) throw new Error('the validator still loads a module')
  return head + alone.replace('"use strict";', lengthFunction)
}

const validatorTypes = `${head}/** One mismatch between a file and its schema. */
export interface ShapeError {
  readonly instancePath: string
  readonly schemaPath: string
  readonly keyword: string
  readonly params: Readonly<Record<string, unknown>>
  readonly message?: string
}
interface Validator {
  (data: unknown): boolean
  errors?: null | ShapeError[]
}
/** Whether the data has the shape of a project file; the mismatches are left in \`errors\`. */
export declare const project: Validator
/** Whether the data has the shape of a shop file; the mismatches are left in \`errors\`. */
export declare const shop: Validator
`

const typeName = (key) => `${pascal(key.replace(/Operation$/, ''))}Source`

/** The schema as the type writer needs it: named types for definitions and inner objects, choices as unions. */
function forTypes(bundled) {
  const plain = mapSchema(bundled.$defs, ({ title, $schema, discriminator, examples, ...part }) => {
    if (!part.if)
      return typeof title === 'string'
        ? part
        : { ...part, ...(title && { title }), ...(examples && { examples }) }
    const { type, if: _, then, else: otherwise, ...rest } = part
    return { ...rest, anyOf: [then, otherwise.oneOf ? { anyOf: otherwise.oneOf } : otherwise] }
  })
  for (const [key, def] of Object.entries(plain)) def.title = typeName(key)
  return plain
}

async function projectTypes(bundled) {
  const $defs = forTypes(bundled)
  const schema = {
    type: 'object',
    title: 'AnySource',
    additionalProperties: false,
    properties: { project: { $ref: '#/$defs/project' }, shop: { $ref: '#/$defs/shop' } },
    $defs,
  }
  const code = await compile(schema, 'AnySource', {
    bannerComment: '',
    additionalProperties: false,
    maxItems: 1,
    ignoreMinAndMaxItems: true,
    style: { semi: false, singleQuote: true, printWidth: 110 },
  })
  return `${head}\n${code.replace(/export interface AnySource \{[^}]*\}\n/, '').trimStart()}`
}

/** A value as a person would type it on one line. */
export function asTyped(value) {
  if (Array.isArray(value)) return `[${value.map(asTyped).join(', ')}]`
  if (value !== null && typeof value === 'object')
    return `{${Object.entries(value)
      .map(([key, each]) => `${key}: ${asTyped(each)}`)
      .join(', ')}}`
  const text = String(value)
  if (typeof value !== 'string' || /^\d{4}-\d\d-\d\d$/.test(text)) return text
  return /^[\d.+-]+$|^(true|false|null|~)?$|^\d\d:|[:#,[\]{}]\s|^[&*!|>@%`"'[{?-]|[,[\]{}]/.test(text)
    ? `"${text}"`
    : text
}

/** What the schemas say about each place, for messages: the keys known there, an example, the quantity. */
function shapeFacts(bundled) {
  const facts = {}
  const visit = (schema, path) => {
    if (schema === null || typeof schema !== 'object') return
    const fact = {
      ...(schema.properties && { keys: Object.keys(schema.properties) }),
      ...(schema['x-quantity'] && { quantity: schema['x-quantity'] }),
      ...(schema.$ref && { ref: schema.$ref }),
      ...(schema.type && { type: [schema.type].flat() }),
      ...(schema.const !== undefined && { only: [schema.const] }),
      ...(schema.title && typeof schema.title === 'string' && { title: schema.title }),
      ...(schema.oneOf && { kinds: kindsOf(bundled, schema.oneOf) }),
      ...(schema.then?.$ref && { withChoices: schema.then.$ref }),
      ...(schema.else?.oneOf && { kinds: kindsOf(bundled, schema.else.oneOf) }),
      ...(schema.enum && { only: schema.enum }),
      ...(schema.examples && { example: asTyped(schema.examples[0]) }),
    }
    if (Object.keys(fact).length > 0) facts[path] = fact
    for (const [key, each] of Object.entries(schema.properties ?? {}))
      visit(each, `${path}/properties/${pointer(key)}`)
    for (const key of ['items', 'additionalProperties', 'then', 'else']) visit(schema[key], `${path}/${key}`)
    for (const key of ['oneOf', 'anyOf'])
      for (const [at, each] of (schema[key] ?? []).entries()) visit(each, `${path}/${key}/${at}`)
  }
  for (const [key, def] of Object.entries(bundled.$defs)) visit(def, `#/$defs/${key}`)
  return `${head}/** What the schemas say about one place: the keys known there, the quantity, an example as typed. */
export interface ShapeFact {
  readonly keys?: readonly string[]
  readonly quantity?: string
  readonly ref?: string
  readonly type?: readonly string[]
  readonly only?: readonly string[]
  readonly title?: string
  /** Definitions by the value of the key kind. */
  readonly kinds?: Readonly<Record<string, string>>
  /** The definition where choices is among the keys. */
  readonly withChoices?: string
  readonly example?: string
}
/** Facts by place in the schemas. */
export const shapeFacts: Readonly<Record<string, ShapeFact>> = ${JSON.stringify(facts, null, 1)}
`
}
/** Alternatives by the one value that each allows for `kind`. */
const kindsOf = (bundled, refs) =>
  Object.fromEntries(
    refs.map(({ $ref }) => [bundled.$defs[$ref.replace('#/$defs/', '')].properties.kind.const, $ref]),
  )
const pointer = (key) => key.replace(/~/g, '~0').replace(/\//g, '~1')

/** The test cases that `fettle explain` shows: one project file per code, the first by folder name. */
export function readExamples() {
  const base = join(root, 'tests/diagnostics')
  const folders = readdirSync(base, { withFileTypes: true }).filter((entry) => entry.isDirectory())
  const examples = new Map()
  for (const name of folders.map((entry) => entry.name).sort()) {
    const code = /^([a-z]{3}\d\d)-/.exec(name)?.[1]?.toUpperCase()
    const files = readdirSync(join(base, name)).sort().join(' ')
    if (!code || examples.has(code) || !/^(expect\.txt )?expected\.txt project\.yaml$/.test(files)) continue
    const text = readFileSync(join(base, name, 'project.yaml'))
    const printable = text.length < 6000 && Buffer.from(text.toString('utf8')).equals(text)
    if (printable) examples.set(code, text.toString('utf8').replace(/ *# expect .*$/gm, ''))
  }
  return examples
}

function examplesCode() {
  const entries = Object.fromEntries([...readExamples()].sort(([a], [b]) => (a < b ? -1 : 1)))
  return `// biome-ignore-all format: written by a program\n${head}/** A project file that earns each code, from the code's own test case. */
export const examples: Readonly<Record<string, string>> = ${JSON.stringify(entries, null, 2)}
`
}

/** Every generated file's text under its path from the root. */
export async function generate() {
  const bundled = bundle(readSchemas())
  const folder = 'src/source/generated'
  return new Map([
    [`${folder}/validate-project.js`, validatorCode(bundled)],
    [`${folder}/validate-project.d.ts`, validatorTypes],
    [`${folder}/project-types.ts`, await projectTypes(bundled)],
    [`${folder}/shape-facts.ts`, shapeFacts(bundled)],
    ['src/diagnostics/generated/examples.ts', examplesCode()],
  ])
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const [path, text] of await generate()) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), text)
  }
}
