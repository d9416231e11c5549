import { describe, expect, it } from 'vitest'
import { mentionsOfElsewhere, shortcutsIn } from './mentions'
import { keptPaths, type SourceFile, textOf } from './source-files'

const texts: SourceFile[] = keptPaths()
  .filter((path) => path !== 'package-lock.json')
  .flatMap((path) => {
    const text = textOf(path)
    return text === undefined ? [] : [{ path, text }]
  })

describe('the texts of the project', () => {
  it('name no page and no place outside the repository', () => {
    expect(texts.length).toBeGreaterThan(0)
    expect(texts.flatMap(mentionsOfElsewhere)).toEqual([])
  })

  it('take no way round the compiler or the linter and leave nothing for later', () => {
    expect(texts.filter(({ path }) => /\.(ts|tsx|mjs|glsl|css)$/.test(path)).flatMap(shortcutsIn)).toEqual([])
  })
})

describe('the check of mentions', () => {
  it('finds a page by name and a path outside, with their lines', () => {
    const text = `one\nsee ${'METROLOGY'}.md\nin ${'/work'}/main`
    expect(mentionsOfElsewhere({ path: 'a.ts', text })).toEqual([
      `a.ts:2 has ${'METROLOGY'}.md`,
      `a.ts:3 has ${'/work'}/`,
    ])
  })

  it('finds a way round the compiler', () => {
    const text = `// ${'@ts'}-ignore\nconst a = 1 as ${'unknown'} as string`
    expect(shortcutsIn({ path: 'a.ts', text })).toEqual([
      `a.ts:1 has ${'@ts'}-ignore`,
      `a.ts:2 has as ${'unknown'} as`,
    ])
  })
})
