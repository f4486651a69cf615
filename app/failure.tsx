import { Facts } from './look/facts';
import { Sheet } from './look/sheet';

/** An unexpected failure: what is safe, what to do, a reference to read out, nothing else. */
export function Failure({
  isDatabaseGone,
  reference,
  retry,
}: {
  isDatabaseGone: boolean;
  reference: string | null;
  retry?: () => void;
}) {
  return (
    <Sheet>
      <title>{`${isDatabaseGone ? 'The database does not answer' : 'The register did not answer'} · Bedplate`}</title>
      <h1 className="page">
        {isDatabaseGone ? 'The register’s database does not answer' : 'The register did not answer'}
      </h1>
      <p className="mt-2">
        What was saved before this stays saved. What you were just sending may not have arrived: look at the record
        before you send it again.
      </p>
      {isDatabaseGone && (
        <p className="mt-2">It is usually back within a minute. This page works again as soon as it is.</p>
      )}
      {reference !== null && (
        <>
          <div className="mt-5 border-ink border-t-2">
            <Facts rows={[{ label: 'Reference', value: <b>{reference}</b> }]} />
          </div>
          <p className="label pt-2">Say the reference to whoever looks after the register.</p>
        </>
      )}
      <div className="actions">
        {retry === undefined ? (
          <form className="grid">
            <button className="action" type="submit">
              Try again
            </button>
          </form>
        ) : (
          <button className="action" type="button" onClick={retry}>
            Try again
          </button>
        )}
        <a className="second" href="/">
          Register
        </a>
      </div>
    </Sheet>
  );
}
