import type { SeededRandom } from '../../proof/seeded-random'

/** What a value of a JSON text is replaced by: what hands, programs and malice put there. */
const values = [
  'null',
  'true',
  '""',
  '"54,032"',
  '"54.032"',
  '-1',
  '0',
  '1e308',
  '-1e308',
  '1e-320',
  '54,032',
  'NaN',
  'Infinity',
  '[]',
  '{}',
  '[[]]',
  '{"id":"x"}',
  '"\\u0000"',
  '"\\ud800"',
  '"<script>alert(1)</script>"',
  `"${'long '.repeat(200)}"`,
  '9007199254740993',
  `${'['.repeat(60)}${']'.repeat(60)}`,
]

const scraps = [
  '{',
  '}',
  '[',
  ']',
  ',',
  ':',
  '"',
  '\\',
  '\n',
  '\t',
  '\u0000',
  '\ufeff',
  '\u2028',
  '½',
  '🛠',
  '-',
  '.',
  'e',
  '0',
]

type Mutation = (text: string, random: SeededRandom) => string

const upTo = (random: SeededRandom, most: number) => Math.floor(random.even() * most)

function chosen<T>(random: SeededRandom, list: readonly T[]): T {
  const one = list[upTo(random, list.length)]
  if (one === undefined) throw new Error('nothing to choose from')
  return one
}

function spliced(text: string, at: number, length: number, put: string): string {
  return text.slice(0, at) + put + text.slice(at + length)
}

/** Where a pattern matches, one of them by chance; undefined where it does not. */
function matchIn(text: string, pattern: RegExp, random: SeededRandom) {
  const all = [...text.matchAll(pattern)]
  return all.length === 0 ? undefined : chosen(random, all)
}

const mutations: readonly Mutation[] = [
  // A value becomes another kind of value.
  (text, random) => {
    const found = matchIn(text, /:\s*("(?:[^"\\]|\\.)*"|-?\d[\d.eE+-]*|true|false|null)/g, random)
    if (!found) return text
    const at = found.index + found[0].length - (found[1]?.length ?? 0)
    return spliced(text, at, found[1]?.length ?? 0, chosen(random, values))
  },
  // A number grows, shrinks or turns over.
  (text, random) => {
    const found = matchIn(text, /-?\d+(?:\.\d+)?/g, random)
    if (!found) return text
    const factor = chosen(random, [-1, 0, 0.001, 0.1, 1.0000001, 10, 1000, 1e12])
    return spliced(text, found.index, found[0].length, `${Number(found[0]) * factor}`)
  },
  // A key is written otherwise, left out or written twice.
  (text, random) => {
    const found = matchIn(text, /"([a-zA-Z]+)"\s*:/g, random)
    if (!found) return text
    const key = found[1] ?? ''
    const other = chosen(random, [
      key.toLowerCase(),
      `${key}s`,
      '',
      '__proto__',
      'constructor',
      chosen(random, ['id', 'name', 'depthMm']),
    ])
    return spliced(text, found.index, found[0].length, `"${other}":`)
  },
  // An id refers to nothing, or two things have one.
  (text, random) => {
    const ids = [...text.matchAll(/"(?:id|[a-zA-Z]+Id)"\s*:\s*"([^"]*)"/g)]
    if (ids.length < 2) return text
    const [one, other] = [chosen(random, ids), chosen(random, ids)]
    return spliced(
      text,
      one.index,
      one[0].length,
      one[0].replace(one[1] ?? '', random.even() < 0.5 ? (other[1] ?? '') : 'nothing'),
    )
  },
  // A part is cut out, doubled, or moved to another place.
  (text, random) => {
    const [from, length] = [upTo(random, text.length), 1 + upTo(random, 400)]
    const part = text.slice(from, from + length)
    const how = random.even()
    if (how < 0.4) return spliced(text, from, length, '')
    return spliced(text, how < 0.7 ? from : upTo(random, text.length), 0, part)
  },
  // The end is missing, or something follows it.
  (text, random) =>
    random.even() < 0.7
      ? text.slice(0, upTo(random, text.length))
      : text + chosen(random, [text, '}', 'null', ',', '\u0000']),
  // Stray characters.
  (text, random) => spliced(text, upTo(random, text.length), upTo(random, 3), chosen(random, scraps)),
  // An array is filled up with copies of one of its entries.
  (text, random) => {
    const found = matchIn(text, /\[([^[\]{}]{1,200})\]/g, random)
    if (!found) return text
    const copies = Array.from({ length: 1 + upTo(random, 300) }, () => found[1]).join(',')
    return spliced(text, found.index, found[0].length, `[${copies}]`)
  },
]

/** The text with one thing wrong in it, or up to four; the same for the same draws. */
export function mutatedText(text: string, random: SeededRandom): string {
  const times = random.even() < 0.5 ? 1 : 1 + upTo(random, 4)
  return Array.from({ length: times }).reduce<string>(
    (mutated) => chosen(random, mutations)(mutated, random),
    text,
  )
}

/** The bytes with some of them changed, as a bad stick or a wrong program leaves them. */
export function mutatedBytes(bytes: Uint8Array, random: SeededRandom): Uint8Array {
  const mutated = bytes.slice()
  const count = 1 + upTo(random, 8)
  for (let i = 0; i < count; i++) mutated[upTo(random, mutated.length)] = upTo(random, 256)
  return mutated
}
