import { roughSizeMm } from '../../core/diameter/entry'
import type { SurfaceKind, SurfacePlace } from '../../core/measured'
import { newId } from '../../job/new-id'
import { addSurfaceFinding, shapeOfPlace } from '../../job/surface-commands'
import { openSurface } from '../../session/session'
import { words } from '../../words/words'
import { perform } from './perform'
import type { Refusal } from './TypedField'
import type { OnBench } from './use-job'

/** Records what lies at a place of the wall and opens it, to be told more of. */
export function recordSurface(
  { bore, survey, setUp }: OnBench,
  place: SurfacePlace,
  kind: SurfaceKind = 'scratch',
): Refusal {
  const id = newId()
  const shape = shapeOfPlace(place, roughSizeMm(setUp))
  const refusal = perform(words.surface.changes.added, (job) =>
    addSurfaceFinding(job, { boreId: bore.id, surveyId: survey.id }, { id, kind, shape, ...place }),
  )
  if (refusal === undefined) openSurface(id)
  return refusal
}
