import type { Diagnosis } from './diagnosis.js';

/** The verdict, what is likely with what to do, and the notes, a line each. @internal */
export function viewDiagnosis({ sentence, likely, endpoint, notes }: Diagnosis): string {
  return [
    sentence,
    ...likely.flatMap(({ sentence: what, evidence, check, remedy }) => [
      `  ${what} Evidence ${evidence.toFixed(1)}.`,
      `    check: ${check}`,
      `    then: ${remedy}`,
    ]),
    ...(endpoint ? [`  ${endpoint.sentence}`] : []),
    ...(endpoint && endpoint.remedy !== '' ? [`    then: ${endpoint.remedy}`] : []),
    ...notes.map((note) => `  note: ${note}`),
  ].join('\n');
}
