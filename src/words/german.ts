import { aids } from './german/aids'
import { bench } from './german/bench'
import { block } from './german/block'
import { blunders } from './german/blunders'
import { bore } from './german/bore'
import { budget } from './german/budget'
import { charts } from './german/charts'
import { compare } from './german/compare'
import { crossedStudy } from './german/crossed-study'
import { decision } from './german/decision'
import { doubt } from './german/doubt'
import { findings } from './german/findings'
import { firstPage } from './german/first-page'
import { gaugeCheck } from './german/gauge-check'
import { growth } from './german/growth'
import { handOver } from './german/hand-over'
import { hours } from './german/hours'
import { instruments } from './german/instruments'
import { keeping } from './german/keeping'
import { keptSpecs } from './german/kept-specs'
import { keyList } from './german/key-list'
import { language } from './german/language'
import { letterhead } from './german/letterhead'
import { limits } from './german/limits'
import { model } from './german/model'
import { number } from './german/number'
import { owner } from './german/owner'
import { paper } from './german/paper'
import { paste } from './german/paste'
import { phone } from './german/phone'
import { photographs } from './german/photographs'
import { picture } from './german/picture'
import { piston } from './german/piston'
import { plan } from './german/plan'
import { problems } from './german/problems'
import { report } from './german/report'
import { scanForm } from './german/scan-form'
import { scanMarks } from './german/scan-marks'
import { scanTable } from './german/scan-table'
import { scans } from './german/scans'
import { send } from './german/send'
import { setUp } from './german/set-up'
import { sheet } from './german/sheet'
import { shelf } from './german/shelf'
import { simulation } from './german/simulation'
import { surface } from './german/surface'
import { table } from './german/table'
import { verdict } from './german/verdict'
import { whatIf } from './german/what-if'
import type { LanguageTable } from './language'

/** Every text in German. */
export const german: LanguageTable = {
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
