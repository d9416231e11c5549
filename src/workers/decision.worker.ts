import { type Evidence, evidenceOf } from '../core/decision/evidence'
import { surenessOf } from '../core/decision/sureness'
import { tippingOf } from '../core/decision/tipping'
import { tryOut } from '../core/decision/what-if'
import { inspect } from '../core/inspect'
import type { DecisionAsked, DecisionSaid } from './decision-messages'

const say = (message: DecisionSaid) => self.postMessage(message)

self.addEventListener('message', ({ data }: MessageEvent<DecisionAsked>) => {
  const { measured, boreId, whatIf, about } = data
  const findings = inspect(measured)
  const finding = findings.bores.find((one) => one.boreId === boreId)
  if (!finding) throw new Error(`decision worker: no bore ${boreId}`)
  const evidence = evidenceOf(measured, findings, finding)
  if (about.kind === 'sureness') {
    sayHowSure(tryOut(evidence, whatIf).evidence, about)
    return
  }
  for (const { slider, at } of about.sliders) {
    const steps = tippingOf(evidence, whatIf, slider, at)
    let step = steps.next()
    while (!step.done) step = steps.next()
    say({ kind: 'tipping', name: slider.name, tipping: step.value })
  }
  say({ kind: 'done' })
})

/** Progress at every two hundredth part is enough to see. */
function sayHowSure(evidence: Evidence, { trials, seed }: { trials: number; seed: number }): void {
  const steps = surenessOf(evidence, trials, seed)
  for (let step = steps.next(), said = 0; ; step = steps.next()) {
    if (step.done) {
      say({ kind: 'sureness', sureness: step.value })
      say({ kind: 'done' })
      return
    }
    if (step.value - said < trials / 200) continue
    said = step.value
    say({ kind: 'progress', trials: said })
  }
}
