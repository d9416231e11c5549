import type { Bore, Spec } from '../measured'

/**
 * The spec as it holds for a bore, mm: one finished to an oversize has every size (new, grades, wear limit)
 * larger by as much. Limits of shape stay. Own derivation: a manual's oversize is a step of nominal size.
 */
export function specOfBore(spec: Spec, { oversizeMm = 0 }: Pick<Bore, 'oversizeMm'>): Spec {
  if (oversizeMm === 0) return spec
  const { newMinMm, newMaxMm, wearLimitMm, grades } = spec
  const moved = (mm: number) => Math.round((mm + oversizeMm) * 1e6) / 1e6
  return {
    ...spec,
    ...(newMinMm === undefined ? {} : { newMinMm: moved(newMinMm) }),
    ...(newMaxMm === undefined ? {} : { newMaxMm: moved(newMaxMm) }),
    ...(wearLimitMm === undefined ? {} : { wearLimitMm: moved(wearLimitMm) }),
    ...(grades === undefined
      ? {}
      : {
          grades: grades.map((grade) => ({
            ...grade,
            minMm: moved(grade.minMm),
            maxMm: moved(grade.maxMm),
          })),
        }),
  }
}
