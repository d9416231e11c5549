import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { reportCommand } from '../../../src/cli/report-command'
import { words } from '../../../src/words/words'
import { inventedJob } from './invented-job'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'report-'))
  mkdirSync(join(folder, 'out'))
  mkdirSync(join(folder, 'other'))
  writeFileSync(join(folder, 'saw.json'), JSON.stringify(inventedJob()))
  writeFileSync(join(folder, 'mower.json'), JSON.stringify(inventedJob()))
  writeFileSync(join(folder, 'other/saw.json'), JSON.stringify(inventedJob()))
  writeFileSync(join(folder, 'broken.json'), '{"format": ')
})
afterAll(() => rmSync(folder, { recursive: true }))

const asked = (...parameters: string[]) => reportCommand(parameters, folder)
const targets = (...parameters: string[]) => {
  const printing = asked(...parameters)
  if (!('jobs' in printing)) throw new Error(printing.errors)
  return { to: printing.jobs.map(({ to }) => to), paper: printing.paper }
}

describe('what is to be printed', () => {
  it('goes to the file named, or to the folder under its own name, on A4 unless asked', () => {
    expect(targets('saw.json', '-o', 'saw report.pdf')).toEqual({
      to: [resolve(folder, 'saw report.pdf')],
      paper: 'a4',
    })
    expect(targets('--letter', '-o', 'out', 'saw.json', 'mower.json')).toEqual({
      to: [resolve(folder, 'out/saw.pdf'), resolve(folder, 'out/mower.pdf')],
      paper: 'letter',
    })
  })

  it.each([
    [['saw.json'], words.printing.nameTarget],
    [['saw.json', '-o'], words.printing.nameTarget],
    [['-o', 'x.pdf'], words.inspect.oneFile],
    [['saw.json', 'mower.json', '-o', 'x.pdf'], words.printing.folderForSeveral],
    [['saw.json', 'other/saw.json', '-o', 'out'], words.printing.sameName('saw.json')],
    [['saw.json', '-o', 'x.pdf', '--a5'], words.inspect.unknownOption('--a5')],
    [['--help'], words.printing.usage],
  ])('is refused with status 2 and the reason: %j', (parameters, why) => {
    const outcome = asked(...parameters)
    expect(outcome).toMatchObject({ exitStatus: 2, output: '' })
    expect('errors' in outcome && outcome.errors.startsWith(why)).toBe(true)
  })

  it('is nothing where one of the files cannot be read, with status 1 and its place', () => {
    const outcome = asked('saw.json', 'broken.json', '-o', 'out')
    expect(outcome).toMatchObject({ exitStatus: 1, output: '' })
    expect('errors' in outcome && outcome.errors).toMatch(
      /^broken\.json could not be read:\n\n- format \(line 1, column 12\): Here/,
    )
    expect(asked('none.json', '-o', 'out')).toMatchObject({ exitStatus: 1 })
  })
})
