import { aids } from './english/aids'
import { bench } from './english/bench'
import { block } from './english/block'
import { blunders } from './english/blunders'
import { bore } from './english/bore'
import { budget } from './english/budget'
import { charts } from './english/charts'
import { compare } from './english/compare'
import { doubt } from './english/doubt'
import { findings } from './english/findings'
import { firstPage } from './english/first-page'
import { gaugeCheck } from './english/gauge-check'
import { growth } from './english/growth'
import { hours } from './english/hours'
import { instruments } from './english/instruments'
import { keeping } from './english/keeping'
import { keptSpecs } from './english/kept-specs'
import { keyList } from './english/key-list'
import { language } from './english/language'
import { limits } from './english/limits'
import { model } from './english/model'
import { number } from './english/number'
import { paste } from './english/paste'
import { phone } from './english/phone'
import { photographs } from './english/photographs'
import { picture } from './english/picture'
import { plan } from './english/plan'
import { problems } from './english/problems'
import { report } from './english/report'
import { scans } from './english/scans'
import { send } from './english/send'
import { setUp } from './english/set-up'
import { sheet } from './english/sheet'
import { shelf } from './english/shelf'
import { simulation } from './english/simulation'
import { surface } from './english/surface'
import { table } from './english/table'
import { verdict } from './english/verdict'

/**
 * Every text of Borewall in English. Texts that hold a figure are functions of figures already written;
 * sentences that hold fields are templates with names in braces, so that each language keeps its own order.
 */
export const en = {
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
}
