export { ProfileChart } from './ProfileChart'
export { SectionChart } from './SectionChart'
