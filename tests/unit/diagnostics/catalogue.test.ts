import { describe, expect, it } from 'vitest'
import { allMessages, messageOf, messages } from '../../../src/diagnostics/catalogue.ts'
import { explain, explainText } from '../../../src/diagnostics/explain.ts'

describe('the catalogue', () => {
  it('has one code for each message, named after its family', () => {
    const codes = allMessages().map(({ code }) => code)
    expect(new Set(codes).size).toBe(codes.length)
    for (const [family, entries] of Object.entries(messages)) {
      for (const { code } of Object.values<{ code: string }>(entries)) {
        expect(code).toMatch(/^[A-Z]{3}\d\d$/)
        // A long family is split by subject: `prc` and `prcCutting`.
        expect(family).toMatch(new RegExp(`^${code.slice(0, 3).toLowerCase()}(?:[A-Z]|$)`))
      }
    }
  })

  it('says why in whole sentences', () => {
    for (const { code, why } of allMessages()) expect(`${code} ${why}`).toMatch(/^\w+ [A-Z].*\.$/s)
  })

  it('finds a message by its code in any case, and none by another word', () => {
    expect(messageOf('src11')).toBe(messages.src.doubledKey)
    expect(messageOf('constructor')).toBeNull()
  })
})

describe('fettle explain', () => {
  it('gives the reason and the example from the code’s own case, without the marks of the test', () => {
    const found = explain('src11')!
    expect(found.why).toBe(messages.src.doubledKey.why)
    expect(found.example).toContain('cover: {kind: bought}')
    expect(found.example).not.toContain('# expect')
    expect(explainText('SRC11')).toMatch(
      /^SRC11 \(error\)\n\nOf two entries .*\.\n\nExample:\n\n {4}device:/s,
    )
  })

  it('offers near codes for one that does not exist', () => {
    expect(explain('SRC99')).toBeNull()
    expect(explainText('SRC9')).toMatch(/^there is no code `SRC9`; did you mean `SRC0\d`/)
  })
})
