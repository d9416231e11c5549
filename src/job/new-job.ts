import { type Job, jobFormat, jobFormatVersion } from './schema'

/** The setting size that a new job begins with, mm: a set-up cannot be without one. */
const newJobSettingMm = 50

/**
 * An empty job: one bore of this engine, one survey on two axes, one set-up of which nothing is recorded
 * but what a set-up cannot be without. `ids` gives a fresh id at each call.
 */
export function newJob(ids: () => string): Job {
  const gaugeId = ids()
  const standardId = ids()
  const setUpId = ids()
  return {
    format: jobFormat,
    formatVersion: jobFormatVersion,
    id: ids(),
    name: '',
    spec: {},
    gauges: [{ id: gaugeId, kind: 'dial-0.001-micrometer' }],
    standards: [{ id: standardId, kind: 'micrometer' }],
    thermometers: [{ id: ids() }],
    setUps: [
      {
        id: setUpId,
        gaugeId,
        standardId,
        entry: 'size',
        settingSizeMm: newJobSettingMm,
        settingAssumed: true,
      },
    ],
    bores: [
      {
        id: ids(),
        name: '1',
        role: 'of-this-engine',
        ports: [],
        belts: [],
        surveys: [{ id: ids(), setUpId, levelsMm: [], axesDegrees: [0, 90], readings: [] }],
      },
    ],
  }
}
