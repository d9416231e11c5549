import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { buildIfStale } from '../../../src/cli/page-build.mjs'

let root = ''

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'borewall-build-'))
  mkdirSync(join(root, 'src'))
  writeFileSync(join(root, 'index.html'), '<!doctype html><script type="module" src="/src/main.js"></script>')
  writeFileSync(join(root, 'src', 'main.js'), 'document.title = "First"')
})

afterEach(() => rmSync(root, { recursive: true, force: true }))

const build = () => buildIfStale(root, join(root, 'dist'))

describe('the build of the page', () => {
  it('is made once and left alone while no source changes', async () => {
    expect(await build()).toBe(true)
    expect(existsSync(join(root, 'dist', 'index.html'))).toBe(true)
    expect(await build()).toBe(false)
  })

  it('is made again when a source changes, comes or goes', async () => {
    await build()
    writeFileSync(join(root, 'src', 'main.js'), 'document.title = "Second"')
    expect(await build()).toBe(true)
    writeFileSync(join(root, 'src', 'more.js'), '')
    expect(await build()).toBe(true)
    rmSync(join(root, 'src', 'more.js'))
    expect(await build()).toBe(true)
  })

  it('leaves the last good page whole when it fails', async () => {
    await build()
    const page = readFileSync(join(root, 'dist', 'index.html'), 'utf8')
    writeFileSync(join(root, 'src', 'main.js'), "import './missing'")
    await expect(build()).rejects.toThrow('missing')
    expect(readFileSync(join(root, 'dist', 'index.html'), 'utf8')).toBe(page)
  })
})
