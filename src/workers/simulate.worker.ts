import type { Measured } from '../core/measured'
import { simulate } from '../core/simulation/simulate'
import type { SimulationAsked, SimulationSaid } from './simulation-messages'

const say = (message: SimulationSaid) => self.postMessage(message)

self.addEventListener('message', ({ data }: MessageEvent<SimulationAsked>) => {
  const measured: Measured = data.measured
  const steps = simulate(measured, data.trials, data.seed)
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) {
      say({ kind: 'done', simulation: step.value })
      return
    }
    say({ kind: 'progress', trials: step.value })
  }
})
