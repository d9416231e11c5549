import { posix } from 'node:path'
import { type ESTree, parseSync, Visitor } from 'vite'
import type { SourceFile } from './source-files'

export interface Import {
  /** The path of the file meant, or the name of a package as written. */
  readonly target: string
  readonly isPackage: boolean
}

/**
 * Everything a file reaches for: imports, re-exports, imports at run time, types named by `import('…')`, and
 * workers started by `new URL('…', import.meta.url)`. Imports of types count like any other.
 */
export function importsOf(file: SourceFile, paths: ReadonlySet<string>): Import[] {
  return specifiersOf(file).map((specifier) => {
    if (!specifier.startsWith('.')) return { target: specifier, isPackage: true }
    return { target: resolved(file.path, specifier, paths), isPackage: false }
  })
}

function specifiersOf({ path, text }: SourceFile): string[] {
  const { program, errors } = parseSync(path, text)
  if (errors[0]) throw new Error(`${path} cannot be parsed: ${errors[0].message}`)
  const found: string[] = []
  const take = (source: ESTree.Expression | null | undefined) => {
    if (source?.type === 'Literal' && typeof source.value === 'string') found.push(source.value)
  }
  new Visitor({
    ImportDeclaration: (node) => take(node.source),
    ExportNamedDeclaration: (node) => take(node.source),
    ExportAllDeclaration: (node) => take(node.source),
    ImportExpression: (node) => take(node.source),
    TSImportType: (node) => take(node.source),
    NewExpression: (node) => {
      const first = node.arguments[0]
      const isUrl = node.callee.type === 'Identifier' && node.callee.name === 'URL'
      if (isUrl && node.arguments.length === 2 && first?.type !== 'SpreadElement') take(first)
    },
  }).visit(program)
  return found
}

/** The file meant by a relative import, with the ending that was left out. */
function resolved(from: string, specifier: string, paths: ReadonlySet<string>): string {
  const bare = posix.join(posix.dirname(from), specifier.replace(/\?.*$/, ''))
  const candidates = [bare, `${bare}.ts`, `${bare}.tsx`, `${bare}.mjs`, `${bare}/index.ts`]
  return candidates.find((candidate) => paths.has(candidate)) ?? bare
}
