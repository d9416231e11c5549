import type { Job } from '../../src/job/schema'

/** What would run, break a page or turn its text round, if it were taken for anything but text. */
const script = '<script>window.ran = true</script>'
const image = '<img src=x onerror="window.ran=true">'
const turned = '\u202e\u05e2\u05d1\u05e8\u05d9\u05ea \u0627\u0644\u0639\u0631\u0628\u064a\u0629'
const emoji = '\u{1f468}\u{200d}\u{1f469}\u{200d}\u{1f467}\u{1f527}'

/** A text of this length that begins with everything hostile. */
export function hostileText(length: number): string {
  return `${script}${image}${turned}${emoji}{bore}[term]"'&`.padEnd(length, 'Wm').slice(0, length)
}

/** The job with a hostile text in every field of free text, as long as it may be. */
export function hostileJob(job: Job): Job {
  const name = hostileText(120)
  return {
    ...job,
    name,
    machine: name,
    customer: name,
    note: hostileText(10_000),
    gauges: job.gauges.map((gauge) => ({ ...gauge, name })),
    standards: job.standards.map((standard) => ({ ...standard, name })),
    thermometers: job.thermometers.map((thermometer) => ({ ...thermometer, name })),
    setUps: job.setUps.map((setUp) => ({ ...setUp, name })),
    bores: job.bores.map((bore) => ({
      ...bore,
      name,
      ports: bore.ports.map((port) => ({ ...port, name })),
      belts: bore.belts.map((belt) => ({ ...belt, name })),
      surveys: bore.surveys.map((survey) => ({
        ...survey,
        name,
        measuredBy: name,
        surfaceFindings: [
          {
            id: 'hostile',
            kind: 'scratch',
            shape: 'streak',
            catchesNail: true,
            fromDepthMm: 10,
            toDepthMm: 20,
            fromDegrees: 0,
            toDegrees: 0,
            note: hostileText(10_000),
          },
        ],
      })),
    })),
  }
}
