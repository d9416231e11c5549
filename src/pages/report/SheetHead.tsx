import type { ReactNode } from 'react'
import type { Fact } from '../../words/paper-facts'
import { paperWords } from '../../words/paper-words'
import { words } from '../../words/words'
import type { Letterhead, ReportLook } from './report-look'
import type { ReportPart } from './report-part'
import { FactList, unbroken } from './SheetTexts'

export interface SheetHeadProps {
  readonly look: ReportLook
  readonly kicker: string
  readonly title: string
  readonly invented: boolean
  readonly facts: readonly Fact[]
  readonly verdict: string
  readonly beside: readonly string[]
  readonly decision: string | undefined
  readonly besideDecision: readonly string[]
  /** Beside the texts. */
  readonly views?: ReactNode
}

/** Whose bore it is, how it was measured, how it stands and what to do with it; pictures beside that. */
export function SheetHead(props: SheetHeadProps) {
  const { look, kicker, title, invented, facts, verdict, beside, decision, besideDecision, views } = props
  return (
    <header className="sheet-head">
      {look.letterhead ? <ShopHead letterhead={look.letterhead} /> : null}
      <div className="sheet-title">
        <h2 dir="auto">{title}</h2>
        <p className="sheet-kicker">
          {kicker}
          {invented ? <span className="sheet-invented">{words.report.invented}</span> : null}
        </p>
      </div>
      <div className={views ? 'sheet-top' : 'sheet-top is-wide'}>
        <div>
          <FactList facts={facts} />
          <div className="sheet-verdict">
            <p className="sheet-said" dir="auto">
              {unbroken(verdict)}
            </p>
            {beside.length > 0 ? (
              <p className="sheet-beside" dir="auto">
                {unbroken(beside.join(' '))}
              </p>
            ) : null}
            {decision === undefined ? null : (
              <>
                <p className="sheet-said is-decision" dir="auto">
                  {unbroken(decision)}
                </p>
                {besideDecision.length > 0 ? (
                  <p className="sheet-beside" dir="auto">
                    {unbroken(besideDecision.join(' '))}
                  </p>
                ) : null}
              </>
            )}
          </div>
        </div>
        {views}
      </div>
    </header>
  )
}

function ShopHead({
  letterhead: { shopName, addressLines, pictureUrl },
}: {
  readonly letterhead: Letterhead
}) {
  return (
    <div className="sheet-shop">
      {pictureUrl === undefined ? null : <img src={pictureUrl} alt="" />}
      <p>
        <b dir="auto">{shopName}</b>
        {addressLines.map((line) => (
          <span key={line} dir="auto">
            {line}
          </span>
        ))}
      </p>
    </div>
  )
}

/** Where somebody signs, with what that is for. */
export function SignatureLine() {
  const { name, day, signed } = paperWords.signature
  return (
    <div className="sheet-signature">
      <div>
        {[name, day, signed].map((label) => (
          <span key={label}>{label}</span>
        ))}
      </div>
    </div>
  )
}

/** A code to be scanned, among the texts in the columns. */
export function codeParts({ code }: ReportLook): ReportPart[] {
  if (!code) return []
  return [{ id: 'code', across: 'column', node: <div className="sheet-code">{code}</div> }]
}
