/** The label code of a set's or motor's row. The database gives one to every row; without one it is not our database. */
export function labelCodeOf({ id, code }: { id: string; code: string | null }): string {
  if (code === null) throw new Error(`record ${id} has no label code`);
  return code;
}
