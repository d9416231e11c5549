import type { LanguageTable } from './language'
import { aids } from './spanish/aids'
import { bench } from './spanish/bench'
import { block } from './spanish/block'
import { blunders } from './spanish/blunders'
import { bore } from './spanish/bore'
import { budget } from './spanish/budget'
import { charts } from './spanish/charts'
import { compare } from './spanish/compare'
import { crossedStudy } from './spanish/crossed-study'
import { decision } from './spanish/decision'
import { doubt } from './spanish/doubt'
import { findings } from './spanish/findings'
import { firstPage } from './spanish/first-page'
import { gaugeCheck } from './spanish/gauge-check'
import { growth } from './spanish/growth'
import { handOver } from './spanish/hand-over'
import { hours } from './spanish/hours'
import { instruments } from './spanish/instruments'
import { keeping } from './spanish/keeping'
import { keptSpecs } from './spanish/kept-specs'
import { keyList } from './spanish/key-list'
import { language } from './spanish/language'
import { letterhead } from './spanish/letterhead'
import { limits } from './spanish/limits'
import { model } from './spanish/model'
import { number } from './spanish/number'
import { owner } from './spanish/owner'
import { paper } from './spanish/paper'
import { paste } from './spanish/paste'
import { phone } from './spanish/phone'
import { photographs } from './spanish/photographs'
import { picture } from './spanish/picture'
import { piston } from './spanish/piston'
import { plan } from './spanish/plan'
import { problems } from './spanish/problems'
import { report } from './spanish/report'
import { scanForm } from './spanish/scan-form'
import { scanMarks } from './spanish/scan-marks'
import { scanTable } from './spanish/scan-table'
import { scans } from './spanish/scans'
import { send } from './spanish/send'
import { setUp } from './spanish/set-up'
import { sheet } from './spanish/sheet'
import { shelf } from './spanish/shelf'
import { simulation } from './spanish/simulation'
import { surface } from './spanish/surface'
import { table } from './spanish/table'
import { verdict } from './spanish/verdict'
import { whatIf } from './spanish/what-if'

/** Every text in Spanish. */
export const spanish: LanguageTable = {
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
