import { describe, expect, it } from 'vitest'
import { catchAllNames, oddNames, strayTopLevel } from './file-names'
import { keptPaths } from './source-files'

const paths = keptPaths()

describe('the files of the project', () => {
  it('stand in the few folders and files of the top level', () => {
    expect(paths).toContain('package.json')
    expect(strayTopLevel(paths)).toEqual([])
  })

  it('have names that say what is inside', () => {
    expect(catchAllNames(paths)).toEqual([])
  })

  it('are named in kebab case, components in Pascal case', () => {
    expect(oddNames(paths)).toEqual([])
  })
})

describe('the check of file names', () => {
  it('finds a stray file and a stray folder at the top level, once each', () => {
    expect(strayTopLevel(['README.md', 'notes.txt', 'docs/a.md', 'docs/b.md', '.ci/run'])).toEqual([
      'notes.txt',
      'docs',
    ])
  })

  it('finds catch-all modules, barrels and folders, and lets a test of its own name be', () => {
    const bad = ['src/core/utils.ts', 'src/core/index.ts', 'tests/unit/helpers/a.ts', 'src/job/types.d.ts']
    expect(catchAllNames([...bad, 'src/core/common-part.ts', 'src/core/diameter.ts', 'index.html'])).toEqual(
      bad,
    )
  })

  it('finds names in neither case', () => {
    const bad = ['src/core/wallGrid.ts', 'src/core/Wall.ts', 'src/pages/bench_page.tsx']
    expect(oddNames([...bad, 'src/core/wall-grid.ts', 'src/pages/Bench.tsx', 'tests/a/b.test.ts'])).toEqual(
      bad,
    )
  })
})
