import type { Job } from '../job/schema'
import { findingOf, gridOfBore } from '../job/selectors'
import type { BoreRow, RowBore } from '../scene/bore-row'
import { boreTitle, largestFigure } from '../words/compared'

/**
 * The bores that have a wall to draw, those of the engine first, each with its name and its largest diameter.
 * Undefined where the bore in hand has none, or where it is the only one.
 */
export function rowOf(job: Job, boreId: string, surveyId: string | undefined): BoreRow | undefined {
  const inOrder = [
    ...job.bores.filter(({ role }) => role === 'of-this-engine'),
    ...job.bores.filter(({ role }) => role === 'for-comparison'),
  ]
  const bores = inOrder.flatMap((bore): RowBore[] => {
    const survey = bore.id === boreId ? surveyId : undefined
    const grid = gridOfBore(job, bore.id, survey)
    const finding = findingOf(job, bore.id, survey)
    if (!grid || !finding) return []
    const { pair, stations, surface } = finding
    const figure = largestFigure(finding)
    const title = boreTitle(bore)
    return [
      { id: bore.id, title, figure, grid, ports: bore.ports, stations, surface, ...(pair ? { pair } : {}) },
    ]
  })
  const chosen = bores.findIndex(({ id }) => id === boreId)
  return chosen < 0 || bores.length < 2 ? undefined : { bores, chosen }
}
