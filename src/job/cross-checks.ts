import { entryFits, isOfSizes } from '../core/diameter/entry'
import type { Place } from '../core/findings'
import type { Bore, Measured, Reading, SetUp, Survey } from '../core/measured'
import type { Flaw, ReferredList } from '../core/problem'

export interface PlacedFlaw {
  readonly path: PropertyKey[]
  readonly flaw: Flaw
}

/** What is wrong between fields that are each right by themselves: references, repeats, readings off the plan. */
export function crossProblems(measured: Measured): PlacedFlaw[] {
  return [
    ...axesOfTheManual(measured),
    ...repeated(measured.spec.grades ?? [], ['spec', 'grades'], 'name', (grade) => ({
      code: 'duplicate-name',
      name: grade.name,
    })),
    ...(['gauges', 'standards', 'thermometers', 'setUps', 'bores'] as const).flatMap((list) =>
      repeatedIds(measured[list], [list]),
    ),
    ...measured.setUps.flatMap((setUp, index) => setUpProblems(setUp, ['setUps', index], measured)),
    ...repeatedSurveys(measured.bores),
    ...measured.bores.flatMap((bore, index) => boreProblems(bore, ['bores', index], measured)),
    ...pistonProblems(measured),
  ]
}

function axesOfTheManual({ spec }: Measured): PlacedFlaw[] {
  const axes = spec.ovalityAxesDegrees
  if (!axes || axes.x !== axes.y) return []
  const flaw: Flaw = { code: 'duplicate-value', value: axes.y, unit: '°' }
  return [{ path: ['spec', 'ovalityAxesDegrees', 'y'], flaw }]
}

function pistonProblems(measured: Measured): PlacedFlaw[] {
  const { pistons = [] } = measured
  const ids = (list: 'bores' | 'standards' | 'thermometers') => measured[list].map(({ id }) => id)
  return [
    ...repeatedIds(pistons, ['pistons']),
    ...pistons.flatMap(({ boreId, standardId, thermometerId }, index) => [
      ...unknownReference(boreId, ids('bores'), 'bores', ['pistons', index, 'boreId']),
      ...unknownReference(standardId, ids('standards'), 'standards', ['pistons', index, 'standardId']),
      ...unknownReference(thermometerId, ids('thermometers'), 'thermometers', [
        'pistons',
        index,
        'thermometerId',
      ]),
    ]),
  ]
}

function scanProblems({ scans = [], surveys }: Bore, path: PropertyKey[], measured: Measured): PlacedFlaw[] {
  const gauges = measured.gauges.map(({ id }) => id)
  const ids = surveys.map(({ id }) => id)
  return [
    ...repeatedIds(scans, [...path, 'scans']),
    ...scans.flatMap(({ gaugeId, tieSurveyId }, index) => {
      const at = [...path, 'scans', index]
      return [
        ...unknownReference(gaugeId, gauges, 'gauges', [...at, 'gaugeId']),
        ...unknownReference(tieSurveyId, ids, 'surveys', [...at, 'tieSurveyId']),
      ]
    }),
  ]
}

/** Every entry after the first with the same value of a field. */
function repeated<Item, Field extends keyof Item & string>(
  items: readonly Item[],
  path: PropertyKey[],
  field: Field,
  flawOf: (item: Item) => Flaw,
): PlacedFlaw[] {
  const seen = new Set<unknown>()
  return items.flatMap((item, index) => {
    if (!seen.has(item[field])) {
      seen.add(item[field])
      return []
    }
    return [{ path: [...path, index, field], flaw: flawOf(item) }]
  })
}

function repeatedIds(items: readonly { readonly id: string }[], path: PropertyKey[]): PlacedFlaw[] {
  return repeated(items, path, 'id', ({ id }) => ({ code: 'duplicate-id', id }))
}

/** Surveys are named in findings by their id alone, so it may occur once in the whole job. */
function repeatedSurveys(bores: readonly Bore[]): PlacedFlaw[] {
  const seen = new Set<string>()
  return bores.flatMap((bore, boreIndex) =>
    bore.surveys.flatMap(({ id }, index): PlacedFlaw[] => {
      if (!seen.has(id)) {
        seen.add(id)
        return []
      }
      const path = ['bores', boreIndex, 'surveys', index, 'id']
      return [{ path, flaw: { code: 'duplicate-id', id } }]
    }),
  )
}

function unknownReference(
  found: string | undefined,
  known: readonly string[],
  list: ReferredList,
  path: PropertyKey[],
): PlacedFlaw[] {
  if (found === undefined || known.includes(found)) return []
  return [{ path, flaw: { code: 'unknown-reference', list, found, known } }]
}

function setUpProblems(setUp: SetUp, path: PropertyKey[], measured: Measured): PlacedFlaw[] {
  const ids = (list: 'gauges' | 'standards' | 'thermometers') => measured[list].map(({ id }) => id)
  const thermometers = ids('thermometers')
  return [
    ...unknownReference(setUp.gaugeId, ids('gauges'), 'gauges', [...path, 'gaugeId']),
    ...unknownReference(setUp.standardId, ids('standards'), 'standards', [...path, 'standardId']),
    ...(['boreThermometerId', 'referenceThermometerId'] as const).flatMap((field) =>
      unknownReference(setUp[field], thermometers, 'thermometers', [...path, field]),
    ),
    ...unfitEntry(setUp, path, measured),
  ]
}

function unfitEntry(
  { entry, gaugeId, standardId }: SetUp,
  path: PropertyKey[],
  measured: Measured,
): PlacedFlaw[] {
  const gauge = measured.gauges.find(({ id }) => id === gaugeId)
  const standard = measured.standards.find(({ id }) => id === standardId)
  if (!gauge || !standard || entry === 'size' || entry === 'deviation') return []
  if (entryFits(entry, gauge.kind, standard.kind)) return []
  return [{ path: [...path, 'entry'], flaw: { code: 'entry-does-not-fit', entry } }]
}

