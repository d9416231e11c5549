import './key-list.css'
import { words } from '../words/words'

/** Every key that does something, by where the focus is. */
export function KeyList() {
  return (
    <div className="key-list">
      {words.keyList.groups.map(({ name, keys }) => (
        <section key={name}>
          <h3>{name}</h3>
          <dl>
            {keys.map(([key, does]) => (
              <div key={key}>
                <dt>{key}</dt>
                <dd>{does}</dd>
              </div>
            ))}
          </dl>
        </section>
      ))}
    </div>
  )
}
