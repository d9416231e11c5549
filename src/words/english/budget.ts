import type { ContributionInput, Scope, SourceKind } from '../../core/findings'

/** What a doubt is made of, and what would shrink it. */
export const budget = {
  budget: {
    title: 'What the doubt is made of',
    of: (place: string, doubt: string) =>
      `At ${place}, ${doubt} (95 %), made of these standard uncertainties u.`,
    heads: { part: 'Part', amount: 'u, µm', share: 'Share' },
    kinds: {
      'wall-expansion': 'how much the wall grows with warmth',
      'standard-expansion': 'how much the standard grows with warmth',
      'reference-temperature': 'temperature',
      'bore-thermometer': 'thermometer on the bore',
      'temperature-difference': 'bore and standard not equally warm',
      standard: 'the standard itself',
      'standard-error': 'the micrometer not checked',
      setting: 'setting the gauge',
      'zero-reading': 'reading the zero',
      'gauge-warmth': 'the gauge warmed since its setting',
      'drift-preset': 'drift, no closing zero',
      'drift-measured': 'drift between the zeros',
      repeatability: 'repeats',
      scale: 'dial or scale',
      place: 'depth of the gauge on a slope',
      rocking: 'tilt that rocking left',
      'piston-expansion': 'how much the piston grows with warmth',
      'piston-reading': 'reading the micrometer over the piston',
      'piston-range': 'the sizes that the piston may have',
    } satisfies Record<SourceKind, string>,
    assumed: 'assumed',
    distributions: {
      normal: 'normal',
      rectangular: 'rectangular',
      student: (freedom: string) => `normal, ${freedom} degrees of freedom`,
    },
    scopes: {
      job: 'one error for the whole job',
      standard: 'one for all set with this standard',
      thermometer: 'one for all this thermometer read',
      'set-up': 'one for this setting',
      bore: 'one for this bore',
      piston: 'one for this piston',
      station: 'of this station alone',
      repeat: 'of each reading alone',
    } satisfies Record<Scope, string>,
    inputs: {
      K: (u: string, sensitivity: string) => `${u} K × ${sensitivity}/K`,
      '1/K': (u: string, sensitivity: string) => `${u} per million and K × ${sensitivity}·K`,
      mm: (u: string, sensitivity: string) => `${u} × ${sensitivity}`,
    } satisfies Record<ContributionInput['unit'], unknown>,
    mostly: (part: string, share: string) => `Most of it is ${part} (${share}).`,
    shared: (part: string, share: string) => `The largest part is ${part} (${share}).`,
    improve: {
      'more-repeats': (before: string, after: string) =>
        `Each station read twice more: ${before} → ${after}.`,
      'set-by-ring': (before: string, after: string) => `Set by a ring: ${before} → ${after}.`,
      'record-what-is-missing': (before: string, after: string) =>
        `What is assumed measured and written down: ${before} → ${after}.`,
      'know-the-temperatures': (before: string, after: string) =>
        `Temperatures known twice as well: ${before} → ${after}.`,
    },
    nothing: 'No single step here would take off a twentieth of it.',
  },
} as const
