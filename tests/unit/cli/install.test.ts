import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { checkNode, isInstalled } from '../../../src/cli/install.mjs'

let folder = ''

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'borewall-install-'))
})

afterEach(() => rmSync(folder, { recursive: true, force: true }))

function lock(file: string, packages: Record<string, object>) {
  writeFileSync(join(folder, file), JSON.stringify({ packages }))
}

function place(name: string) {
  mkdirSync(join(folder, 'node_modules', name), { recursive: true })
  writeFileSync(join(folder, 'node_modules', name, 'package.json'), '{}')
}

const wanted = {
  '': { name: 'borewall' },
  'node_modules/a': { integrity: 'sha512-a' },
  'node_modules/b-for-another-machine': { integrity: 'sha512-b', optional: true },
}

describe('what is installed', () => {
  it('is not enough on a fresh clone', () => {
    lock('package-lock.json', wanted)
    expect(isInstalled(folder)).toBe(false)
  })

  it('is enough when every package is there, those for other machines excepted', () => {
    lock('package-lock.json', wanted)
    place('a')
    lock('node_modules/.package-lock.json', { 'node_modules/a': { integrity: 'sha512-a' } })
    expect(isInstalled(folder)).toBe(true)
  })

  it('is not enough when a package has another edition or its files are gone', () => {
    lock('package-lock.json', wanted)
    place('a')
    lock('node_modules/.package-lock.json', { 'node_modules/a': { integrity: 'sha512-older' } })
    expect(isInstalled(folder)).toBe(false)
    lock('node_modules/.package-lock.json', { 'node_modules/a': { integrity: 'sha512-a' } })
    rmSync(join(folder, 'node_modules', 'a'), { recursive: true })
    expect(isInstalled(folder)).toBe(false)
  })
})

describe('the check of Node', () => {
  it.each(['20.19.0', '20.20.2', '22.0.0', '26.1.0'])('accepts %s', (version) => {
    expect(() => checkNode(version)).not.toThrow()
  })

  it.each(['18.20.4', '20.18.9'])('refuses %s and says what is needed', (version) => {
    expect(() => checkNode(version)).toThrow(`Borewall needs Node.js 20.19 or newer; this is ${version}.`)
  })
})
