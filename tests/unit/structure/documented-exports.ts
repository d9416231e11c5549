import { type ESTree, parseSync } from 'vite'
import type { SourceFile } from './source-files'

/**
 * The exported functions, classes and constants without a comment of their own right above them. Files of
 * plain data, whose one comment at the head speaks for all, are for the caller to leave out.
 */
export function undocumentedExports({ path, text }: SourceFile): string[] {
  const { program, comments } = parseSync(path, text)
  const endsOfDocs = new Set(
    comments
      .filter(({ type, value }) => type === 'Block' && value.startsWith('*') && value.trim().length > 1)
      .map(({ end }) => end),
  )
  return program.body.flatMap((statement) => {
    if (statement.type !== 'ExportNamedDeclaration' && statement.type !== 'ExportDefaultDeclaration')
      return []
    const names = namesOf(statement)
    const before = text.slice(0, statement.start).trimEnd().length
    return endsOfDocs.has(before) ? [] : names.map((name) => `${path}: ${name}`)
  })
}

type Exporting = ESTree.ExportNamedDeclaration | ESTree.ExportDefaultDeclaration

function namesOf(statement: Exporting): string[] {
  if (statement.type === 'ExportDefaultDeclaration') return ['default']
  const { declaration, source, specifiers, exportKind } = statement
  if (declaration?.type === 'VariableDeclaration') {
    return declaration.declarations.map(({ id }) => (id.type === 'Identifier' ? id.name : 'a pattern'))
  }
  if (declaration?.type === 'FunctionDeclaration' || declaration?.type === 'ClassDeclaration') {
    return [declaration.id?.name ?? 'unnamed']
  }
  // A list at the end of a file hides what is public; re-exported names are documented at their source.
  const isListOfValues = declaration === null && source === null && exportKind === 'value'
  return isListOfValues
    ? specifiers.map(({ exported }) => ('name' in exported ? exported.name : exported.value))
    : []
}
