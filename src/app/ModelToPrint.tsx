import { useState } from 'react'
import type { Bore } from '../core/measured'
import type { Job } from '../job/schema'
import { words } from '../words/words'
import { download } from './download'
import { pictureLabels } from './picture-labels'
import { type MadeModel, type ModelKind, makeModel, modelExaggeration } from './wall-model'

const kinds: readonly ModelKind[] = ['stl', 'glb']

/** The wall as a model to print: what it is and is not, and the two files it can be saved as. */
export function ModelToPrint(props: {
  readonly job: Job
  readonly bore: Bore
  readonly surveyId: string | undefined
}) {
  const { job, bore, surveyId } = props
  const [said, setSaid] = useState('')
  const exaggeration = modelExaggeration(job)
  if (exaggeration === undefined) return null
  const { model } = words
  const save = async (kind: ModelKind) => {
    setSaid(model.making)
    try {
      setSaid(handedOver(await makeModel(kind, job, bore, surveyId)))
    } catch (error) {
      reportError(error)
      setSaid(model.failed)
    }
  }
  return (
    <div className="send-model">
      <h3>{model.title}</h3>
      <p className="soft">
        {model.lead(pictureLabels.formDrawn(exaggeration))} {model.unmeasured}
      </p>
      <div className="send-ways">
        {kinds.map((kind) => (
          <button key={kind} type="button" className="quiet" onClick={() => void save(kind)}>
            {model.ways[kind]}
          </button>
        ))}
      </div>
      <p role="status">{said}</p>
    </div>
  )
}

function handedOver(made: MadeModel | undefined): string {
  const { model } = words
  if (!made) return model.failed
  if (made.kind === 'none') return model.none[made.why]
  download(made.file)
  return model.saved(made.file.name, made.size)
}
