import { presetOf, typicalContactHalfWidthMm, typicalDepthDoubtMm } from '../../core/gauge/presets'
import type { Gauge, SetUp, Standard, Thermometer } from '../../core/measured'
import { typicalThermometerDoubtK } from '../../core/temperature/temperatures'
import { typicalStandardDoubtUm } from '../../core/uncertainty/set-up-contributions'
import { newId } from '../../job/new-id'
import type { Job } from '../../job/schema'
import { setGauge, setSetUp, setStandard, setThermometer } from '../../job/set-up-commands'
import { lengthUnit } from '../../words/length-unit'
import { plain } from '../../words/numbers'
import { words } from '../../words/words'
import { lengthMarks, micronMarks } from './marks'
import { NumberField } from './NumberField'
import { perform } from './perform'
import { Sentence } from './Sentence'

interface TypicalFiguresProps {
  readonly job: Job
  readonly setUp: SetUp
  readonly gauge: Gauge
  readonly standard: Standard
}

/** What the doubt of a reading is made of: the typical figures of the kind, each to be overridden. */
export function TypicalFigures({ job, setUp, gauge, standard }: TypicalFiguresProps) {
  const said = words.setUp
  return (
    <p className="sentence typical">
      <span className="aside">{said.typical}</span>{' '}
      <Sentence
        template={said.typicalSentence}
        fields={{
          ...gaugeFigures(gauge),
          ...standardFigures(standard),
          thermometerDoubt: <ThermometerFigure job={job} setUp={setUp} />,
        }}
      />
    </p>
  )
}

type Kept = 'micron' | 'length' | 'other'

function typicalText(value: number | undefined, kept: Kept): string {
  if (value === undefined) return words.setUp.noFigure
  const marks =
    kept === 'micron' ? micronMarks(lengthUnit()) : kept === 'length' ? lengthMarks(lengthUnit()) : undefined
  return marks?.written(value) ?? plain(value, 3)
}

function gaugeFigures(gauge: Gauge) {
  const said = words.setUp.typicalLabels
  const preset = presetOf(gauge.kind)
  const keep = (patch: Parameters<typeof setGauge>[2]) =>
    perform(words.changes.gauge, (job) => setGauge(job, gauge.id, patch))
  const field = (
    label: string,
    value: number | undefined,
    typical: number | undefined,
    patch: (value: number | undefined) => Parameters<typeof setGauge>[2],
    kept: Kept = 'micron',
  ) => (
    <NumberField
      label={label}
      micron={kept === 'micron'}
      length={kept === 'length'}
      value={value}
      none={typicalText(typical, kept)}
      keep={(typed) => keep(patch(typed))}
    />
  )
  return {
    repeatability: field(
      said.repeatability,
      gauge.repeatabilityUm,
      preset.repeatabilityUm,
      (repeatabilityUm) => ({ repeatabilityUm }),
    ),
    repeatabilityFreedom: field(
      said.repeatabilityFreedom,
      gauge.repeatabilityDegreesOfFreedom,
      preset.repeatabilityDegreesOfFreedom,
      (repeatabilityDegreesOfFreedom) => ({ repeatabilityDegreesOfFreedom }),
      'other',
    ),
    setting: field(said.setting, gauge.settingUm, preset.settingUm, (settingUm) => ({ settingUm })),
    rocking: field(said.rocking, gauge.rockingUm, undefined, (rockingUm) => ({ rockingUm })),
    scale: field(said.scale, gauge.scaleUm, preset.scaleUm, (scaleUm) => ({ scaleUm })),
    drift: field(said.drift, gauge.driftHalfWidthUm, preset.driftHalfWidthUm, (driftHalfWidthUm) => ({
      driftHalfWidthUm,
    })),
    contact: field(
      said.contact,
      gauge.contactHalfWidthMm,
      typicalContactHalfWidthMm,
      (contactHalfWidthMm) => ({ contactHalfWidthMm }),
      'length',
    ),
    feet: field(said.feet, gauge.feetOffsetMm, undefined, (feetOffsetMm) => ({ feetOffsetMm }), 'length'),
    depthDoubt: field(
      said.depthDoubt,
      gauge.depthDoubtMm,
      typicalDepthDoubtMm,
      (depthDoubtMm) => ({ depthDoubtMm }),
      'length',
    ),
  }
}

function standardFigures(standard: Standard) {
  const said = words.setUp
  return {
    standardKind: said.standards[standard.kind],
    standardDoubt: (
      <NumberField
        label={said.typicalLabels.standardDoubt}
        micron
        value={standard.doubtUm}
        none={typicalText(typicalStandardDoubtUm[standard.kind], 'micron')}
        keep={(doubtUm) =>
          perform(words.changes.standard, (job) => setStandard(job, standard.id, { doubtUm }))
        }
      />
    ),
  }
}

/** One figure for every thermometer of this set-up; the set-up names one where it named none. */
function ThermometerFigure({ job, setUp }: Pick<TypicalFiguresProps, 'job' | 'setUp'>) {
  const keep = (doubtK: number | undefined) =>
    perform(words.changes.setUp, (before) => {
      const named = withThermometer(before, setUp.id)
      return thermometersOf(named, setUp.id).reduce(
        (next, { id }) => setThermometer(next, id, { doubtK }),
        named,
      )
    })
  return (
    <NumberField
      label={words.setUp.typicalLabels.thermometerDoubt}
      value={thermometersOf(job, setUp.id)[0]?.doubtK}
      none={typicalText(typicalThermometerDoubtK, 'other')}
      keep={keep}
    />
  )
}

function thermometersOf(job: Job, setUpId: string): readonly Thermometer[] {
  const setUp = job.setUps.find(({ id }) => id === setUpId)
  const used = [setUp?.boreThermometerId, setUp?.referenceThermometerId]
  return job.thermometers.filter(({ id }) => used.includes(id))
}

function withThermometer(job: Job, setUpId: string): Job {
  if (thermometersOf(job, setUpId).length > 0) return job
  const first = job.thermometers[0] ?? { id: newId() }
  const thermometers = job.thermometers.length > 0 ? job.thermometers : [first]
  return setSetUp({ ...job, thermometers }, setUpId, {
    boreThermometerId: first.id,
    referenceThermometerId: first.id,
  })
}
