import { crossedStudy } from './english/crossed-study'
import { inLanguage } from './language'

/** The texts of crossed studies, which few people open: kept out of what the first page loads. */
export const studyWords = inLanguage('crossedStudy', crossedStudy)
