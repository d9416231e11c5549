/**
 * What a decision goes by, one word for each question: a row of the table of rules is held against these words, so
 * that the table can be read, and tested, without a single figure.
 */
export interface DecisionFacts {
  /** What of the surface counts: it can end the bore; a mark that honing may take out; what lies on the wall. */
  readonly surface: 'ended' | 'marked' | 'covered' | 'look-closer' | 'nothing-against' | 'cross-hatch'
  /** Whether the readings can be built on. */
  readonly readings: 'sound' | 'none' | 'unsteady' | 'slip-asked' | 'not-set'
  /** Whether every station of the plan is read that can be, and any of them where the rings run. */
  readonly stations: 'all-read' | 'some-unread' | 'land-alone'
  /** Against the limits of size; only the mean of each level is known to be inside; under the smallest new size. */
  readonly size:
    | 'inside'
    | 'above'
    | 'below'
    | 'other-grade'
    | 'under-new'
    | 'too-close'
    | 'mean-only'
    | 'no-limit'
  readonly ovality: ShapeFact
  readonly taper: ShapeFact
  /** Whether the wear of one side may have gone through the plating. */
  readonly plating: 'left' | 'may-be-through' | 'not-known'
  /** Whether what is out of a limit rests on one reading that nobody repeated, or on values assumed for what was not recorded. */
  readonly grounds: 'repeated' | 'one-reading' | 'assumed'
  /** With the piston at hand. */
  readonly clearance: 'inside' | 'too-loose' | 'too-tight' | 'too-close' | 'not-judged'
  /** The best of the other pistons that lie here or can be had. */
  readonly otherPiston: 'fits' | 'too-close' | 'none-fits' | 'none-listed'
  readonly ringGap: 'inside' | 'too-close' | 'above' | 'below' | 'not-judged'
  readonly outlook: 'ahead' | 'now' | 'shrunk' | 'not-known'
  readonly wall: 'plated' | 'other' | 'not-known'
  /** What the wall and the manual allow, and whether the limit leaves room for it. */
  readonly honing: 'room' | 'no-room' | 'not-allowed'
  readonly oversize: 'cleans-up' | 'none-cleans-up' | 'none-given' | 'not-allowed'
}

/** `open`: a limit is given and could not be judged. */
type ShapeFact = 'inside' | 'above' | 'too-close' | 'open' | 'no-limit'

export type FactName = keyof DecisionFacts
