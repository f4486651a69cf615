/** What a form was refused for, at its top; each leads to its field. */
export function ProblemList({ problems }: { problems: readonly { path: string; says: string }[] }) {
  if (problems.length === 0) return null;
  return (
    <div className="problem-list" role="alert" tabIndex={-1}>
      <p>
        <b>{problems.length === 1 ? 'One thing is not right yet' : `${problems.length} things are not right yet`}</b>
      </p>
      <ul>
        {problems.map(({ path, says }) => (
          <li key={`${path} ${says}`}>
            <a className="inline-act" href={`#${path}`}>
              {says}
            </a>
          </li>
        ))}
      </ul>
    </div>
  );
}
