/** Nearer than this to a survey, as a share of the whole line, a hand means the survey. */
const snap = 0.02

/**
 * Where a time lies along a line whose surveys lie at the given places, 0 to 1, of what is measured of it; times count
 * surveys from 0, and one past the last is the end of the hours to come.
 */
export function placeInTime(places: readonly number[], at: number, measured = 1): number {
  const last = places.length - 1
  if (at > last) return measured + (Math.min(at, last + 1) - last) * (1 - measured)
  const before = Math.floor(at)
  const from = places[before] ?? 0
  return (from + (at - before) * ((places[before + 1] ?? from) - from)) * measured
}

/** The time at a place along the line; near a survey it is exactly that. */
export function timeAtPlace(places: readonly number[], place: number, measured = 1): number {
  const near = places.findIndex((survey) => Math.abs(survey * measured - place) <= snap)
  if (near >= 0) return near
  const after = places.findIndex((survey) => survey * measured > place)
  const last = places.length - 1
  if (after === 0) return 0
  if (after < 0) return measured < 1 ? last + (place - measured) / (1 - measured) : last
  const from = (places[after - 1] ?? 0) * measured
  return after - 1 + (place - from) / ((places[after] ?? 1) * measured - from)
}
