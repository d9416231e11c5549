import { problemPlace, problemText } from '../words/problems'
import { words } from '../words/words'
import { showShelf } from './desk'
import { damagedText } from './job-for-file'
import { closeJobsTaken, type JobsTaken } from './questions'

/** What became of each job in a file of all jobs. */
export function JobsTakenReport({ taken, same, copied, refused, damaged, limits }: JobsTaken) {
  const said = words.jobsTaken
  const toShelf = () => {
    closeJobsTaken()
    showShelf()
  }
  return (
    <>
      <Names heading={said.taken(taken.length)} names={taken} />
      <Names heading={said.copied(copied.length)} names={copied} />
      <Names heading={said.same(same.length)} names={same} />
      <Names heading={said.limits(limits.taken.length)} names={limits.taken} />
      <Names heading={said.limitsUnread(limits.unread.length)} names={limits.unread} />
      {damagedText(damaged) === undefined ? null : <p>{damagedText(damaged)}</p>}
      {refused.length > 0 ? <h3>{said.refused(refused.length)}</h3> : null}
      {refused.map(({ name, problems }) => (
        <section key={`${name} ${problems[0]?.path}`}>
          <p>{name}</p>
          <ul className="problem-list">
            {problems.map((problem) => (
              <li key={`${problem.path} ${problemText(problem)}`}>
                <span className="place">{problemPlace(problem)}</span> {problemText(problem)}
              </li>
            ))}
          </ul>
        </section>
      ))}
      <button type="button" className="button" onClick={toShelf}>
        {words.file.kept}
      </button>
    </>
  )
}

function Names({ heading, names }: { readonly heading: string; readonly names: readonly string[] }) {
  if (names.length === 0) return null
  return (
    <details>
      <summary>{heading}</summary>
      <p>{words.app.and(names)}</p>
    </details>
  )
}
