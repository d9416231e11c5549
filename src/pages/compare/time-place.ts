/** Nearer than this to a survey, as a share of the whole line, a hand means the survey. */
const snap = 0.02

/** Where a time lies along a line whose surveys lie at the given places, 0 to 1; times count surveys from 0. */
export function placeInTime(places: readonly number[], at: number): number {
  const before = Math.min(Math.floor(at), places.length - 1)
  const from = places[before] ?? 0
  return from + (at - before) * ((places[before + 1] ?? from) - from)
}

/** The time at a place along the line; near a survey it is exactly that. */
export function timeAtPlace(places: readonly number[], place: number): number {
  const near = places.findIndex((survey) => Math.abs(survey - place) <= snap)
  if (near >= 0) return near
  const after = places.findIndex((survey) => survey > place)
  if (after <= 0) return after === 0 ? 0 : places.length - 1
  const from = places[after - 1] ?? 0
  return after - 1 + (place - from) / ((places[after] ?? 1) - from)
}
