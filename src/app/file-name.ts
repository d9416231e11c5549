const longestSlug = 60

/**
 * The name of the file that a job is saved to: its name in letters, digits and hyphens, and the day, as in
 * `garden-saw-2026-03-09.json`. `fallback` stands in for a job without a name.
 */
export function fileName(jobName: string, day: Date, fallback: string, ending = 'json'): string {
  return `${slugOf(jobName) || slugOf(fallback)}-${dayText(day)}.${ending}`
}

/** A name in small letters, digits and hyphens. */
export function slugOf(name: string): string {
  const letters = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
  return [...letters].slice(0, longestSlug).join('').replace(/^-|-$/g, '')
}

/** The day on this machine's calendar: 2026-03-09. */
export function dayText(day: Date): string {
  const two = (value: number) => String(value).padStart(2, '0')
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`
}
