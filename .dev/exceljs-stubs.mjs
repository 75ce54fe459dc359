/**
 * What the build bundles in place of parts of the workbook writer's library that writing a workbook in memory never
 * reaches: reading and writing CSV (fast-csv, dayjs), random ids (uuid), packing (jszip; the parts are packed by us),
 * reading (saxes), and a copy of Node's own streams.
 *
 *   import { exceljsStubs, requireBanner } from './exceljs-stubs.mjs'
 *   await build({ …, format: 'esm', splitting: true, plugins: [exceljsStubs], banner: { js: requireBanner } })
 */

/** CommonJS parts of the bundle ask for Node's own modules with `require`, which an ES module has not got. */
export const requireBanner =
  "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);"

/** Each stub throws where the library would really use it, so that a missing part is loud. */
const stubs = {
  'fast-csv':
    "module.exports = { parse() { throw new Error('csv is not bundled') }, format() { throw new Error('csv is not bundled') } }",
  dayjs:
    "const day = () => { throw new Error('csv is not bundled') }; day.extend = () => day; module.exports = day",
  'dayjs/plugin/customParseFormat': 'module.exports = {}',
  'dayjs/plugin/utc': 'module.exports = {}',
  uuid: "module.exports = { v4() { throw new Error('random ids are not bundled: a workbook must be the same each time') } }",
  'readable-stream': "module.exports = require('node:stream')",
  jszip:
    "module.exports = class { constructor() { throw new Error('the library\\'s own packing is not bundled') } }",
  saxes:
    "module.exports = { SaxesParser: class { constructor() { throw new Error('reading workbooks is not bundled') } } }",
}

const names = new RegExp(
  `^(${Object.keys(stubs)
    .map((name) => name.replace(/[-/]/g, '\\$&'))
    .join('|')})$`,
)
const libraries = /node_modules[\\/](exceljs|jszip|unzipper|archiver|saxes)[\\/]/

/** An esbuild plugin: the stubs, only where the workbook library asks for them. */
export const exceljsStubs = {
  name: 'exceljs-stubs',
  setup(build) {
    build.onResolve({ filter: names }, ({ path, importer }) =>
      libraries.test(importer) ? { path, namespace: 'exceljs-stub' } : undefined,
    )
    build.onLoad({ filter: /.*/, namespace: 'exceljs-stub' }, ({ path }) => ({
      contents: stubs[path],
      loader: 'js',
      resolveDir: import.meta.dirname,
    }))
  },
}
