import type { OvalityRule, TaperRule } from '../../core/measured'

/** The sentences about limits, and the names of the rules they are judged by. */
export const limits = {
  limits: {
    title: 'Limits',
    source: 'From the service manual for this engine. Borewall ships no limits.',
    band: 'New {newMin} to {newMax} mm; wear limit {wearLimit} mm.',
    ovality: 'Out-of-round up to {ovalityLimit} mm, judged as {ovalityRule}.',
    ovalityAxes: 'The manual calls the axis at {ovalityX}° X and the axis at {ovalityY}° Y.',
    taper: 'Taper up to {taperLimit} mm, judged as {taperRule}.',
    /** Where the manual gives limits in proportion to the bore or to the travel. */
    proportions:
      'In proportion: out-of-round up to {ovalityPerMm} and taper up to {taperPerMmOfBore} mm per mm of bore; taper up to {taperPerMmOfTravel} mm per mm of travel, which is {travel} mm. Of several limits the smallest is judged.',
    /** To limits in proportion, to oversizes and to the service interval. */
    more: 'More limits',
    oversizes: 'Oversizes in the manual: {oversizes} mm. This bore was finished to {oversize}.',
    standardSize: 'the standard size',
    oversizeOf: (mm: string) => `+${mm}`,
    oversizeMoves: (oversize: string) =>
      `Finished to an oversize of ${oversize}: every size of the limits is larger by as much.`,
    interval: 'To be measured again every {serviceInterval} h.',
    grade: 'Grade {gradeName}: {gradeMin} to {gradeMax}',
    boreGrade: 'This bore is stamped {grade}.',
    labels: {
      newMin: 'Smallest size when new, mm',
      newMax: 'Largest size when new, mm',
      wearLimit: 'Wear limit, largest size in service, mm',
      ovalityLimit: 'Out-of-round limit, mm',
      ovalityRule: 'Rule for out-of-round',
      ovalityX: 'Axis X of the manual, degrees',
      ovalityY: 'Axis Y of the manual, degrees',
      taperLimit: 'Taper limit, mm',
      taperRule: 'Rule for taper',
      ovalityPerMm: 'Out-of-round limit per mm of bore, mm',
      taperPerMmOfBore: 'Taper limit per mm of bore, mm',
      taperPerMmOfTravel: 'Taper limit per mm of travel, mm',
      travel: 'Travel of the piston, mm',
      serviceInterval: 'Service interval, hours after which the manual wants the bore measured again',
      gradeName: 'Name of the grade',
      gradeMin: 'Smallest size of the grade, mm',
      gradeMax: 'Largest size of the grade, mm',
      grade: 'Grade stamped on this bore',
      oversizes: 'Oversizes in the manual, mm, with spaces between',
      oversize: 'Oversize of this bore',
    },
    none: 'none given',
    noGrade: 'no grade',
    addGrade: 'Add a grade',
    removeGrade: (name: string) => `Remove grade ${name}`,
    wearAlone: 'With a wear limit, it alone is judged; the new size is drawn.',
    rulesDiffer: 'The same readings can pass one rule and fail another. Choose the one your manual prints.',
  },
  /** Short names of the rules, printed beside each figure. */
  ovalityRules: {
    'largest-less-smallest-at-a-level': 'largest less smallest at one level',
    'across-less-along-at-a-level': 'X less Y at one level',
    pooled: 'largest on X less smallest on Y, all levels pooled',
  } satisfies Record<OvalityRule, string>,
  taperRules: {
    'between-levels-of-an-axis': 'largest less smallest along one axis',
    'top-less-bottom-of-an-axis': 'top less bottom on one axis',
    'largest-top-less-largest-bottom': 'largest at the top less largest at the bottom',
    'largest-top-less-smallest-bottom': 'largest at the top less smallest at the bottom',
    'level-means': 'mean at the top less mean at the bottom',
  } satisfies Record<TaperRule, string>,
}
