import type { Bore, Gauge, Measured, SetUp, Standard, Survey } from '../core/measured'
import { dayText } from './day-text'
import { gaugeName, standardName } from './instrument-names'
import { inHundredthsOfMicrons, inTenthsOfMicrons, plain, sizeWithUnit, temperature } from './numbers'
import { oversizeText } from './oversize'
import { paperWords } from './paper-words'
import { words } from './words'

/** A fact at the head of the report: Customer: J. Example. */
export interface Fact {
  readonly label: string
  readonly value: string
}

/** What was measured, with for whom and on what. */
export interface ReportedJob extends Measured {
  readonly name: string
  readonly machine?: string
  readonly customer?: string
  readonly note?: string
  readonly invented?: boolean
}

/** The facts that hold for the whole job, as far as they are known. */
export function jobFacts({ customer, machine }: ReportedJob): Fact[] {
  const { facts } = paperWords
  return [...fact(facts.customer, customer), ...fact(facts.machine, machine)]
}

/** When, by whom and how a bore was measured; what was not recorded says so. */
export function boreFacts(job: ReportedJob, bore: Bore, survey: Survey): Fact[] {
  const { facts } = paperWords
  const setUp = job.setUps.find(({ id }) => id === survey.setUpId)
  const gauge = job.gauges.find(({ id }) => id === setUp?.gaugeId)
  const standard = job.standards.find(({ id }) => id === setUp?.standardId)
  if (!setUp || !gauge || !standard) throw new Error(`boreFacts: no set-up ${survey.setUpId} in the job`)
  return [
    { label: facts.measured, value: measuredText(survey) },
    { label: facts.wall, value: wallText(bore) },
    { label: facts.gauge, value: gaugeText(job, gauge) },
    { label: facts.setTo, value: settingText(job, setUp, standard) },
    ...micrometerFact(standard),
    { label: facts.zeros, value: zerosText(setUp) },
    { label: facts.temperatures, value: temperaturesText(setUp, standard) },
  ]
}

/** The facts of several bores in one list: what differs names the bores that it is about. */
export function factsOfAll(
  all: readonly { readonly name: string; readonly facts: readonly Fact[] }[],
): Fact[] {
  const labels = [...new Set(all.flatMap(({ facts }) => facts.map(({ label }) => label)))]
  return labels.map((label) => {
    const told = all.flatMap(({ name, facts }) =>
      facts.filter((one) => one.label === label).map(({ value }) => ({ name, value })),
    )
    const values = [...new Set(told.map(({ value }) => value))]
    const [only] = values
    if (only !== undefined && values.length === 1 && told.length === all.length) {
      return { label, value: only }
    }
    const named = values.map((value) =>
      paperWords.ofBores(
        told.filter((one) => one.value === value).map(({ name }) => name),
        value,
      ),
    )
    return { label, value: named.join('; ') }
  })
}

function fact(label: string, value: string | undefined): Fact[] {
  return value === undefined || value.trim() === '' ? [] : [{ label, value }]
}

function measuredText({ date, hoursRun, measuredBy, clamping, plateTorqueNm }: Survey): string {
  const bolted = words.setUp.more.clampings
  const torque = plateTorqueNm === undefined ? '' : ` (${plain(plateTorqueNm, 1)} N·m)`
  return listed(
    date === undefined ? paperWords.dayNotRecorded : dayText(date),
    hoursRun === undefined ? undefined : paperWords.hours(plain(hoursRun, 1)),
    measuredBy === undefined || measuredBy.trim() === '' ? undefined : paperWords.by(measuredBy),
    clamping === undefined ? undefined : `${bolted[clamping]}${torque}`,
  )
}

function wallText({ wall, grade, oversizeMm = 0 }: Bore): string {
  const said = paperWords.wall
  const kind = wall && words.bore.walls[wall.kind]
  return listed(
    kind === undefined ? said.notRecorded : wall?.liner ? said.liner(kind) : kind,
    grade === undefined ? undefined : said.grade(grade),
    oversizeMm === 0 ? undefined : said.oversize(oversizeText(oversizeMm)),
  )
}

function gaugeText(job: ReportedJob, gauge: Gauge): string {
  const { stepUm, calibratedOn } = gauge
  return listed(
    gaugeName(gauge, job),
    stepUm === undefined ? undefined : paperWords.readTo(inHundredthsOfMicrons(stepUm / 1000)),
    calibratedOn === undefined ? undefined : paperWords.calibrated(dayText(calibratedOn)),
  )
}

function settingText(job: ReportedJob, setUp: SetUp, standard: Standard): string {
  const { entry, settingSizeMm, settingAssumed, overContactsMm } = setUp
  if (entry === 'direct') return paperWords.readDirectly
  if (entry === 'reverse') {
    return overContactsMm === undefined
      ? paperWords.zeroedOnly
      : paperWords.zeroedInBore(sizeWithUnit(overContactsMm))
  }
  if (settingAssumed) return paperWords.notRecorded
  return paperWords.setBy(sizeWithUnit(settingSizeMm), standardName(standard, job))
}

function micrometerFact({ kind, errorUm }: Standard): Fact[] {
  if (kind !== 'micrometer') return []
  const value =
    errorUm === undefined
      ? paperWords.notRecorded
      : paperWords.readsTooMuch(inTenthsOfMicrons(errorUm / 1000))
  return [{ label: paperWords.facts.micrometer, value }]
}

function zerosText({ zeroOpenUm, zeroCloseUm }: SetUp): string {
  if (zeroOpenUm === undefined && zeroCloseUm === undefined) return paperWords.notRecorded
  const written = (um: number | undefined) =>
    um === undefined ? paperWords.notRecorded : inTenthsOfMicrons(um / 1000)
  return paperWords.zeros(written(zeroOpenUm), written(zeroCloseUm))
}

function temperaturesText(setUp: SetUp, { kind }: Standard): string {
  const { boreTemperatureC, referenceTemperatureC, soakedTogether } = setUp
  if (boreTemperatureC === undefined && referenceTemperatureC === undefined) return paperWords.notRecorded
  const written = (celsius: number | undefined) =>
    celsius === undefined ? paperWords.notRecorded : temperature(celsius)
  return listed(
    paperWords.temperatures(
      written(boreTemperatureC),
      words.setUp.references[kind],
      written(referenceTemperatureC),
    ),
    soakedTogether ? words.setUp.thermometers.soaked : undefined,
  )
}

function listed(...parts: readonly (string | undefined)[]): string {
  return parts.filter((part) => part !== undefined).join(', ')
}
