export { HoursChart } from './HoursChart'
export { ProfileChart } from './ProfileChart'
export { SectionChart } from './SectionChart'
