import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { jsonProblems, mostDepth } from '../../../src/job/json-text'
import { runCount } from '../../proof/run-count'

function engineTakes(text: string): boolean {
  try {
    JSON.parse(text)
    return true
  } catch (error) {
    if (error instanceof SyntaxError) return false
    throw error
  }
}

describe('checking a text for JSON', () => {
  // The two example texts of RFC 8259 (2017), section 13, abridged to their shapes.
  it('takes the examples of RFC 8259, section 13', () => {
    const image =
      '{ "Image": { "Width": 800, "Height": 600, "Title": "View from 15th Floor", "Thumbnail": { "Url": "http://www.example.com/image/481989943", "Height": 125, "Width": 100 }, "Animated" : false, "IDs": [116, 943, 234, 38793] } }'
    const zip =
      '[ { "precision": "zip", "Latitude": 37.7668, "Longitude": -122.3959, "Address": "", "City": "SAN FRANCISCO", "State": "CA", "Zip": "94107", "Country": "US" } ]'
    for (const text of [image, zip, '"Hello world!"', '42', 'true']) expect(jsonProblems(text)).toEqual([])
  })

  it('agrees with the JSON parser of the engine on spoilt texts (seed 20240229)', () => {
    const spoiltText = fc
      .tuple(
        fc.json({ maxDepth: 4 }),
        fc.nat(),
        fc.nat(3),
        fc.constantFrom(...'[]{}:,"\\0123456789.eE+-tfn \n\u0000ü'),
      )
      .map(([text, at, cut, letter]) => {
        const place = at % (text.length + 1)
        return text.slice(0, place) + letter + text.slice(place + cut)
      })
    fc.assert(
      fc.property(spoiltText, (text) => {
        const stopped = jsonProblems(text).some(({ code }) => code !== 'duplicate-key')
        expect(!stopped).toBe(engineTakes(text))
      }),
      { seed: 20240229, numRuns: runCount({ quick: 2000, full: 200_000 }) },
    )
  })

  it('agrees with the JSON parser of the engine on whole texts, with white space anywhere (seed 31)', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), fc.constantFrom('', ' ', '\t', '  '), (value, indent) => {
        expect(jsonProblems(JSON.stringify(value, null, indent))).toEqual([])
      }),
      { seed: 31, numRuns: runCount({ quick: 500, full: 20_000 }) },
    )
  })

  it('takes nesting up to its limit and not one more', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth)
    expect(jsonProblems(nested(mostDepth))).toEqual([])
    expect(jsonProblems(nested(mostDepth + 1))).toMatchObject([{ code: 'too-deep' }])
  })
})
