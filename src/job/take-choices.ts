/** Where the readings of a table go. */
export interface TakeChoices {
  /** Where readings of no named bore go, and readings of no named survey of that bore. */
  readonly boreId: string
  readonly surveyId: string
  /** Readings of no named bore make a bore of their own. */
  readonly newBore?: boolean
  /** Readings of no named survey make a survey of their own. */
  readonly newSurvey?: boolean
  /** At stations that are read already: add the readings as further repeats. Else they are refused. */
  readonly addRepeats?: boolean
  /** Written down for the set-ups whose setting size nobody has entered yet. */
  readonly settingSizeMm?: number | undefined
}
