import { words } from '../words/words'
import { exampleAddress, exampleNames } from './examples'

/** The examples in plain words, each a link to its address. */
export function ExampleList({ onChosen }: { readonly onChosen?: () => void }) {
  return (
    <>
      <p className="soft">{words.examples.lead}</p>
      <ul className="example-list">
        {exampleNames.map((example) => {
          const { name, shows } = words.examples.list[example]
          return (
            <li key={example}>
              <a href={exampleAddress(example)} onClick={onChosen}>
                <span className="example-name">{name}</span>
                <span className="example-shows">{shows}</span>
              </a>
            </li>
          )
        })}
      </ul>
    </>
  )
}
