import { crossedStudy } from './english/crossed-study'

/** The texts of crossed studies, which few people open: kept out of what the first page loads. */
export const studyWords: typeof crossedStudy = crossedStudy
