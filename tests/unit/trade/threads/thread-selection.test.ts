import { describe, expect, it } from 'vitest'
import { isThreadFault, readThread } from '../../../../src/trade/threads/read-thread.ts'
import { type ThreadSelection, threadSelection } from '../../../../src/trade/threads/thread-selection.ts'

function selection(text: string): ThreadSelection {
  const read = readThread(text)
  if (isThreadFault(read)) throw new Error(JSON.stringify(read))
  return threadSelection(read)
}

describe('the selection of threads', () => {
  it('holds M14x1, though no fastener has it', () => {
    expect(selection('M14x1-6H')).toMatchObject({ listed: true, forFasteners: false, choice: 2, toCheck: [] })
  })

  it('does not hold M20x0.75, shows what it holds, and says what to make sure of', () => {
    const found = selection('M20x0.75')
    expect(found).toMatchObject({ listed: false, listedNear: ['M20x2.5', 'M20x2', 'M20x1.5', 'M20x1'] })
    expect(found.toCheck.length).toBeGreaterThan(0)
  })

  it('shows the neighbours of a diameter it does not hold', () => {
    expect(selection('M13x1')).toMatchObject({ listed: false, choice: null, listedNear: ['M12', 'M14'] })
  })

  it('holds unified threads of the coarse and fine series alone', () => {
    expect(selection('1/4-20').listed).toBe(true)
    expect(selection('1/4-32 UNEF')).toMatchObject({
      listed: false,
      listedNear: ['1/4-20 UNC', '1/4-28 UNF'],
    })
  })
})
