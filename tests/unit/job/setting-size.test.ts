import { describe, expect, it } from 'vitest'
import { addSetUp } from '../../../src/job/instrument-list'
import { newJob } from '../../../src/job/new-job'
import { readJob } from '../../../src/job/read-job'
import type { Job } from '../../../src/job/schema'
import { changeEntry, setSetUp } from '../../../src/job/set-up-commands'
import { enterSetting, isSettingOpen } from '../../../src/job/setting-size'
import { writeJob } from '../../../src/job/write-job'
import { scenario, scenarioFiles } from '../scenarios/scenario'
import { countingIds } from './sample-job'

const fresh = newJob(countingIds())
const setUpOf = ({ setUps: [setUp] }: Job) => {
  if (!setUp) throw new Error('No set-up')
  return setUp
}
const { id } = setUpOf(fresh)
const isOpen = (job: Job) => isSettingOpen(setUpOf(job))

describe('the setting size of a new job', () => {
  it('counts as entered by nobody until a size is written down', () => {
    expect(isOpen(fresh)).toBe(true)
    const written = enterSetting(fresh, id, 54)
    expect(isOpen(written)).toBe(false)
    expect(written).toEqual(setSetUp(fresh, id, { settingSizeMm: 54, settingAssumed: undefined }))
  })

  it('can be written down as the very size that the job began with, and that outlives the file', () => {
    const written = enterSetting(fresh, id, setUpOf(fresh).settingSizeMm)
    expect(isOpen(written)).toBe(false)
    const read = readJob(writeJob(written))
    expect(read.ok && isOpen(read.job)).toBe(false)
    expect(enterSetting(written, id, 50)).toBe(written)
  })

  it('is asked for again in another set-up that was begun from it', () => {
    const [, second] = enterSetting(
      addSetUp(fresh, id, () => 'second'),
      id,
      50,
    ).setUps
    expect(second && isSettingOpen(second)).toBe(true)
  })

  it('is not asked for where the gauge is zeroed in the bore', () => {
    expect(isOpen(changeEntry(fresh, id, 'reverse', countingIds()))).toBe(false)
  })

  it.each(scenarioFiles)('is no question in %s', (file) => {
    const job = scenario(file)
    expect(job.setUps.filter(isSettingOpen)).toEqual([])
  })
})
