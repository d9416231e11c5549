import './what-if.css'
import { useEffect, useMemo, useState } from 'react'
import type { Evidence } from '../core/decision/evidence'
import type { Tipping } from '../core/decision/tipping'
import { type WhatIf as Tried, tryOut } from '../core/decision/what-if'
import { type Slider, type SliderName, slidersOf, whatIfOf } from '../core/decision/what-if-sliders'
import type { Place } from '../core/findings'
import { decisionTexts } from '../words/decision'
import { placeText } from '../words/numbers'
import { sliderLabel, sliderText, tippingText } from '../words/what-if'
import { whatIfWords } from '../words/what-if-words'
import { CloserSureness } from './CloserSureness'
import { useDecisionWorker } from './use-decision-worker'

type Values = { readonly [Name in SliderName]?: number }
type Tips = { readonly [Name in SliderName]?: Tipping }

/** What was found for what is tried out, as far as it is; `failed`: nothing more will come. */
interface Found {
  readonly of: Tried
  readonly tips: Tips
  readonly failed: boolean
}

/** Sliders for what a decision hangs on: it follows, and each says how near it is to tipping over. The job stays as it is. */
export function WhatIf({ evidence }: { readonly evidence: Evidence }) {
  const [values, setValues] = useState<Values>({})
  const [place, setPlace] = useState<Place>()
  const sliders = useMemo(() => slidersOf(evidence, place), [evidence, place])
  const tried = useMemo(() => triedOf(sliders, values), [sliders, values])
  const then = useMemo(() => tryOut(evidence, tried), [evidence, tried])
  const { tips, failed } = useTips(evidence, sliders, values, tried)
  const texts = decisionTexts(then)
  const said = whatIfWords
  const isTried = Object.keys(tried).length > 0
  const move = (name: SliderName, value: number) => setValues((before) => ({ ...before, [name]: value }))
  return (
    <div className="what-if">
      <p className="aside">{said.lead}</p>
      <p className="what-if-outcome" aria-live="polite">
        {texts ? (isTried ? said.thenIt(texts.headline) : said.asItIs(texts.headline)) : null}
      </p>
      {failed ? <p role="alert">{said.failed}</p> : null}
      {sliders.map((slider) => (
        <SliderRow
          key={slider.name}
          slider={slider}
          at={values[slider.name] ?? slider.value}
          tipping={tips[slider.name]}
          evidence={evidence}
          onMove={(value) => move(slider.name, value)}
        />
      ))}
      <StationChoice
        evidence={evidence}
        sliders={sliders}
        onChoose={(chosen) => {
          setPlace(chosen)
          setValues(({ reading: _, ...others }) => others)
        }}
      />
      {ownBores(evidence) > 1 ? <p className="aside">{said.onlyThis}</p> : null}
      <button type="button" className="quiet" disabled={!isTried} onClick={() => setValues({})}>
        {said.reset}
      </button>
      {/* Trials are of the sizes as they are now. */}
      {tried.hours === undefined ? (
        <CloserSureness evidence={evidence} tried={tried} decision={then.decision} />
      ) : null}
    </div>
  )
}

function ownBores({ measured }: Evidence): number {
  return measured.bores.filter(({ role }) => role === 'of-this-engine').length
}

/** What was moved off where it is. */
function triedOf(sliders: readonly Slider[], values: Values): Tried {
  const moved = sliders.flatMap((slider) => {
    const at = values[slider.name]
    return at === undefined || isAtStart(slider, at) ? [] : [whatIfOf(slider, at)]
  })
  return Object.assign({}, ...moved)
}

function isAtStart({ value, step }: Slider, at: number): boolean {
  return Math.abs(at - value) < step / 2
}

interface SliderRowProps {
  readonly slider: Slider
  readonly at: number
  readonly tipping: Tipping | undefined
  readonly evidence: Evidence
  readonly onMove: (value: number) => void
}

/** Counted in steps from where it is, so that no rounding comes between. */
function SliderRow({ slider, at, tipping, evidence, onMove }: SliderRowProps) {
  const { name, value, from, to, step } = slider
  const label = sliderLabel(slider)
  const text = sliderText(slider, at, evidence)
  const inSteps = (of: number) => Math.round((of - value) / step)
  return (
    <div className="what-if-slider">
      <label htmlFor={`what-if-${name}`}>{label}</label>
      <output htmlFor={`what-if-${name}`}>{text}</output>
      <input
        id={`what-if-${name}`}
        type="range"
        min={inSteps(from)}
        max={inSteps(to)}
        step={1}
        value={inSteps(at)}
        aria-valuetext={text}
        aria-describedby={`what-if-${name}-tips`}
        onChange={(event) => onMove(value + Number(event.currentTarget.value) * step)}
      />
      <p id={`what-if-${name}-tips`} className="what-if-tips">
        {tippingText(slider, at, tipping, evidence)}
      </p>
    </div>
  )
}

interface StationChoiceProps {
  readonly evidence: Evidence
  readonly sliders: readonly Slider[]
  readonly onChoose: (place: Place) => void
}

function StationChoice({ evidence, sliders, onChoose }: StationChoiceProps) {
  const stations = evidence.finding.stations.filter((s) => s.counted)
  const chosen = sliders.find(({ name }) => name === 'reading')?.place
  if (!chosen || stations.length < 2) return null
  const keyOf = ({ depthMm, axisDegrees }: Place) => `${depthMm} ${axisDegrees}`
  return (
    <label className="what-if-station">
      {whatIfWords.station}{' '}
      <select
        value={keyOf(chosen)}
        onChange={(event) => {
          const found = stations.find((s) => keyOf(s) === event.currentTarget.value)
          if (found) onChoose({ depthMm: found.depthMm, axisDegrees: found.axisDegrees })
        }}
      >
        {stations.map((s) => (
          <option key={keyOf(s)} value={keyOf(s)}>
            {placeText(s)}
          </option>
        ))}
      </select>
    </label>
  )
}

/** Sliders rest this long before it is looked where the decision tips over, ms. */
const restMs = 200

function useTips(evidence: Evidence, sliders: readonly Slider[], values: Values, whatIf: Tried): Found {
  const { ask, stop } = useDecisionWorker()
  const [found, setFound] = useState<Found>()
  useEffect(() => {
    const timer = setTimeout(() => {
      const { measured, bore } = evidence
      const asked = sliders.map((slider) => ({ slider, at: values[slider.name] ?? slider.value }))
      ask(
        { measured, boreId: bore.id, whatIf, about: { kind: 'tipping', sliders: asked } },
        (said) => {
          if (said.kind !== 'tipping') return
          setFound((before) => {
            const tips = before?.of === whatIf ? before.tips : {}
            return { of: whatIf, tips: { ...tips, [said.name]: said.tipping }, failed: false }
          })
        },
        () => setFound({ of: whatIf, tips: {}, failed: true }),
      )
    }, restMs)
    return () => {
      clearTimeout(timer)
      stop()
    }
  }, [evidence, sliders, values, whatIf, ask, stop])
  return found?.of === whatIf ? found : { of: whatIf, tips: {}, failed: false }
}
