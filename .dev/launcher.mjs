#!/usr/bin/env node
// Starts the bundled command from its compiled form, where that was kept for this very Node; else compiles it anew.
import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { fileURLToPath } from 'node:url'
import { Script } from 'node:vm'

const file = fileURLToPath(new URL('program.cjs', import.meta.url))
const kept = fileURLToPath(new URL(`program.${process.version}-${process.arch}.compiled`, import.meta.url))

function readKept() {
  try {
    return readFileSync(kept)
  } catch {
    return undefined
  }
}

// What a long run no longer uses is thrown away as it runs; what is kept must hold what a start needs. The flag is put
// back before it is written: a compiled form is taken only under the flags that it was written under.
const keeps = process.env.FETTLE_KEEP_COMPILED ? createRequire(file)('node:v8') : null
keeps?.setFlagsFromString('--no-flush-bytecode')
const text = readFileSync(file, 'utf8')
const script = new Script(`(function (exports, require, module, __filename, __dirname) {${text}\n})`, {
  filename: file,
  cachedData: readKept(),
})
const module = { exports: {} }
script.runInThisContext()(
  module.exports,
  createRequire(file),
  module,
  file,
  fileURLToPath(new URL('.', import.meta.url)),
)
if (keeps) {
  process.on('exit', () => {
    keeps.setFlagsFromString('--flush-bytecode')
    writeFileSync(kept, script.createCachedData())
  })
}
