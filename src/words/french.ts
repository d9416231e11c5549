import { aids } from './french/aids'
import { bench } from './french/bench'
import { block } from './french/block'
import { blunders } from './french/blunders'
import { bore } from './french/bore'
import { budget } from './french/budget'
import { charts } from './french/charts'
import { compare } from './french/compare'
import { crossedStudy } from './french/crossed-study'
import { decision } from './french/decision'
import { doubt } from './french/doubt'
import { findings } from './french/findings'
import { firstPage } from './french/first-page'
import { gaugeCheck } from './french/gauge-check'
import { growth } from './french/growth'
import { handOver } from './french/hand-over'
import { hours } from './french/hours'
import { instruments } from './french/instruments'
import { keeping } from './french/keeping'
import { keptSpecs } from './french/kept-specs'
import { keyList } from './french/key-list'
import { language } from './french/language'
import { letterhead } from './french/letterhead'
import { limits } from './french/limits'
import { model } from './french/model'
import { number } from './french/number'
import { owner } from './french/owner'
import { paper } from './french/paper'
import { paste } from './french/paste'
import { phone } from './french/phone'
import { photographs } from './french/photographs'
import { picture } from './french/picture'
import { piston } from './french/piston'
import { plan } from './french/plan'
import { problems } from './french/problems'
import { report } from './french/report'
import { scanForm } from './french/scan-form'
import { scanMarks } from './french/scan-marks'
import { scanTable } from './french/scan-table'
import { scans } from './french/scans'
import { send } from './french/send'
import { setUp } from './french/set-up'
import { sheet } from './french/sheet'
import { shelf } from './french/shelf'
import { simulation } from './french/simulation'
import { surface } from './french/surface'
import { table } from './french/table'
import { verdict } from './french/verdict'
import { whatIf } from './french/what-if'
import type { LanguageTable } from './language'

/** Every text in French. */
export const french: LanguageTable = {
  words: {
    ...bench,
    ...keeping,
    ...setUp,
    ...instruments,
    ...gaugeCheck,
    ...keptSpecs,
    ...limits,
    ...keyList,
    ...language,
    ...bore,
    ...shelf,
    ...sheet,
    ...paste,
    ...picture,
    ...charts,
    ...phone,
    ...photographs,
    ...model,
    ...number,
    ...verdict,
    ...doubt,
    ...findings,
    ...growth,
    ...hours,
    ...problems,
    ...report,
    ...blunders,
    ...block,
    ...compare,
    ...budget,
    ...plan,
    ...simulation,
    ...surface,
    ...scans,
    ...send,
    ...table,
    ...firstPage,
    ...aids,
  },
  crossedStudy,
  decision,
  handOver,
  letterhead,
  owner,
  paper,
  piston,
  scanForm,
  scanMarks,
  scanTable,
  whatIf,
}
