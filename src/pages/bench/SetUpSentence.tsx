import { type RefObject, useRef, useState } from 'react'
import { entryOf } from '../../core/diameter/entry'
import { presetOf } from '../../core/gauge/presets'
import { chooseSetUp } from '../../job/instrument-list'
import { setUpName } from '../../words/instrument-names'
import { effectDetail, effectInShort, isCorrected } from '../../words/temperature'
import { words } from '../../words/words'
import { ChoiceField } from './ChoiceField'
import { DirectionTest } from './DirectionTest'
import { InstrumentsPanel } from './InstrumentsPanel'
import { perform } from './perform'
import { Sentence } from './Sentence'
import { SurveyRecord } from './SurveyRecord'
import { setUpFields } from './set-up-fields'
import { TypicalFigures } from './TypicalFigures'
import type { OnBench } from './use-job'
import './set-up.css'

/** What can be opened beneath the sentence, one at a time. */
type Panel = 'direction' | 'temperature' | 'typical' | 'more' | 'instruments'

/** The set-up as a running sentence whose parts are fields. */
export function SetUpSentence(bench: OnBench) {
  const [panel, setPanel] = useState<Panel>()
  const { setUp, standard, finding } = bench
  const said = words.setUp
  const tester = useRef<HTMLButtonElement>(null)
  const opens = (which: Panel, text: string, opener?: RefObject<HTMLButtonElement | null>) => (
    <button
      ref={opener}
      type="button"
      className="quiet"
      aria-expanded={panel === which}
      onClick={() => setPanel(panel === which ? undefined : which)}
    >
      {text}
    </button>
  )
  const fields = {
    ...setUpFields(bench),
    directionTest: opens('direction', said.directionTest.open, tester),
  }
  const effect = finding.temperature
  const isChecked = standard.kind === 'micrometer' && templateOf(bench) !== said.directChecked
  return (
    <>
      <p className="sentence">
        <WhichSetUp {...bench} />
        <Sentence template={templateOf(bench)} fields={fields} />{' '}
        {isChecked ? <Sentence template={said.micrometerCheck} fields={fields} /> : null}{' '}
        {effect && isCorrected(effect) ? opens('temperature', effectInShort(effect)) : null}{' '}
        {opens('typical', said.typicalTitle)} {opens('more', said.more.title)}{' '}
        {opens('instruments', words.instruments.title)}
      </p>
      {panel === 'direction' ? (
        <DirectionTest
          setUp={setUp}
          standard={standard}
          onDone={() => {
            setPanel(undefined)
            tester.current?.focus()
          }}
        />
      ) : null}
      {panel === 'temperature' && effect ? <p className="sentence typical">{effectDetail(effect)}</p> : null}
      {panel === 'typical' ? <TypicalFigures {...bench} /> : null}
      {panel === 'more' ? <SurveyRecord {...bench} /> : null}
      {panel === 'instruments' ? <InstrumentsPanel {...bench} /> : null}
    </>
  )
}

/** The sentence for the way that readings are written down. */
function templateOf({ setUp, gauge }: OnBench): string {
  const said = words.setUp
  switch (entryOf(setUp, gauge)) {
    case 'size':
      return said.sizes
    case 'deviation':
      return said.deviations
    case 'reverse':
      return said.reverse
    case 'direct':
      return presetOf(gauge.kind).driftHalfWidthUm === undefined ? said.direct : said.directChecked
  }
}

/** Where the job lists several settings: which of them this survey was measured with. */
function WhichSetUp({ job, bore, survey, setUp }: OnBench) {
  if (job.setUps.length < 2) return null
  const said = words.setUp
  return (
    <>
      <Sentence
        template={said.which}
        fields={{
          setUp: (
            <ChoiceField
              label={said.labels.setUp}
              value={setUp.id}
              options={job.setUps.map((each) => ({ value: each.id, text: setUpName(each, job) }))}
              onChoose={(value) =>
                perform(words.changes.setUp, (next) => chooseSetUp(next, bore.id, survey.id, value))
              }
            />
          ),
        }}
      />{' '}
    </>
  )
}
