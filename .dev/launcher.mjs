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
if (process.env.FETTLE_KEEP_COMPILED) {
  process.on('exit', () => writeFileSync(kept, script.createCachedData()))
}
