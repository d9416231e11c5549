import { renderToStaticMarkup } from 'react-dom/server'
import { describe, expect, it } from 'vitest'
import { CutWall, type CutWallProps } from '../../../src/charts/CutWall'
import type { CutPoint } from '../../../src/core/surface/grid-cuts'

/** A point without limits to be near to. */
const at = (place: number, proven = 0): CutPoint => ({
  at: place,
  deviationUm: place,
  doubtUm: [-Infinity, -Infinity, Infinity, Infinity],
  proven,
  hatchedAfter: false,
})

/** Measured from 0 to 4 and proven too large from 3, then nobody measured. */
const wall: Omit<CutWallProps, 'unmeasured'> = {
  area: { left: 0, top: 0, width: 40, height: 40, lengthMm: 1 },
  stretches: [
    { hatched: false, points: [at(0), at(1), at(2), at(3, 1), at(4, 1)] },
    { hatched: true, points: [at(4), at(5)] },
  ],
  limits: [],
  paint: { span: { lowUm: -10, highUm: 10 }, colour: () => '#abcdef' },
  outlineOf: (points) => `O${points[0]?.at}-${points.at(-1)?.at}`,
  faceOf: (points) => `F${points[0]?.at}-${points.at(-1)?.at}`,
}

function pathsOf(unmeasured: CutWallProps['unmeasured']): readonly string[] {
  const markup = renderToStaticMarkup(<CutWall {...wall} unmeasured={unmeasured} />)
  return [...markup.matchAll(/<path d="([^"]*)"[^>]*class="([^"]*)"/g)].map(([, d, name]) =>
    name?.includes('hatch') ? `${name}` : `${name} ${d}`,
  )
}

describe('a wall that is cut open', () => {
  it('is drawn pale under the hatch, with a face of its own, where nobody measured', () => {
    expect(pathsOf('pale')).toEqual([
      'chart-cut O0-4',
      'chart-cut O4-5',
      'map-unmeasured O4-5',
      'map-hatch',
      'map-proven map-proven-above O3-4',
      'chart-face-unmeasured F4-5',
      'chart-face F0-4',
    ])
  })

  it('or is left open there, with the hatch alone', () => {
    expect(pathsOf('open')).toEqual([
      'chart-cut O0-4',
      'chart-hatch',
      'map-proven map-proven-above O3-4',
      'chart-face F0-4',
    ])
  })
})