function boreProblems(bore: Bore, path: PropertyKey[], measured: Measured): PlacedFlaw[] {
  const grades = (measured.spec.grades ?? []).map(({ name }) => name)
  return [
    ...unknownReference(bore.grade, grades, 'spec.grades', [...path, 'grade']),
    ...repeatedIds(bore.ports, [...path, 'ports']),
    ...repeatedIds(bore.belts, [...path, 'belts']),
    ...scanProblems(bore, path, measured),
    ...bore.surveys.flatMap((survey, index) => {
      const at = [...path, 'surveys', index]
      return [
        ...tooDeep(bore, survey, at),
        ...surfaceProblems(bore, survey, [...at, 'surfaceFindings']),
        ...repeatedNumbers(survey.levelsMm, [...at, 'levelsMm'], 'mm'),
        ...repeatedNumbers(survey.axesDegrees, [...at, 'axesDegrees'], '°'),
        ...surveyProblems(survey, at, measured),
      ]
    }),
  ]
}

function tooDeep({ lengthMm }: Bore, survey: Survey, path: PropertyKey[]): PlacedFlaw[] {
  if (lengthMm === undefined) return []
  return survey.levelsMm.flatMap((depthMm, index): PlacedFlaw[] =>
    depthMm > lengthMm
      ? [{ path: [...path, 'levelsMm', index], flaw: { code: 'deeper-than-bore', depthMm, lengthMm } }]
      : [],
  )
}

function surfaceProblems(
  { lengthMm, scans = [] }: Bore,
  { surfaceFindings = [] }: Survey,
  path: PropertyKey[],
): PlacedFlaw[] {
  const past = surfaceFindings.flatMap(({ toDepthMm: depthMm }, index): PlacedFlaw[] =>
    lengthMm !== undefined && depthMm > lengthMm
      ? [{ path: [...path, index, 'toDepthMm'], flaw: { code: 'deeper-than-bore', depthMm, lengthMm } }]
      : [],
  )
  const ids = scans.map(({ id }) => id)
  const unknown = surfaceFindings.flatMap(({ scanId }, index) =>
    unknownReference(scanId, ids, 'scans', [...path, index, 'scanId']),
  )
  return [...repeatedIds(surfaceFindings, path), ...past, ...unknown]
}

function repeatedNumbers(values: readonly number[], path: PropertyKey[], unit: 'mm' | '°'): PlacedFlaw[] {
  const seen = new Set<number>()
  return values.flatMap((value, index): PlacedFlaw[] => {
    if (!seen.has(value)) {
      seen.add(value)
      return []
    }
    return [{ path: [...path, index], flaw: { code: 'duplicate-value', value, unit } }]
  })
}

function surveyProblems(survey: Survey, path: PropertyKey[], measured: Measured): PlacedFlaw[] {
  const setUp = measured.setUps.find(({ id }) => id === survey.setUpId)
  const setUps = measured.setUps.map(({ id }) => id)
  const levels = new Set(survey.levelsMm)
  const axes = new Set(survey.axesDegrees)
  const stations = new Set<string>()
  const outOfReach = new Set<string>()
  const readings = survey.readings.flatMap((reading, index) => {
    const at = [...path, 'readings', index]
    const station = stationName(reading)
    const again = stations.has(station)
    stations.add(station)
    return [
      ...offPlan(reading, survey, levels, axes, at),
      ...(again ? [{ path: at, flaw: sameStation(reading) }] : []),
      ...(setUp ? wrongValues(reading, setUp, at) : []),
    ]
  })
  const unreachable = (survey.unreachable ?? []).flatMap((place, index) => {
    const at = [...path, 'unreachable', index]
    const station = stationName(place)
    const found = stations.has(station) ? 'read' : outOfReach.has(station) ? 'twice' : undefined
    outOfReach.add(station)
    return [
      ...offPlan(place, survey, levels, axes, at),
      ...(found ? [{ path: at, flaw: { code: 'unreachable-station', found, ...place } as const }] : []),
    ]
  })
  return [
    ...unknownReference(survey.setUpId, setUps, 'setUps', [...path, 'setUpId']),
    ...readings,
    ...unreachable,
  ]
}

function stationName({ depthMm, axisDegrees }: Place): string {
  return `${depthMm} ${axisDegrees}`
}

function sameStation({ depthMm, axisDegrees }: Reading): Flaw {
  return { code: 'duplicate-station', depthMm, axisDegrees }
}

function offPlan(
  { depthMm, axisDegrees }: Place,
  { levelsMm, axesDegrees }: Survey,
  levels: ReadonlySet<number>,
  axes: ReadonlySet<number>,
  path: PropertyKey[],
): PlacedFlaw[] {
  const problems: PlacedFlaw[] = []
  if (!levels.has(depthMm)) {
    problems.push({ path: [...path, 'depthMm'], flaw: { code: 'off-level', depthMm, levelsMm } })
  }
  if (!axes.has(axisDegrees)) {
    problems.push({ path: [...path, 'axisDegrees'], flaw: { code: 'off-axis', axisDegrees, axesDegrees } })
  }
  return problems
}

function wrongValues(reading: Reading, setUp: SetUp, path: PropertyKey[]): PlacedFlaw[] {
  const expected = isOfSizes(setUp.entry) ? 'sizesMm' : 'dialUm'
  const { sizesMm, dialUm } = reading
  const found = sizesMm && dialUm ? 'both' : sizesMm ? 'sizesMm' : dialUm ? 'dialUm' : 'none'
  return found === expected ? [] : [{ path, flaw: { code: 'reading-values', found, expected } }]
}
