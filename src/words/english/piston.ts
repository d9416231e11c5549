import type { ClearanceRule, PistonState } from '../../core/measured'
import type { FitReason, FitSide, FitVerdict } from '../../core/piston/fits'
import type { OversizeReason } from '../../core/piston/oversize-choice'
import type { PistonLack } from '../../core/piston/piston-in-bore'
import type { PistonGap } from '../../core/piston/piston-size'
import type { GapVerdict } from '../../core/ring/ring-gaps'

const lackNames: Record<PistonLack, string> = {
  size: 'its size',
  height: 'the height at which that was measured',
  'crown-height': 'from its skirt edge to its crown',
  travel: 'the travel of the piston',
}

/** Pistons, their clearance, the oversize to bore to, and ring gaps. */
export const piston = {
  engineTitle: 'Pistons and oversize for the engine',
  states: {
    fitted: 'ran in a bore',
    'at-hand': 'is at hand',
    obtainable: 'can be had',
  } satisfies Record<PistonState, string>,
  clearance: {
    name: (piston: string) => `Clearance, ${piston}`,
    ranHere: 'ran here',
    range: (least: string, most: string) => `${least} to ${most}`,
    withDoubt: (microns: string, doubt: string) => `${microns} ± ${doubt}`,
    /** Which temperature the figure holds at. */
    atRest: (temperature: string) => `at rest at ${temperature}`,
    asMeasured: (figure: string, bore: string, piston: string) =>
      bore === piston
        ? `${figure} as measured at ${bore}`
        : `${figure} as measured, the bore at ${bore} and the piston at ${piston}`,
    rules: {
      'smallest-to-largest': 'smallest bore less piston to largest bore less piston',
      'largest-bore': 'largest bore less piston',
      'mean-bore': 'mean of the bore less piston',
      'smallest-bore': 'smallest bore less piston',
    } satisfies Record<ClearanceRule, string>,
    read: (size: string) => `piston ${size} at 20 °C`,
    fromRange: (size: string) => `piston about ${size}, not measured`,
    window: {
      both: {
        service: (min: string, max: string) => `at least ${min}, in service at most ${max}`,
        new: (min: string, max: string) => `${min} to ${max} when new`,
      },
      min: (min: string) => `at least ${min}`,
      max: {
        service: (max: string) => `in service at most ${max}`,
        new: (max: string) => `at most ${max} when new`,
      },
      none: 'no clearance from the manual entered',
    },
    verdicts: {
      inside: 'fits',
      'too-tight': 'too tight',
      'too-loose': 'too loose',
      'too-close': 'too close to call',
    } satisfies Record<FitVerdict, string>,
    leans: {
      inside: (chances: string) => `${chances} that it fits`,
      'too-tight': (chances: string) => `${chances} that it is too tight`,
      'too-loose': (chances: string) => `${chances} that it is too loose`,
    } satisfies Record<FitSide, (chances: string) => string>,
    even: 'about even whether it fits',
    asNew: {
      inside: 'within the clearance of new parts too',
      'too-tight': 'tighter than new parts may be',
      'too-loose': (max: string) => `looser than new parts may be, ${max}`,
      'too-close': (max: string) => `too close to call against the ${max} of new parts`,
    },
    otherGrade: (bore: string, piston: string) => `the bore is stamped ${bore}, the piston ${piston}`,
    unknown: {
      'no-size': 'nobody measured it and no sizes are given for it',
      'no-readings': 'no readings of this bore where the rings run',
      'other-oversize': 'it is for another oversize',
      'other-height':
        'measured at another height than the manual asks for, so that its limits do not speak of it',
    } satisfies Record<FitReason, string>,
    notYet: 'not yet',
    provisional: (gaps: readonly string[]) => `provisional: not recorded ${gaps.join(', ')}`,
    provisionalShort: 'provisional',
    gaps: {
      'no-micrometer': 'which micrometer measured the piston',
      'no-micrometer-check': 'what that micrometer reads on its own standard',
      'no-piston-temperature': 'temperature of the piston',
      'no-micrometer-temperature': 'temperature of the micrometer',
      'no-height': 'height at which the piston was measured',
    } satisfies Record<PistonGap, string>,
    others: 'Other pistons',
    othersFit: (fitting: number, all: number) =>
      fitting === 0
        ? 'none fits'
        : all === fitting
          ? all === 1
            ? 'fits'
            : 'all fit'
          : `${fitting} of ${all} fit`,
    other: (piston: string, figure: string, verdict: string) =>
      figure === '' ? `${piston}: ${verdict}` : `${piston}: ${figure}, ${verdict}`,
  },
  pairing: {
    name: 'Which piston in which bore',
    one: 'Piston nearest the middle of the window',
    served: (served: number, all: number) =>
      served === all ? 'all served' : `${served} of ${all} bores served`,
    nothing: 'none fits',
    pair: (bore: string, piston: string) => `${bore}: ${piston}`,
    close: (pair: string) => `${pair} (too close to call)`,
    worst: (departure: string, middle: string, bore: string) =>
      `at its worst ${departure} off the middle of the window, ${middle}, in bore ${bore}`,
    worstAlone: (departure: string, middle: string) => `at its worst ${departure} off it, ${middle}`,
    closeAlone: 'too close to call whether it fits',
    fitNone: (bores: string) => `no piston on offer fits ${bores}`,
    left: (bores: string) => `no piston is left for ${bores}`,
    notMeasured: (bores: string) => `not measured: ${bores}`,
    spare: (pistons: string) => `not needed: ${pistons}`,
  },
  oversize: {
    name: 'Next oversize',
    each: 'each bore its own',
    none: 'none',
    open: 'not known',
    alike: 'all cylinders alike',
    order: (bores: string) => `bore in this order, the worst first: ${bores}`,
    bore: (bore: string, largest: string, cleanUp: string, needed: string, off: string) =>
      `${bore} (${largest} + ${cleanUp} = ${needed}${off})`,
    boreTo: (bore: string, oversize: string) => `${bore} to ${oversize}`,
    off: (least: string, most: string) => `, ${least} to ${most} off`,
    close: 'too close to call whether it cleans up: bore the worst first and look',
    proven: 'cleans up',
    hint: (cleanUp: string) =>
      `${cleanUp} to clean up is a hint from memory of the trade: enter the manual's`,
    pistons: (pistons: string) => `pistons on offer for it: ${pistons}`,
    noPistons: 'no piston for it is on the list',
    notMeasured: (bores: string) => `not measured: ${bores}`,
    honed: 'the last of it is honed; a machinist says how much',
    liner: 'a liner can be replaced instead',
    why: {
      plated: (bore: string) =>
        `bore ${bore} is plated: it has no oversize; a plater strips and plates it anew`,
      'own-process': (bore: string) =>
        `bore ${bore} is aluminium-silicon: only the process of its own that the manual gives`,
      'manual-forbids': (bore: string) => `the manual forbids boring bore ${bore}`,
      'wall-not-recorded': (bore: string) => `say first what the wall of bore ${bore} is`,
      'no-readings': () => 'needs readings',
      'no-standard-size': () => 'needs the smallest new size',
      'none-given': () => 'no oversizes from the manual entered',
      'none-large-enough': (bore: string, cleanUp: string) =>
        `none in the manual is large enough for bore ${bore} with ${cleanUp} to clean up: a sleeve or another cylinder`,
    } satisfies Record<OversizeReason, (bore: string, cleanUp: string) => string>,
  },
  gap: {
    name: 'Ring gap',
    range: (least: string, most: string) => `${least} to ${most}`,
    each: (doubt: string) => `each ± ${doubt} by feeler`,
    typical: 'the doubt of the feeler is a typical one',
    onlyLand: 'only on wall that the rings never touch: not judged',
    window: {
      min: (min: string) => `at least ${min}`,
      max: {
        service: (max: string) => `in service at most ${max}`,
        new: (max: string) => `at most ${max} when new`,
      },
      none: 'no ring gap from the manual entered',
    },
    verdicts: {
      inside: 'inside',
      'too-small': 'too small',
      'too-large': 'too large',
      'too-close': 'too close to call',
    } satisfies Record<GapVerdict, string>,
    leans: {
      inside: (chances: string) => `${chances} that it is inside`,
      'too-small': (chances: string) => `${chances} that it is too small`,
      'too-large': (chances: string) => `${chances} that it is too large`,
    },
    taper: 'Taper by ring gaps',
    taperBetween: (top: string, bottom: string) => `${top} less ${bottom}, the gaps over π`,
    coarse: (doubt: string) => `too coarse to tell a taper under ${doubt}`,
    byGauge: (figure: string, differs: boolean) =>
      differs
        ? `the gauge says ${figure}: they differ beyond their doubt, so one of the two has a slip`
        : `the gauge says ${figure}: they agree as far as a feeler can tell`,
  },
  /** A piston drawn in the bore. */
  shown: {
    which: 'Piston shown in the bore',
    along: 'Place along the stroke',
    up: 'Up a level',
    down: 'Down a level',
    crown: (depth: string) => `Crown ${depth} below the deck.`,
    range: (least: string, most: string) => `${least} to ${most}`,
    clearance: (depth: string, clearance: string, doubt: string) =>
      `At ${depth}, where it was measured across: clearance ${clearance} (${doubt} each), at rest.`,
    gap: {
      measured: (depth: string, gap: string, doubt: string) =>
        `Ring at ${depth}: gap ${gap} ± ${doubt}, measured.`,
      bore: (depth: string, gap: string, doubt: string) =>
        `Ring at ${depth}: gap ${gap} ± ${doubt}, as the bore opens it.`,
    },
    between: 'Between levels: drawn, not measured.',
    lacks: (lacks: readonly PistonLack[]) =>
      `It is drawn once these are entered under Pistons: ${lacks.map((one) => lackNames[one]).join(', ')}.`,
  },
  panel: {
    lead: 'From the service manual, and as measured. A piston is measured across its skirt at a right angle to the pin.',
    window:
      'Clearance when new {min} to {max} mm, in service up to {limit} mm, taken as {rule}, at {atC} °C. The manual has the piston measured {height} mm above the lower edge of its skirt.',
    gapWindow: 'Ring gap when new {min} to {max} mm, in service up to {limit} mm.',
    boring: 'Boring takes off at least {cleanUp} mm until the wall is clean; {alike}.',
    wall: 'The manual on this wall: {bored}; {honed}. It is {liner}.',
    wallTitle: 'Boring and honing',
    pistonsTitle: 'Pistons',
    noPistons: 'None on the list yet.',
    what: '{name}: {state}{ranIn}, grade {grade}, for {oversize}.',
    ranIn: ', bore {bore}',
    read: 'It read {read}, {height} mm above the edge of the skirt, by {micrometer}; the piston at {temperature} °C, the micrometer at {micrometerTemperature} °C, by {thermometer}.',
    range: 'Not measured, it is from {min} to {max} mm at 20 °C.',
    doubt:
      'One reading is good to {doubt} µm (one standard uncertainty). It grows {expansion} per million and kelvin.',
    shape:
      'From the skirt’s lower edge it is {crown} mm to the edge of the crown and {ring} mm to the top ring, for the drawing.',
    stroke:
      'The piston travels {travel} mm; at the top its crown stands {crownAtTop} mm below the deck, for the drawing.',
    details: 'Doubt, expansion and shape',
    ofPiston: (piston: string, label: string) => `${piston}: ${label}`,
    labels: {
      min: 'Smallest clearance when new, mm',
      max: 'Largest clearance when new, mm',
      limit: 'Largest clearance in service, mm',
      rule: 'Rule for clearance',
      atC: 'Temperature that the clearances hold at, °C',
      manualHeight: 'Height above the skirt edge at which the manual has it measured, mm',
      gapMin: 'Smallest ring gap when new, mm',
      gapMax: 'Largest ring gap when new, mm',
      gapLimit: 'Largest ring gap in service, mm',
      cleanUp: 'What boring takes off at least, mm',
      alike: 'Whether all cylinders go to one oversize',
      bored: 'Whether the manual allows boring',
      honed: 'Whether the manual allows honing',
      liner: 'Whether it is a liner',
      name: 'name',
      state: 'where it is',
      ranIn: 'bore that it ran in',
      grade: 'grade',
      oversize: 'oversize that it is for, mm',
      read: 'size as the micrometer showed it, mm',
      height: 'height above the skirt edge, mm',
      micrometer: 'micrometer',
      temperature: 'temperature of the piston, °C',
      micrometerTemperature: 'temperature of the micrometer, °C',
      thermometer: 'thermometer',
      crown: 'skirt edge to crown, mm',
      topRing: 'skirt edge to top ring, mm',
      travel: 'Travel of the piston, mm',
      crownAtTop: 'Crown below the deck at the top, mm',
      rangeMin: 'smallest size it may have, mm',
      rangeMax: 'largest size it may have, mm',
      doubt: 'doubt of reading it, µm',
      expansion: 'expansion, per million and kelvin',
      feeler: 'Standard uncertainty of a gap by feeler, µm',
      gapDepth: (number: number) => `Depth of ring gap ${number}, mm`,
      gap: (number: number) => `Ring gap ${number}, mm`,
      newDepth: 'Depth of another ring gap, mm',
      newGap: 'Another ring gap, mm',
    },
    taken: (figure: string) => `taken as ${figure}`,
    hinted: (figure: string) => `${figure}, a hint from memory`,
    standardSize: 'the standard size',
    alike: { yes: 'all cylinders go to one oversize', no: 'each bore has its own oversize' },
    unsaid: { bored: 'no word on boring it', honed: 'no word on honing it' },
    mayBeBored: { yes: 'it may be bored', no: 'it is not bored' },
    mayBeHoned: { yes: 'it may be honed', no: 'it is not honed' },
    liner: { yes: 'a liner that can be taken out', no: 'no liner' },
    newMicrometer: 'another micrometer',
    add: {
      fitted: 'Add one that ran here',
      'at-hand': 'Add one at hand',
      obtainable: 'Add one that can be had',
    } satisfies Record<PistonState, string>,
    remove: (piston: string) => `Remove ${piston}`,
    gapsTitle: 'Ring gaps of this survey',
    gap: 'At {depth} mm deep {gap} mm.',
    newGap: 'Another: at {depth} mm deep {gap} mm.',
    feeler: 'A gap by feeler is good to {feeler} µm (one standard uncertainty).',
    waitsForDepth: 'Kept as a ring gap once its depth is there.',
    waitsForGap: 'Kept as a ring gap once the gap is there.',
    removeGap: (depth: string) => `Remove the ring gap at ${depth}`,
  },
  changes: {
    piston: 'piston',
    added: 'piston added',
    removed: 'piston removed',
    gap: 'ring gap',
    gapRemoved: 'ring gap removed',
  },
} as const
