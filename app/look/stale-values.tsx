/** A save that came too late: both values, field by field. */
export function StaleValues({
  fields,
  theirs,
}: {
  fields: readonly { label: string; mine: string; theirs: string }[];
  /** Who saved, and when: "Planner, 03:09". */
  theirs: string;
}) {
  return (
    <table className="find">
      <caption className="vh">Your values and those in the register</caption>
      <thead>
        <tr>
          <th scope="col">
            <span className="vh">field</span>
          </th>
          <th scope="col">yours</th>
          <th scope="col">{theirs}</th>
        </tr>
      </thead>
      {fields.map(({ label, mine, theirs: other }) => (
        <tbody key={label} className={mine === other ? undefined : 'urgent'}>
          <tr>
            <th scope="row">{label}</th>
            <td className="text-right">
              <bdi>{mine}</bdi>
            </td>
            <td className="text-right">
              <bdi>{other}</bdi>
            </td>
          </tr>
        </tbody>
      ))}
    </table>
  );
}
