/** Every word of a calculation sheet that is not data. */
export const WORDS = {
  inputs: 'Inputs',
  answer: 'Answer',
  steps: 'Steps',
  checks: 'Checks',
  requirements: 'Requirements',
  practice: 'Practice, which does not decide the verdict',
  assumptions: 'Assumptions',
  cautions: 'Cautions',
  sources: 'Sources',

  verdict: 'Verdict',
  check: 'Check',
  clause: 'Clause',
  finding: 'Finding',
  governs: '(governs)',
  with: 'with',
  unknown: 'not known',

  /** How a figure or a rule came to be known. */
  provenance: {
    read: 'read',
    memory: 'from memory, to be confirmed',
    computed: 'computed',
    derived: 'derived from other figures',
    'common practice': 'common practice, no rule',
    interpretation: 'interpretation of the rule',
  },

  closing:
    "This sheet is arithmetic on the figures given. The maker's marking and instructions govern; local codes and a qualified person decide.",
};
