import { fileURLToPath } from 'node:url'
import { expect, test } from '@playwright/test'
import { frameBytes } from './frame-bytes'

const root = fileURLToPath(new URL('../..', import.meta.url))
/**
 * Bytes that a frame may take in our own functions: numbers that the browser puts on the heap where it calls a
 * function that it has not compiled into its caller. Objects made for each label took 215,000.
 */
const most = 600

const all = ['#example=A', '#example=B&page=compare']
const addresses = process.env.PROOF === '1' ? all : all.slice(1)

test('a frame of a turning bore, and of four side by side, makes nothing of our own', async ({ browser }) => {
  test.setTimeout(120_000)
  for (const found of await frameBytes(browser, root, addresses)) {
    expect(found.frames).toBeGreaterThan(120)
    // What the libraries make is seen: the count would not be of a page that stands still, or of none.
    expect(found.libraries).toBeGreaterThan(500)
    expect(found.own, found.most.join('\n')).toBeLessThan(most)
  }
})
