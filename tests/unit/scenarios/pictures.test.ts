import { readdirSync, readFileSync } from 'node:fs'
import { inflateSync } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { pictures } from '../../browser/pictures/picture-list'
import { smallPng } from '../../browser/pictures/small-png'

const root = new URL('../../../', import.meta.url)

describe('the pictures of README', () => {
  const readme = readFileSync(new URL('README.md', root), 'utf8')
  const shown = [...readme.matchAll(/!\[([^\]]+)\]\(scenarios\/([^)]+)\)/g)]
  const made = pictures.map(({ file }) => file)

  it('are those that the app makes of the scenarios, each with words in its place', () => {
    expect(shown.map(([, , file]) => file).sort()).toEqual([...made].sort())
    expect(readdirSync(new URL('scenarios/', root)).filter((name) => name.endsWith('.png'))).toEqual(
      [...made].sort(),
    )
    for (const [, words] of shown) expect(words?.length).toBeGreaterThan(20)
  })

  it.each(made)('%s is a PNG of less than 300 kB', (file) => {
    const png = readFileSync(new URL(`scenarios/${file}`, root))
    expect(png.subarray(1, 4).toString('latin1')).toBe('PNG')
    expect(png.length).toBeLessThan(300_000)
  })
})

describe('a small PNG', () => {
  it('has the signature, the header and the checks of a PNG of one pixel, and the pixel rounded to white', () => {
    // PNG (W3C, third edition): IHDR and its check from memory; that of IEND is the same in every PNG.
    const png = smallPng({ width: 1, height: 1, rgb: Uint8Array.of(255, 254, 254) })
    expect(png.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a')
    expect(png.subarray(8, 29).toString('hex')).toBe('0000000d4948445200000001000000010802000000')
    expect(png.subarray(29, 33).toString('hex')).toBe('907753de')
    expect(png.subarray(37, 41).toString('latin1')).toBe('IDAT')
    expect([...inflateSync(png.subarray(41, -16))]).toEqual([0, 255, 255, 255])
    expect(png.subarray(-12).toString('hex')).toBe('0000000049454e44ae426082')
  })
})
