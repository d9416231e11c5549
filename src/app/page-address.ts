import { type PageName, pageNames } from '../session/session'
import { type ExampleName, exampleAddress } from './examples'

const field = 'page'

/** The page that the fragment of an address asks for. */
export function pageIn(fragment: string): PageName {
  const asked = new URLSearchParams(fragment.replace(/^#/, '')).get(field)
  return pageNames.find((name) => name === asked) ?? 'bench'
}

/** The fragment of an example, and of any page but the bench; empty where it need say nothing. */
export function addressOf(example: ExampleName | undefined, page: PageName): string {
  const parts = [
    ...(example === undefined ? [] : [exampleAddress(example).slice(1)]),
    ...(page === 'bench' ? [] : [`${field}=${page}`]),
  ]
  return parts.length === 0 ? '' : `#${parts.join('&')}`
}
