/** What a purchase asks as a file. `question`: of the address, with its mark. */
export function SpecificationFiles({ question }: { question: string }) {
  return (
    <span>
      As a file:{' '}
      <a className="to" href={`/buy/export${question}`}>
        CSV
      </a>{' '}
      <a className="to" href={`/api/v1/purchase${question}`}>
        JSON
      </a>
    </span>
  );
}
