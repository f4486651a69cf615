/** Said once a job, above its steps. */
export const WHO_DECIDES =
  'Bedplate proposes; a competent person decides. Electrical and area-classified work is for licensed or competent people, to local codes.';
