import './pistons.css'
import { type PistonState, pistonStates } from '../../../core/measured'
import { newId } from '../../../job/new-id'
import { addPiston } from '../../../job/piston-commands'
import { pistonWords } from '../../../words/piston-words'
import { perform } from '../perform'
import type { OnBench } from '../use-job'
import { BoringFields } from './BoringFields'
import { ClearanceWindow, GapWindow, Stroke } from './ClearanceWindow'
import { PistonEntry } from './PistonEntry'
import { RingGapEntries } from './RingGapEntries'

/** Pistons with the manual's clearance, ring gaps with the manual's, and what boring takes. */
export function PistonsPanel({ job, bore, survey }: OnBench) {
  const said = pistonWords.panel
  const pistons = job.pistons ?? []
  return (
    <div className="panel pistons-panel">
      <p className="aside">{said.lead}</p>
      <div className="sentence">
        <ClearanceWindow spec={job.spec} /> <Stroke spec={job.spec} />
      </div>
      <h2>{said.pistonsTitle}</h2>
      {pistons.length === 0 ? (
        <p className="aside">{said.noPistons}</p>
      ) : (
        <ul>
          {pistons.map((piston) => (
            <PistonEntry key={piston.id} job={job} piston={piston} />
          ))}
        </ul>
      )}
      <div className="panel-buttons">
        {pistonStates.map((state) => (
          <AddPiston
            key={state}
            state={state}
            boreId={bore.role === 'of-this-engine' ? bore.id : undefined}
          />
        ))}
      </div>
      <h2>{said.gapsTitle}</h2>
      <div className="sentence">
        <GapWindow spec={job.spec} />
      </div>
      <RingGapEntries key={survey.id} bore={bore} survey={survey} />
      <h2>{said.wallTitle}</h2>
      <div className="sentence">
        <BoringFields spec={job.spec} bore={bore} />
      </div>
    </div>
  )
}

function AddPiston({ state, boreId }: { readonly state: PistonState; readonly boreId: string | undefined }) {
  return (
    <button
      type="button"
      className="quiet"
      onClick={() => perform(pistonWords.changes.added, (job) => addPiston(job, state, newId, boreId))}
    >
      {pistonWords.panel.add[state]}
    </button>
  )
}
