import { entryOf } from '../../core/diameter/entry'
import { enterSetting, isSettingOpen } from '../../job/setting-size'
import { words } from '../../words/words'
import { sizeMarks } from './marks'
import { perform } from './perform'
import type { Question } from './question'
import type { OnBench } from './use-job'

/** Asked until somebody has written down the setting size, or said that the one taken until then is right. */
export function settingQuestion({ setUp, gauge, standard }: OnBench): readonly Question[] {
  if (!isSettingOpen(setUp)) return []
  const isDirect = entryOf(setUp, gauge) === 'direct'
  const marks = sizeMarks(isDirect ? gauge.markedIn : standard.markedIn)
  const size = words.setUp.withUnit(marks.written(setUp.settingSizeMm), marks.unit)
  const said = words.questions
  return [
    {
      key: 'setting-size',
      text: isDirect ? said.roughSizeTaken(size) : said.settingTaken(size),
      answers: [
        {
          label: said.itIs(size),
          give: () => {
            perform(words.changes.setUp, (next) => enterSetting(next, setUp.id, setUp.settingSizeMm))
          },
        },
      ],
    },
  ]
}
