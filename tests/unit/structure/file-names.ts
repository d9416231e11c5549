/** What the top level may hold; other settings live with the tests. */
const topLevel = new Set([
  'README.md',
  'DEVELOPERS.md',
  'package.json',
  'index.html',
  'src',
  'tests',
  'public',
  'scenarios',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  'biome.json',
  '.npmrc',
  '.gitignore',
  '.ci',
])

const catchAll = /^(utils?|helpers?|common|misc|miscellaneous|types?|shared|lib|index|stuff)$/i

/** Names at the top level that do not belong there. */
export function strayTopLevel(paths: readonly string[]): string[] {
  return [...new Set(paths.map((path) => path.split('/')[0] ?? ''))].filter((name) => !topLevel.has(name))
}

/** Modules and folders below src and tests whose name says nothing of what is inside. */
export function catchAllNames(paths: readonly string[]): string[] {
  return paths.filter((path) => {
    if (!/^(src|tests)\//.test(path)) return false
    const parts = path.split('/').slice(1)
    const file = parts.pop() ?? ''
    const isModule = /\.(ts|tsx|mjs|css)$/.test(file)
    return parts.some((part) => catchAll.test(part)) || (isModule && catchAll.test(file.split('.')[0] ?? ''))
  })
}

/** Source files that are neither a kebab-case module nor a PascalCase component. */
export function oddNames(paths: readonly string[]): string[] {
  return paths.filter((path) => {
    const file = path.split('/').pop() ?? ''
    if (!/^(src|tests)\//.test(path) || !/\.(ts|tsx|mjs)$/.test(file)) return false
    const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z]+)*\.(ts|tsx|mjs)$/
    const component = /^([A-Z][a-z0-9]*)+(\.test)?\.tsx$/
    return !kebab.test(file) && !component.test(file)
  })
}
