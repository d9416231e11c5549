const minute = 60_000
const hour = 60 * minute
const day = 24 * hour

/** So many earlier versions of a job are kept at most. */
export const mostVersions = 40

/** While a job is being changed, a version is kept this often, ms. */
export const versionEvery = 10 * minute

export interface VersionAge {
  readonly key: number
  /** When the job was last changed in this version, ms since 1970. */
  readonly at: number
}

/**
 * The keys of the versions to let go of: all of the last two hours stay, then the last of each hour for two
 * days, of each day for two months, of each 30 days for good, and never more than `mostVersions`.
 */
export function versionsToDrop(versions: readonly VersionAge[], now: number): readonly number[] {
  const newestFirst = [...versions].sort((one, other) => other.at - one.at || other.key - one.key)
  const taken = new Set<string>()
  const kept: number[] = []
  for (const { key, at } of newestFirst) {
    const period = periodOf(at, now)
    if (kept.length >= mostVersions || (period !== undefined && taken.has(period))) continue
    if (period !== undefined) taken.add(period)
    kept.push(key)
  }
  const stays = new Set(kept)
  return versions.filter(({ key }) => !stays.has(key)).map(({ key }) => key)
}

/** The stretch of time of which one version is enough; none for a version that stays beside all others. */
function periodOf(at: number, now: number): string | undefined {
  const age = now - at
  if (age < 2 * hour) return undefined
  const length = age < 2 * day ? hour : age < 60 * day ? day : 30 * day
  return `${length} ${Math.floor(at / length)}`
}
