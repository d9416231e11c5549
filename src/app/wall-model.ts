import type { Bore } from '../core/measured'
import { type WallSolid, wallSolid } from '../core/surface/wall-solid'
import type { Job } from '../job/schema'
import { exaggerationOfJob, findingOf, mapGridOfBore } from '../job/selectors'
import { wallPaint } from '../scene/wall-palette'
import { session } from '../session/session'
import { plain } from '../words/numbers'
import { words } from '../words/words'
import { fileName } from './file-name'

export type ModelKind = 'stl' | 'glb'

export type MadeModel =
  | { readonly kind: 'made'; readonly file: File; readonly size: string }
  | { readonly kind: 'none'; readonly why: 'wall-meets-axis' }

const mediaTypes: Record<ModelKind, string> = { stl: 'model/stl', glb: 'model/gltf-binary' }

/** So much of a job's name that the exaggeration and the scale still have room in the name of a file. */
const longestName = 28

/** The exaggeration of the picture, at which a model is made too; undefined before the first reading. */
export function modelExaggeration(job: Job): number | undefined {
  return session.getState().exaggeration ?? exaggerationOfJob(job)
}

/** The wall of a bore as a file to print, at the exaggeration shown; undefined without readings. */
export async function makeModel(
  kind: ModelKind,
  job: Job,
  bore: Bore,
  surveyId?: string,
): Promise<MadeModel | undefined> {
  const finding = findingOf(job, bore.id, surveyId)
  const grid = mapGridOfBore(job, bore.id, surveyId)
  const exaggeration = modelExaggeration(job)
  if (!finding || !grid || exaggeration === undefined) return undefined
  const solid = wallSolid(grid, bore.ports, exaggeration)
  if (solid.kind === 'none') return solid
  const { glbOf, stlOf } = await import('../scene/model-files')
  const { factor, scale } = written(solid)
  const bytes =
    kind === 'stl'
      ? stlOf(solid, words.model.header(factor, scale))
      : await glbOf(solid, wallPaint(grid, finding.pair, 'light').colour, {
          name: nameOf(job, bore),
          parts: words.model.parts,
          facts: factsOf(job, bore, solid),
        })
  const file = new File([bytes], modelFileName(kind, job, bore, solid), { type: mediaTypes[kind] })
  return { kind: 'made', file, size: sizeText(solid) }
}

/** The name of a model's file, with exaggeration and scale: `garden-saw-bore-1-drawn-x200-scale-1-1-2026-03-09.stl`. */
export function modelFileName(
  kind: ModelKind,
  job: Job,
  bore: Bore,
  solid: Pick<WallSolid, 'exaggeration' | 'drawnPerPrinted'>,
  day = new Date(),
): string {
  const { factor, scale } = written(solid)
  const name = [...nameOf(job, bore)].slice(0, longestName).join('')
  return fileName(words.model.fileName(name, factor, scale), day, words.file.defaultName, kind)
}

function nameOf(job: Job, bore: Bore): string {
  const boreName = bore.role === 'for-comparison' ? bore.name : words.bar.boreNamed(bore.name)
  return `${boreName} ${job.name.trim() || words.file.defaultName}`
}

function written({ exaggeration, drawnPerPrinted }: Pick<WallSolid, 'exaggeration' | 'drawnPerPrinted'>) {
  return {
    factor: plain(exaggeration, exaggeration < 10 ? 1 : 0),
    scale: words.model.scale(plain(drawnPerPrinted, 0)),
  }
}

function sizeText(solid: WallSolid): string {
  const mm = (value: number) => `${plain(value, 0)} mm`
  return words.model.size(mm(solid.heightMm), mm(solid.outerDiameterMm), written(solid).scale)
}

function factsOf(job: Job, bore: Bore, solid: WallSolid): Record<string, string | number> {
  const { notes, parts } = words.model
  return {
    madeWith: words.app.name,
    bore: nameOf(job, bore),
    ...(job.invented ? { invented: words.report.invented } : {}),
    exaggeration: solid.exaggeration,
    scale: words.model.scale(plain(solid.drawnPerPrinted, 0)),
    drawn: notes.drawn,
    unmeasured: parts.unmeasured,
    ports: notes.ports,
    front: notes.front,
  }
}
