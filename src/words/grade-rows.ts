import type { BoreFinding, GradeFinding } from '../core/findings'
import type { Row } from './row'
import { words } from './words'

/** Which size grades the stations are inside, out of or too close to, as one line. */
export function gradesRow({ grades, verdict, pair }: BoreFinding): Row[] {
  if (grades.length === 0 || !verdict.known) return []
  const said = words.findings.grades
  const named = (which: (grade: GradeFinding) => boolean) =>
    grades.filter(which).map(({ gradeName }) => gradeName)
  const inside = named((grade) => grade.verdict === 'inside')
  const open = (grade: GradeFinding) => grade.verdict === 'too-close'
  const groups = [
    [said.tooClose, named((grade) => open(grade) && grade.canBeProven)],
    [said.tooNarrow, named((grade) => open(grade) && !grade.canBeProven)],
    [said.above, named((grade) => grade.verdict === 'above')],
    [said.below, named((grade) => grade.verdict === 'below')],
  ] as const
  return [
    {
      id: 'grades',
      name: said.name,
      rank: 'main',
      figure: inside.length > 0 ? said.inside(inside) : grades.some(open) ? said.undecided : said.insideNone,
      detail: [
        ...groups.flatMap(([text, names]) => (names.length > 0 ? [text(names)] : [])),
        said.rule(verdict.stations),
        ...(pair?.kind === 'wear' ? [said.information] : []),
      ].join(' · '),
    },
  ]
}
