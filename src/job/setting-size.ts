import type { SetUp } from '../core/measured'
import type { Job } from './schema'
import { setSetUp } from './set-up-commands'

/** Whether nobody has written down the setting size yet. In the reverse method it is asked for nowhere. */
export function isSettingOpen({ settingAssumed, entry }: SetUp): boolean {
  return settingAssumed === true && entry !== 'reverse'
}

/** Writes down the setting size, also where it is the one that stood in for it. */
export function enterSetting(job: Job, setUpId: string, settingSizeMm: number): Job {
  return setSetUp(job, setUpId, { settingSizeMm, settingAssumed: undefined })
}
